import { stoppedClock } from '@deckround/platform';
import { afterAll, beforeAll, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runPlan } from '../support/planned-shop.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop } from '../support/small-shop.js';

let database: TestDatabase;
let shop: SmallShop;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;
const LIMIT = '2026-06-10';

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  api = await runningApi(database, undefined, stoppedClock('2026-06-05T15:00:00Z'));
  manager = await api.signIn('manager');
  const made = await manager.post('/v1/stopgaps', {
    machineId: shop.machineIds.get('M2')!,
    code: 'hose',
    description: 'hose bound with tape',
    madeOn: '2026-06-05',
    limitOn: LIMIT,
    minutes: 45,
    failureCents: 60_000,
  });
  expect(made.status).toBe(201);
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

interface Visit {
  siteId: string;
  date: string;
  items: { code: string; reason: string }[];
}
const repair = async () => {
  const visits: Visit[] = (await manager.get('/v1/visits?limit=500')).body.items;
  return visits.find((visit) => visit.items.some((item) => item.code === 'hose'))!;
};
const near = async () =>
  (await manager.get('/v1/alerts')).body.items.find((each: { kind: string }) => each.kind === 'stopgap-limit-near');

it('a limit that is near asks for a plan where none knows of the repair, and for nothing once it stands before it', async () => {
  expect((await near()).choice).toMatch(/^Plan the week again/);
  await runPlan(manager, { iterations: 1000, seed: 1 });
  expect((await repair()).date <= LIMIT).toBe(true);
  expect(await near()).toBeUndefined();
});

it('a repair that nothing allows before the limit is made soon after it, and the advice is not to plan again', async () => {
  const { siteId } = await repair();
  const bars: { id: string }[] = [];
  for (const date of ['2026-06-08', '2026-06-09', LIMIT]) {
    const { status, body } = await manager.post('/v1/visit-bars', { siteId, technicianId: null, date, reason: 'fair' });
    expect(status).toBe(201);
    bars.push(body);
  }
  await runPlan(manager, { iterations: 1000, seed: 1 });
  const { date, items } = await repair();
  expect(date > LIMIT).toBe(true);
  expect(items.find((item) => item.code === 'hose')!.reason).toMatch(/should have been done by 2026-06-10/);
  expect(await near()).toMatchObject({
    choice: `Renew the stopgap before ${LIMIT}, or have the machine stand from ${LIMIT} until ${date}.`,
    move: null,
  });

  for (const { id } of bars) await manager.delete(`/v1/visit-bars/${id}`);
  const opened = await near();
  expect(opened.move.date <= LIMIT).toBe(true);
  expect(opened.choice).toBe(`Move the visit to ${opened.move.date}, before the limit.`);
});
