import { stoppedClock } from '@deckround/platform';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runPlan } from '../support/planned-shop.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop } from '../support/small-shop.js';

const THURSDAY = '2026-06-11';
const FRIDAY = '2026-06-12';

let database: TestDatabase;
let shop: SmallShop;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;
let partId: string;
/** The visit that takes the part. */
let visitId: string;

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  api = await runningApi(database, undefined, stoppedClock('2026-06-05T15:00:00Z'));
  manager = await api.signIn('manager');
  const { items } = (await manager.get('/v1/parts')).body;
  partId = items.find((part: { code: string }) => part.code === 'BRG-6205-2Z').id;
  const owed = await manager.post('/v1/stopgaps', {
    ...{ machineId: shop.machineIds.get('M2')!, code: 'bearing', description: 'old bearing greased and left in' },
    ...{ madeOn: '2026-06-05', limitOn: FRIDAY, partId, partQuantity: '9', minutes: 45, failureCents: 60_000 },
  });
  expect(owed.status).toBe(201);
  await runPlan(manager, { iterations: 1000 });
  const visits = (await manager.get('/v1/visits?limit=500')).body.items;
  visitId = visits.find((visit: { items: { code: string }[] }) =>
    visit.items.some(({ code }) => code === 'bearing'),
  ).id;
  await move({ date: '2026-06-09' });
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

/** Nothing on the shelf, an order of today far off; one order, or none. */
async function arrives(expectedOn: string | null): Promise<void> {
  await database.store.inShop(shop.shopId, async (tx) => {
    await tx.partOrder.deleteMany({});
    await tx.stock.updateMany({ where: { partId }, data: { onHand: 0 } });
    await tx.part.updateMany({ where: { id: partId }, data: { leadDays: 30 } });
  });
  if (expectedOn === null) return;
  const order = { partId, quantity: '9', orderedOn: '2026-06-01', expectedOn };
  expect((await manager.post('/v1/part-orders', order)).status).toBe(201);
}

async function move(to: { date: string }): Promise<number> {
  const { places } = await prices();
  const place = places.find((each) => each.date === to.date);
  const { technicianId, date, order } = place ?? { ...to, technicianId: places[0]!.technicianId, order: 0 };
  return (await manager.post(`/v1/visits/${visitId}/move`, { technicianId, date, order, pinned: false })).status;
}

interface Prices {
  places: { technicianId: string; date: string; order: number }[];
  closed: { date: string; obstacle: string }[];
}
const prices = async (): Promise<Prices> => {
  const { status, body } = await manager.get(`/v1/visits/${visitId}/move-prices`);
  expect(status).toBe(200);
  return body;
};
/** Days that are offered, and those that are not for want of the part. */
const offered = async () => {
  const { places, closed } = await prices();
  const without = closed.filter(({ obstacle }) => obstacle === 'part').map(({ date }) => date.slice(8));
  return [days(places.map(({ date }) => date.slice(8))), days(without)];
};
const days = (dates: string[]) => [...new Set(dates)].sort().join(' ');

describe('a visit is moved by when its parts are there today', () => {
  it('to any day while they are on the shelf', async () => {
    expect(await offered()).toEqual(['08 09 10 11 12', '']);
  });

  it('to no day before they come, when an order comes late; it may stay on its own', async () => {
    await arrives(THURSDAY);
    expect(await offered()).toEqual(['09 11 12', '08 10']);
    expect(await move({ date: '2026-06-10' })).toBe(409);
    expect(await move({ date: FRIDAY })).toBe(201);
    expect(await offered()).toEqual(['11 12', '08 09 10']);
  });

  it('to a day on which they are there by now, when an order comes sooner', async () => {
    await arrives('2026-06-09');
    expect(await offered()).toEqual(['09 10 11 12', '08']);
  });

  it('to any day, when none of these has them: it lacks them wherever it stands', async () => {
    await arrives(null);
    expect(await offered()).toEqual(['08 09 10 11 12', '']);
  });
});
