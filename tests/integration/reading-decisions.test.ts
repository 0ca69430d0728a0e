import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop } from '../support/small-shop.js';

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let shop: SmallShop;
let manager: ApiClient;
let technician: ApiClient;

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  await createSmallShop(database.store, 'Other shop');
  api = await runningApi(database);
  manager = await api.signIn('manager');
  technician = await api.signIn('technician');
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

/** M1 runs 6 h a week and stood at 506 h on 2026-06-01; 5121 is 512.1 with its decimal point slipped. */
async function slippedReading(readAt: string, hours: string) {
  const taken = await technician.post('/v1/readings', {
    readings: [{ machineId: shop.machineIds.get('M1')!, readAt, hours }],
  });
  expect(taken.body.readings[0]).toMatchObject({ status: 'set-aside', reasonCode: 'slipped-decimal' });
  return taken.body.readings[0] as { id: string; reason: string };
}

async function decide(client: ApiClient, id: string, body: object) {
  const etag = (await manager.get(`/v1/readings/${id}`)).headers.get('etag')!;
  return client.post(`/v1/readings/${id}/decision`, body, { 'if-match': etag });
}

describe('decisions on a reading', () => {
  it('are kept with what stood before them, first to last', async () => {
    const slipped = await slippedReading('2026-06-08T15:00:00-05:00', '5121');
    expect((await manager.get(`/v1/readings/${slipped.id}/decisions`)).body).toEqual({ items: [], next: null });
    expect((await decide(manager, slipped.id, { decision: 'accept' })).body).toMatchObject({ status: 'accepted' });
    expect((await decide(manager, slipped.id, { decision: 'set-aside', reason: 'typed wrong' })).status).toBe(200);
    expect((await decide(manager, slipped.id, { decision: 'correct', hours: '512.1' })).status).toBe(200);

    const { body } = await technician.get(`/v1/readings/${slipped.id}/decisions`);
    expect(body.items).toMatchObject([
      {
        decision: 'accept',
        hoursBefore: '5121',
        hoursAfter: '5121',
        statusBefore: 'set-aside',
        codeBefore: 'slipped-decimal',
        reasonBefore: slipped.reason,
        reason: null,
        decidedByName: expect.stringMatching(/./),
      },
      { decision: 'set-aside', hoursAfter: null, statusBefore: 'accepted', codeBefore: null, reason: 'typed wrong' },
      { decision: 'correct', hoursBefore: '5121', hoursAfter: '512.1', codeBefore: 'by-hand' },
    ]);
    const first = await manager.get(`/v1/readings/${slipped.id}/decisions?limit=2`);
    const rest = await manager.get(`/v1/readings/${slipped.id}/decisions?limit=2&cursor=${first.body.next}`);
    expect([...first.body.items, ...rest.body.items]).toEqual(body.items);
  });

  it('leave no trace when they are refused', async () => {
    const slipped = await slippedReading('2026-06-09T15:00:00-05:00', '5131');
    expect((await decide(technician, slipped.id, { decision: 'accept' })).status).toBe(403);
    const stale = await manager.post(
      `/v1/readings/${slipped.id}/decision`,
      { decision: 'accept' },
      { 'if-match': '"99"' },
    );
    expect(stale.status).toBe(412);
    expect((await decide(manager, slipped.id, { decision: 'correct' })).status).toBe(422);
    expect((await manager.get(`/v1/readings/${slipped.id}/decisions`)).body.items).toEqual([]);
  });

  it('are not seen by another shop, and cannot be changed or removed', async () => {
    const slipped = await slippedReading('2026-06-10T15:00:00-05:00', '5141');
    await decide(manager, slipped.id, { decision: 'set-aside', reason: 'typed wrong' });
    const other = await api.signIn('manager', 'other-shop');
    expect((await other.get(`/v1/readings/${slipped.id}/decisions`)).status).toBe(404);
    const inShop = database.store.inShop.bind(database.store, shop.shopId);
    await expect(inShop((tx) => tx.readingDecision.updateMany({ data: { reason: 'another' } }))).rejects.toThrow(
      /permission denied/,
    );
    await expect(inShop((tx) => tx.readingDecision.deleteMany())).rejects.toThrow(/permission denied/);
    expect(await inShop((tx) => tx.readingDecision.count({ where: { readingId: slipped.id } }))).toBe(1);
  });
});
