import { stoppedClock } from '@deckround/platform';
import { afterAll, beforeAll, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runPlan } from '../support/planned-shop.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop, WEEK } from '../support/small-shop.js';

interface Item {
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
