import { hashPassword } from '@deckround/api';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { PASSWORD } from '../support/small-shop.js';

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;

beforeAll(async () => {
  database = await freshDatabase();
  const passwordHash = await hashPassword(PASSWORD);
  await database.store.asOwner(async (tx) => {
    const { id: shopId } = await tx.shop.create({ data: { name: 'New shop', timeZone: 'America/Chicago' } });
    const email = 'manager@small-shop.example';
    await tx.person.create({ data: { shopId, name: 'Alder', email, role: 'manager', passwordHash } });
  });
  // With a queue that nobody works on, the forecast is asked for and left: it would only keep this file busy.
  const url = process.env.DECKROUND_TEST_REDIS;
  const queue = url ? { url, prefix: `demo-shop-${process.pid}` } : undefined;
  // The last hour of a winter's day in the demo's zone: its own calendar stands in summer time.
  api = await runningApi(database, queue, { now: () => new Date('2026-11-28T05:25:00Z') });
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

describe('the demo shop of an empty shop', () => {
  it('is made once, its forecast asked for, apart from the shop that looks at it', async () => {
    const manager = await api.signIn('manager');
    const [first, second] = await Promise.all([
      manager.post('/v1/demo-shop', undefined),
      manager.post('/v1/demo-shop', undefined),
    ]);
    expect(first).toMatchObject({ status: 201, body: { person: { role: 'manager' } } });
    expect(second.body.person).toEqual(first.body.person);
    const demo = new ApiClient(api.service.address, first.body.token);
    expect((await demo.get('/v1/shop')).body.counts).toMatchObject({ machines: 400, technicians: 3 });
    expect((await manager.get('/v1/shop')).body.counts).toMatchObject({ machines: 0, customers: 0 });
    expect((await demo.post('/v1/demo-shop', undefined)).status).toBe(409);
    const runs = await database.store.asOwner((tx) => tx.forecastRun.findMany());
    expect(runs.map((run) => run.asOf.toISOString().slice(0, 10))).toEqual(['2026-06-04']);
    // Its people see the shop where its calendar stands, whatever the date of the world.
    expect((await demo.get('/v1/shop')).body.today).toBe('2026-06-04');
    expect((await demo.get('/v1/order-list')).body.asOf).toBe('2026-06-04');
    expect((await manager.get('/v1/shop')).body).toMatchObject({ clockShiftDays: 0 });
    const shops = await database.store.asOwner((tx) => tx.shop.count());
    expect(shops).toBe(2);
  });
});
