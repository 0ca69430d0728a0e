import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { type ApiClient, until } from '../support/api-client.js';
import { type FieldShop, fieldShop } from '../support/field-shop.js';
import { runPlan } from '../support/planned-shop.js';

const TODAY = '2026-06-05';

let field: FieldShop;
let manager: ApiClient;
const machine = (code: string) => field.shop.machineIds.get(code)!;

beforeAll(async () => {
  field = await fieldShop();
  manager = field.manager;
  await forecastsDone(await manager.post('/v1/forecast-runs', {}));
}, 60_000);
afterAll(() => field.stop());

async function forecastsDone(_asked?: unknown): Promise<void> {
  await until(
    () =>
      field.database.store.asOwner((tx) => tx.forecastRun.count({ where: { status: { in: ['asked', 'running'] } } })),
    (count) => count === 0,
  );
}

async function made(code: string, limits: object, more: object = {}) {
  const { status, body } = await manager.post('/v1/stopgaps', {
    ...{ machineId: machine(code), code: 'hose', description: `hose of ${code} bound with tape`, madeOn: '2026-06-01' },
    ...{ minutes: 45, failureCents: 60_000, ...limits, ...more },
  });
  expect(status).toBe(201);
  return body as { id: string; version: number };
}

const renew = (id: string, body: object, headers = {}) => manager.post(`/v1/stopgaps/${id}/renew`, body, headers);
const close = (id: string, body: object = {}) =>
  manager.post(`/v1/stopgaps/${id}/close`, { because: 'not-needed', reason: 'the machine is sold', ...body });
const owedFor = async (id: string) =>
  (await manager.get('/v1/follow-ups?limit=500')).body.items.find(
    (each: { stopgapId: string }) => each.stopgapId === id,
  );
const due = async (stopgap: string) =>
  (await manager.get('/v1/due?kind=stopgap&limit=500')).body.items.find((each: { title: string }) =>
    each.title.includes(stopgap),
  );
const told = async (subjectId: string) =>
  (await manager.get(`/v1/audit-entries?subjectId=${subjectId}`)).body.items as { action: string }[];

interface Visit {
  id: string;
  siteId: string;
  date: string;
  state: string;
  version: number;
  items: { id: string; machineId: string; code: string; state: string }[];
}
const visits = async (): Promise<Visit[]> => (await manager.get('/v1/visits?limit=500')).body.items;
const repairOf = async (code: string): Promise<Visit | undefined> =>
  (await visits()).find(({ items }) => items.some((each) => each.code === 'hose' && each.machineId === machine(code)));

