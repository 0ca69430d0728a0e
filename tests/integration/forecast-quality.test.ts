import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop } from '../support/small-shop.js';

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let shop: SmallShop;
let manager: ApiClient;

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  api = await runningApi(database);
  manager = await api.signIn('manager');
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

describe('how good our forecasts were', () => {
  it('is told by days ahead and in one sentence', async () => {
    const { status, body } = await manager.get('/v1/forecast-quality');
    expect(status).toBe(200);
    expect(body.asOf).toBe('2026-06-01');
    expect(body.rows.map((row: { daysAhead: number }) => row.daysAhead)).toEqual([7, 14, 30, 60, 90]);
    for (const row of body.rows) {
      expect(row.judged).toBeGreaterThan(5);
      expect(row.coverage50).toBeLessThanOrEqual(row.coverage80);
      expect(row.coverage80).toBeLessThanOrEqual(row.coverage95);
      // the small shop runs on a straight line, which slopes hit but for the hours between reading and end of day
      expect(row.lastTwoReadingsHours).toBeLessThan(0.5);
      expect(row.wholeLifeHours).toBeLessThan(0.5);
    }
    expect(body.sentence).toMatch(/^Of \d+ past forecasts 30 days ahead, \d+ % fell inside the 80 % range\./);
  });

  it('is computed once, until readings change', async () => {
    const [first, second] = await Promise.all([
      manager.get('/v1/forecast-quality'),
      manager.get('/v1/forecast-quality'),
    ]);
    expect(second.body).toEqual(first.body);
    const reading = { machineId: shop.machineIds.get('M1')!, readAt: '2026-06-08T15:00:00-05:00', hours: '512' };
    expect((await manager.post('/v1/readings', { readings: [reading] })).status).toBe(201);
    const after = await manager.get('/v1/forecast-quality');
    expect(after.body.asOf).toBe('2026-06-08');
    expect(after.body.computedAt).not.toBe(first.body.computedAt);
  });

  it('is the manager’s to see', async () => {
    const technician = await api.signIn('technician');
    expect((await technician.get('/v1/forecast-quality')).status).toBe(403);
    const supervisor = await api.signIn('supervisor');
    expect((await supervisor.get('/v1/forecast-quality')).status).toBe(403);
  });

  it('claims nothing for a shop without readings', async () => {
    const empty = await createSmallShop(database.store, 'Empty shop');
    await database.store.inShop(empty.shopId, (tx) => tx.reading.deleteMany());
    const { body } = await (await api.signIn('manager', 'empty-shop')).get('/v1/forecast-quality');
    expect(body).toMatchObject({
      asOf: null,
      sentence: 'No past forecast can be judged yet: more readings are needed.',
    });
    expect(body.rows.map((row: { judged: number }) => row.judged)).toEqual([0, 0, 0, 0, 0]);
  });
});
