import { stoppedClock } from '@deckround/platform';
import { addDays } from '@deckround/register';
import { dateColumn, dateText, visitItemKey } from '@deckround/register-store';
import { createProcessors } from '@deckround/worker';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { type ApiClient, until } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, WEEK } from '../support/small-shop.js';
import { workerContext } from '../support/worker-context.js';

/** Friday before the small shop's week. */
const clock = stoppedClock('2026-06-05T15:00:00Z');
const NEXT = addDays(WEEK, 7);

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;
let shopId: string;
beforeAll(async () => {
  database = await freshDatabase();
  ({ shopId } = await createSmallShop(database.store));
  api = await runningApi(database, undefined, clock);
  manager = await api.signIn('manager');
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});
beforeEach(() =>
  database.store.inShop(shopId, async (tx) => {
    await tx.visit.deleteMany();
    await tx.planRun.deleteMany();
  }),
);

const inShop: typeof database.store.inShop = (...args) => database.store.inShop(...args);
const statusOf = (id: string) =>
  inShop(shopId, (tx) => tx.planRun.findUniqueOrThrow({ where: { id } }).then((run) => run.status));

/** What stands in visits of several days apart although it would not fall due again in between: by name, with its days. */
async function standingTwice(): Promise<string[]> {
  const visits = await inShop(shopId, (tx) =>
    tx.visit.findMany({ where: { state: { not: 'cancelled' } }, include: { visitItems: true } }),
  );
  const runs = await inShop(shopId, (tx) => tx.planRun.findMany({ where: { status: 'done' } }));
  const again = new Set(
    runs.flatMap((run) =>
      (run.snapshot as unknown as { items: { id: string; follows?: string }[] }).items.flatMap((item) =>
        item.follows ? [item.id] : [],
      ),
    ),
  );
  const days = new Map<string, string[]>();
  for (const visit of visits)
    for (const item of visit.visitItems) {
      const key = visitItemKey(item);
      days.set(key, [...(days.get(key) ?? []), dateText(visit.visitDate)]);
    }
  return [...days].flatMap(([key, on]) => (on.length > 1 && !again.has(key) ? [`${key} on ${on.join(', ')}`] : []));
}

const ended = (id: string) =>
  until(
    () => manager.get(`/v1/plan-runs/${id}`),
    ({ body }) => !['asked', 'running'].includes(body.status),
  );

describe('plans of one shop', () => {
  it('asked for at once are made one after the other, so that no two do the same work', async () => {
    const ask = (weekOf: string) =>
      inShop(shopId, (tx) =>
        tx.planRun.create({ data: { shopId, weekOf: dateColumn(weekOf), seconds: 5, iterations: 20_000 } }),
      );
    const [first, second] = [await ask(WEEK), await ask(NEXT)];
    const asked: string[] = [];
    const enqueue = async (_: string, { runId }: { runId: string }) => void asked.push(runId);
    const queue = { enqueue, isReady: async () => true, close: async () => {} };
    const processors = ['one', 'two'].map((holder) =>
      createProcessors(workerContext(database.store, { clock, holder, queue })),
    );
    await Promise.all([first, second].map(({ id }, index) => processors[index]!.plan({ shopId, runId: id })));
    expect([await statusOf(first.id), await statusOf(second.id)]).toEqual(['done', 'asked']);
    expect(asked).toEqual([second.id]);
    await processors[1]!.plan({ shopId, runId: second.id });
    expect(await statusOf(second.id)).toBe('done');
    expect(await standingTwice()).toEqual([]);
  });
});