describe('renewing a stopgap', () => {
  it('counts its new hours from the renewal, and says who did it, when and why', async () => {
    const { id } = await made('M2', { limitHours: '5' });
    await forecastsDone(await manager.post('/v1/forecast-runs', {}));
    const before = (await due('hose of M2')).why;
    await field.database.store.asOwner((tx) =>
      tx.stopgap.update({ where: { id }, data: { limitToldAt: field.clock.now() } }),
    );
    const renewed = await renew(id, { limitHours: '20', limitOn: '2026-08-01', reason: 'taped again, holds' });
    expect(renewed).toMatchObject({
      status: 201,
      body: { limitHours: '20', limitOn: '2026-08-01', renewedOn: TODAY, closedOn: null, version: 2 },
    });
    expect(await owedFor(id)).toMatchObject({ dueOn: '2026-08-01', closedOn: null });
    const row = await field.database.store.asOwner((tx) => tx.stopgap.findUniqueOrThrow({ where: { id } }));
    expect(row.limitToldAt).toBeNull();
    await forecastsDone();
    const { why } = await due('hose of M2');
    expect(why.dueAtHours).toBeCloseTo(why.lifetimeHoursNow + 20, 0);
    expect(why.dueAtHours).toBeGreaterThan(before.dueAtHours + 15);
    const trail = (await manager.get(`/v1/audit-entries?machineId=${machine('M2')}`)).body.items;
    expect(trail).toMatchObject([
      {
        ...{ action: 'stopgap.renewed', actorName: expect.any(String), subjectId: id, machineId: machine('M2') },
        detail: {
          ...{ what: 'hose of M2 bound with tape', reason: 'taped again, holds', on: TODAY },
          ...{ limitHours: '20', limitOn: '2026-08-01', limitHoursBefore: '5', limitOnBefore: null },
        },
      },
    ]);
  });

  it('shows the new limit at once, before the forecast has come', async () => {
    const { id } = await made('M3', { limitOn: '2026-06-08' });
    await forecastsDone(await manager.post('/v1/forecast-runs', {}));
    const isNear = async () =>
      (await manager.get('/v1/alerts')).body.items.some((each: { stopgapId: string }) => each.stopgapId === id);
    expect(await isNear()).toBe(true);
    await renew(id, { limitOn: '2026-06-20', reason: 'holds' });
    expect(await isNear()).toBe(false);
    expect((await due('hose of M3')).p10).toBe('2026-06-20');
    await forecastsDone();
    await close(id);
  });

  it('is read by the next plan', async () => {
    const { id } = await made('M4', { limitOn: '2026-06-09' });
    const latest = async () => {
      const run = await runPlan(manager, { iterations: 1000, seed: 1 });
      const { items } = (await manager.get(`/v1/plan-runs/${run}/snapshot`)).body;
      return items.find((each: { id: string }) => each.id === `stopgap/${id}`).latestDate;
    };
    expect(await latest()).toBe('2026-06-09');
    const planned = await repairOf('M4');
    await renew(id, { limitOn: '2026-06-11', reason: 'holds' });
    expect(await repairOf('M4')).toMatchObject({ id: planned!.id, state: 'proposed' });
    expect(await latest()).toBe('2026-06-11');
  });

  it('happens once for one key', async () => {
    const { id } = await made('M1', { limitOn: '2026-06-12' });
    const body = { limitOn: '2026-06-19', reason: 'holds' };
    const answers = [
      await renew(id, body, { 'idempotency-key': 'a' }),
      await renew(id, body, { 'idempotency-key': 'a' }),
    ];
    expect(answers.map(({ status, body }) => [status, body.version])).toEqual([
      [201, 2],
      [201, 2],
    ]);
    expect(await told(id)).toHaveLength(1);
  });

  it('is refused where it says nothing new, with the field that says so', async () => {
    const { id } = await made('M1', { limitOn: '2026-06-12' });
    const refused = async (body: object) => {
      const { status, body: problem } = await renew(id, { reason: 'holds', ...body });
      return [status, problem.errors?.map((each: { pointer: string }) => each.pointer)];
    };
    expect(await refused({ limitOn: '2026-06-12' })).toEqual([422, ['/limitOn']]);
    expect(await refused({ limitOn: '2026-06-04' })).toEqual([422, ['/limitOn']]);
    // The machine runs some six hours a week.
    expect(await refused({ limitHours: '2' })).toEqual([422, ['/limitHours']]);
    expect(await refused({ limitHours: '2', limitOn: '2026-07-01' })).toEqual([422, ['/limitHours']]);
    expect(await refused({ limitHours: '0' })).toEqual([422, ['/limitHours']]);
    expect(await refused({})).toEqual([422, ['/limitHours']]);
    expect(await refused({ limitOn: '2026-07-01', reason: '' })).toEqual([422, ['/reason']]);
    expect(await refused({ limitHours: '40' })).toEqual([201, undefined]);
    expect((await renew(randomId, { limitOn: '2026-07-01', reason: 'holds' })).status).toBe(404);
    expect((await field.technician.post(`/v1/stopgaps/${id}/renew`, { limitHours: '90', reason: 'x' })).status).toBe(
      403,
    );
  });
});
const randomId = '5a3f0c1e-0000-4000-8000-000000000099';

