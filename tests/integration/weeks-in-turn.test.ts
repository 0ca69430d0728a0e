import { stoppedClock } from '@deckround/platform';
import { afterAll, beforeAll, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runPlan } from '../support/planned-shop.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop, WEEK } from '../support/small-shop.js';

interface Item {
  id: string;
  machineId: string;
  code: string;
  slot: string | null;
}
interface VisitView {
  id: string;
  version: number;
  date: string;
  state: string;
  items: Item[];
}

const NEXT_WEEK = '2026-06-15';
let database: TestDatabase;
let shop: SmallShop;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;
const clock = stoppedClock('2026-06-07T15:00:00Z');

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  api = await runningApi(database, undefined, clock);
  manager = await api.signIn('manager');
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

const plan = (weekOf: string) => runPlan(manager, { weekOf });

const visits = async (): Promise<VisitView[]> => (await manager.get('/v1/visits?limit=500')).body.items;
const namesOf = (items: readonly Item[]) =>
  items.map(({ machineId, code, slot }) => `${machineId} ${code} ${slot ?? ''}`);
/** Work of the visits that stand from a date on, each time it is named. */
const workFrom = async (date: string) =>
  namesOf((await visits()).filter((each) => each.date >= date && each.state !== 'cancelled').flatMap((v) => v.items));
const twice = (names: readonly string[]) => names.filter((name, k) => names.indexOf(name) !== k);

it('does not plan again what a visit before or after the week does', async () => {
  await plan(WEEK);
  // On the morning of the last day with visits, for the week to come.
  const today = (await visits())
    .map((each) => each.date)
    .sort()
    .at(-1)!;
  clock.moveTo(`${today}T11:00:00Z`);
  const standing = await workFrom(today);
  expect(standing.length).toBeGreaterThan(0);
  const call = await manager.post('/v1/road-calls', {
    ...{ machineId: shop.machineIds.get('M3')!, calledAt: `${today}T11:00:00Z`, symptom: 'does not start' },
  });
  await plan(NEXT_WEEK);
  const both = await workFrom(today);
  expect(twice(both)).toEqual([]);
  expect(both).toEqual(expect.arrayContaining(standing));
  const next = await workFrom(NEXT_WEEK);
  expect(next).toContainEqual(expect.stringContaining('road-call'));

  // The rest of this week again: the week to come keeps its own.
  await plan(WEEK);
  expect(await workFrom(NEXT_WEEK)).toEqual(next);
  expect((await manager.get(`/v1/road-calls/${call.body.id}`)).body.state).toBe('planned');
  expect(twice(await workFrom(today))).toEqual([]);

  // Promised or not makes no difference.
  const [coming] = (await visits()).filter((each) => each.date >= NEXT_WEEK);
  await manager.patch(`/v1/visits/${coming!.id}`, { state: 'confirmed', moveCents: 4000 }, `"${coming!.version}"`);
  await plan(WEEK);
  expect(twice(await workFrom(today))).toEqual([]);
});

it('plans for the week to come what falls due again by then, and keeps it there when the visit before is made', async () => {
  const { items } = (await manager.get('/v1/service-items?machineClass=zero-turn&limit=500')).body;
  const blades = items.find((item: { code: string }) => item.code === 'sharpen-blades');
  await manager.patch(
    `/v1/service-items/${blades.id}`,
    { intervalHours: '8', toleranceHours: '1', mustDo: true },
    `"${blades.version}"`,
  );
  // The busiest machine runs ten hours a week.
  const machineId = shop.machineIds.get('M5')!;
  const sharpenings = async () =>
    (await visits())
      .filter((visit) => visit.date >= '2026-06-22')
      .filter((visit) => visit.items.some((item) => item.machineId === machineId && item.code === 'sharpen-blades'));
  clock.moveTo('2026-06-21T15:00:00Z');
  await plan('2026-06-22');
  await plan('2026-06-29');
  const [first, second, ...others] = (await sharpenings()).sort((a, b) => (a.date < b.date ? -1 : 1));
  expect([first?.date.slice(0, 7), others]).toEqual(['2026-06', []]);
  expect(first!.date < '2026-06-27' && second!.date >= '2026-06-29').toBe(true);

  const prices = async () => {
    const { status, body } = await manager.get(`/v1/visits/${second!.id}/move-prices`);
    return { status, ...body, stamp: null };
  };
  const before = await prices();
  expect(before.status).toBe(200);
  clock.moveTo(`${first!.date}T22:00:00Z`);
  const done = first!.items.map((item) => item.id);
  const finish = { finishedAt: `${first!.date}T21:00:00Z`, done };
  expect((await manager.post(`/v1/visits/${first!.id}/finish`, finish)).status).toBe(201);
  expect(await prices()).toEqual(before);

  // Done by somebody else in the meantime, it is not done again.
  const sooner = { machineId, itemCode: 'sharpen-blades', doneOn: '2026-06-26' };
  clock.moveTo('2026-06-26T22:00:00Z');
  expect((await manager.post('/v1/completions', sooner)).status).toBe(201);
  expect(await prices()).not.toEqual(before);
});