describe('several weeks asked for together', () => {
  it('are planned one after the other, each counting on those before it', async () => {
    const asked = await manager.post('/v1/plan-runs', { weekOf: WEEK, weeks: 3, iterations: 2000 });
    expect(asked.body).toMatchObject({ weekOf: WEEK, days: 7 });
    const [first, second, third] = [asked.body.id, ...(await followingOf(asked.body.id))];
    expect((await ended(third!)).body).toMatchObject({ status: 'done', weekOf: addDays(WEEK, 14), nextRunId: null });
    expect([await statusOf(first), await statusOf(second!)]).toEqual(['done', 'done']);
    for (const weekOf of [WEEK, NEXT, addDays(WEEK, 14)])
      expect((await manager.get(`/v1/week?weekOf=${weekOf}`)).body.planned).toEqual({ weekOf, days: 7 });
    expect(await standingTwice()).toEqual([]);
  });

  it('take what was only proposed in the later ones where it is better done sooner, even if those are planned no more', async () => {
    await ended((await manager.post('/v1/plan-runs', { weekOf: NEXT, iterations: 2000 })).body.id);
    const visitsOn = async (from: string) =>
      (await manager.get(`/v1/visits?from=${from}&to=${addDays(from, 6)}&limit=500`)).body.items as {
        items: object[];
      }[];
    const workOn = async (from: string) => (await visitsOn(from)).flatMap(({ items }) => items).length;
    const before = await workOn(NEXT);
    expect(before).toBeGreaterThan(0);
    // Planned by itself, the first week leaves to the second what stands there.
    await ended((await manager.post('/v1/plan-runs', { weekOf: WEEK, iterations: 2000 })).body.id);
    expect(await workOn(NEXT)).toBe(before);
    const alone = await workOn(WEEK);
    const asked = await manager.post('/v1/plan-runs', { weekOf: WEEK, weeks: 2, iterations: 2000 });
    const [second] = await followingOf(asked.body.id);
    await inShop(shopId, (tx) => tx.planRun.updateMany({ where: { id: second! }, data: { status: 'cancelled' } }));
    expect((await ended(asked.body.id)).body.status).toBe('done');
    expect(await statusOf(second!)).toBe('cancelled');
    expect(await workOn(WEEK)).toBeGreaterThan(alone);
    expect(await workOn(NEXT)).toBeLessThan(before);
    expect(await standingTwice()).toEqual([]);
  });

  it('hand what a site asked for, and its calendar entry, to the visit that takes all of its later one', async () => {
    await ended((await manager.post('/v1/plan-runs', { weekOf: NEXT, iterations: 2000 })).body.id);
    const { items: later } = (await manager.get(`/v1/visits?from=${NEXT}&limit=500`)).body;
    const wish = { kind: 'move', reason: 'a fair', days: [addDays(NEXT, 4)] };
    for (const { id } of later) expect((await manager.post(`/v1/visits/${id}/answers`, wish)).status).toBe(201);
    // Only what pays for a visit is left in each, which is better done sooner.
    await inShop(shopId, (tx) => tx.visitItem.deleteMany({ where: { role: { notIn: ['anchor', 'must-do'] } } }));
    const asked = await manager.post('/v1/plan-runs', { weekOf: WEEK, weeks: 2, iterations: 2000 });
    const [second] = await followingOf(asked.body.id);
    await inShop(shopId, (tx) => tx.planRun.updateMany({ where: { id: second! }, data: { status: 'cancelled' } }));
    expect((await ended(asked.body.id)).body.status).toBe('done');
    const { items: standing } = (await manager.get('/v1/visits?limit=500')).body;
    const moved = later.filter(({ id }: { id: string }) => !standing.some((visit: { id: string }) => visit.id === id));
    expect(moved.length).toBeGreaterThan(0);
    const { items: wishes } = (await manager.get('/v1/visit-answers?limit=500')).body;
    for (const { id, siteId } of moved) {
      const heir = standing.find(
        (visit: { siteId: string; date: string }) => visit.siteId === siteId && visit.date < NEXT,
      );
      expect(wishes).toContainEqual(expect.objectContaining({ siteId, visitId: heir.id }));
      const entries = await inShop(shopId, (tx) => tx.calendarEntry.findMany({ where: { uid: id } }));
      expect(entries).toContainEqual(expect.objectContaining({ visitId: heir.id }));
    }
  });

  it('end together: cancelled, or after a failure, those that were to follow are not begun', async () => {
    const asked = await manager.post('/v1/plan-runs', { weekOf: WEEK, weeks: 4, seconds: 60 });
    const following = await followingOf(asked.body.id);
    expect(following).toHaveLength(3);
    await until(
      () => manager.get(`/v1/plan-runs/${asked.body.id}`),
      ({ body }) => body.progress !== null,
    );
    expect((await manager.post(`/v1/plan-runs/${asked.body.id}/cancel`, {})).body).toMatchObject({ cancelAsked: true });
    for (const id of following) expect(await statusOf(id)).toBe('cancelled');
    expect((await ended(asked.body.id)).body.status).toBe('done');

    const create = (data: object) =>
      inShop(shopId, (tx) => tx.planRun.create({ data: { shopId, weekOf: dateColumn(WEEK), seconds: 1, ...data } }));
    const broken = await create({ snapshot: { version: 1 } });
    const next = await create({ weekOf: dateColumn(NEXT), followsRunId: broken.id });
    await createProcessors(workerContext(database.store, { clock })).plan({ shopId, runId: broken.id });
    expect([await statusOf(broken.id), await statusOf(next.id)]).toEqual(['failed', 'cancelled']);
  });

  it('want whole weeks', async () => {
    const refused = await manager.post('/v1/plan-runs', { weekOf: WEEK, weeks: 2, days: 14 });
    expect(refused.status).toBe(422);
    expect(refused.body.errors).toMatchObject([{ pointer: '/days' }]);
  });
});

describe('a run whose holder fell silent', () => {
  it('holds the others back until it is taken over or cancelled', async () => {
    const create = (data: object) =>
      inShop(shopId, (tx) =>
        tx.planRun.create({ data: { shopId, weekOf: dateColumn(WEEK), seconds: 1, iterations: 1000, ...data } }),
      );
    const silent = await create({ status: 'running', leaseHolder: 'gone', leaseUntil: new Date(Date.now() - 60_000) });
    const waiting = await create({ weekOf: dateColumn(NEXT) });
    const { plan } = createProcessors(workerContext(database.store, { clock }));
    await plan({ shopId, runId: waiting.id });
    expect(await statusOf(waiting.id)).toBe('asked');
    const cancelled = await manager.post(`/v1/plan-runs/${silent.id}/cancel`, {});
    expect(cancelled.body).toMatchObject({ status: 'cancelled', finishedAt: expect.any(String) });
    await plan({ shopId, runId: waiting.id });
    expect(await statusOf(waiting.id)).toBe('done');
  });
});

/** The runs that follow one, in their order. */
async function followingOf(id: string): Promise<string[]> {
  const next = (await manager.get(`/v1/plan-runs/${id}`)).body.nextRunId as string | null;
  return next === null ? [] : [next, ...(await followingOf(next))];
}