describe('closing a stopgap', () => {
  it('is never good for no hours, and one told so before stops no forecast', async () => {
    const told = {
      machineId: machine('M1'),
      code: 'hose',
      description: 'hose tied up',
      madeOn: '2026-06-01',
      minutes: 45,
    };
    const refused = await manager.post('/v1/stopgaps', { ...told, limitHours: '0' });
    expect([refused.status, refused.body.errors?.[0]?.pointer]).toEqual([422, '/limitHours']);
    const { id } = await made('M1', { limitHours: '3' });
    await field.database.store.asOwner((tx) => tx.stopgap.update({ where: { id }, data: { limitHours: '0' } }));
    const run = await manager.post('/v1/forecast-runs', {});
    await forecastsDone();
    expect((await manager.get(`/v1/forecast-runs/${run.body.id}`)).body).toMatchObject({ status: 'done', error: null });
    await close(id);
  });

  it('closes what it owed, and says who did it, when and why', async () => {
    const { id } = await made('M5', { limitOn: '2026-06-12' });
    const closed = await close(id, { because: 'done-otherwise', reason: 'the site mended it', closedOn: '2026-06-04' });
    expect(closed).toMatchObject({ status: 201, body: { closedOn: '2026-06-04' } });
    expect(await owedFor(id)).toMatchObject({ closedOn: '2026-06-04' });
    expect(await told(id)).toMatchObject([
      {
        ...{ action: 'stopgap.closed', machineId: machine('M5') },
        detail: { because: 'done-otherwise', reason: 'the site mended it', on: '2026-06-04' },
      },
    ]);
    expect((await close(id)).status).toBe(409);
    expect((await renew(id, { limitOn: '2026-07-01', reason: 'holds' })).status).toBe(409);
  });

  it('is refused of a day that is yet to come, or before the stopgap was made', async () => {
    const { id } = await made('M5', { limitOn: '2026-06-12' });
    for (const closedOn of ['2026-06-06', '2026-05-31'])
      expect(await close(id, { closedOn })).toMatchObject({
        status: 422,
        body: { errors: [{ pointer: '/closedOn' }] },
      });
    expect((await owedFor(id)).closedOn).toBeNull();
    await close(id);
  });

  it('takes the repair out of a visit that has other work, which stands as it was promised', async () => {
    const { id } = await made('M6', { limitOn: '2026-06-11' });
    await runPlan(manager, { iterations: 1000, seed: 1 });
    const visit = (await repairOf('M6'))!;
    expect(visit.items.length).toBeGreaterThan(1);
    await manager.patch(`/v1/visits/${visit.id}`, { state: 'confirmed' }, `"${visit.version}"`);
    const promised: Visit = (await manager.get(`/v1/visits/${visit.id}`)).body;
    await close(id);
    const after: Visit = (await manager.get(`/v1/visits/${visit.id}`)).body;
    expect(after).toMatchObject({ state: 'confirmed', items: promised.items.filter(({ code }) => code !== 'hose') });
    expect(after.version).toBeGreaterThan(promised.version);
    const { body } = await manager.get(`/v1/week?weekOf=2026-06-08`);
    expect(JSON.stringify(body.leftOut)).not.toContain('hose of M6');
    await runPlan(manager, { iterations: 1000, seed: 1 });
    expect(await repairOf('M6')).toBeUndefined();
  });

  it('gives up a visit made for nothing else, and tells whom it was promised', async () => {
    const { id } = await made('M3', { limitOn: '2026-06-12' });
    const { store } = field.database;
    const contact = { name: 'Kim', email: 'kim@green.example', notices: ['visit.cancelled'] };
    for (const siteId of field.shop.siteIds.values()) await manager.post('/v1/site-contacts', { siteId, ...contact });
    const visit = await store.inShop(field.shop.shopId, async (tx) => {
      const like = await tx.visit.findFirstOrThrow({ include: { visitItems: { take: 1 } } });
      const { id: _, statedCharges: __, visitItems, ...row } = like;
      const made = await tx.visit.create({ data: { ...row, state: 'confirmed', visitDate: new Date('2026-07-01') } });
      const { id: ___, ...item } = visitItems[0]!;
      const repair = { serviceItemId: null, roadCallId: null, stopgapId: id, machineId: machine('M3'), code: 'hose' };
      await tx.visitItem.create({ data: { ...item, ...repair, slot: null, visitId: made.id, state: 'planned' } });
      return made;
    });
    await close(id);
    const { state, reason } = (await manager.get(`/v1/visits/${visit.id}`)).body;
    expect([state, reason]).toEqual(['cancelled', 'Its stopgap was closed, and it had no other work.']);
    const events = await store.asOwner((tx) => tx.outboxEvent.findMany({ where: { type: 'visit.cancelled' } }));
    expect(events.map(({ body }) => JSON.parse(body).data.visitId)).toEqual([visit.id]);
  });

  it('leaves alone what a closed visit tells', async () => {
    const { id } = await made('M2', { limitOn: '2026-06-12' });
    await runPlan(manager, { iterations: 1000, seed: 1 });
    const visit = (await visits()).find(({ items }) => items.some((each) => each.code === 'hose'))!;
    await manager.post(`/v1/visits/${visit.id}/finish`, { finishedAt: `${TODAY}T15:00:00Z`, done: [] });
    await close(id);
    const after: Visit = (await manager.get(`/v1/visits/${visit.id}`)).body;
    expect(after.state).toBe('done');
    expect(after.items).toHaveLength(visit.items.length);
  });
});
