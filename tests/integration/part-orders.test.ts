import { randomUUID } from 'node:crypto';
import { stoppedClock } from '@deckround/platform';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runPlan } from '../support/planned-shop.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop } from '../support/small-shop.js';

let database: TestDatabase;
let shop: SmallShop;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;
let partId: string;

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  api = await runningApi(database, undefined, stoppedClock('2026-06-05T15:00:00Z'));
  manager = await api.signIn('manager');
  const { items } = (await manager.get('/v1/parts')).body;
  partId = items.find((part: { code: string }) => part.code === 'BRG-6205-2Z').id;
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});
beforeEach(() =>
  database.store.inShop(shop.shopId, async (tx) => {
    await tx.partOrder.deleteMany({});
    await tx.stock.updateMany({ where: { partId }, data: { onHand: 1 } });
  }),
);

const order = async (expectedOn = '2026-06-05') => {
  const made = await manager.post('/v1/part-orders', { partId, quantity: '9', orderedOn: '2026-06-01', expectedOn });
  expect(made.status).toBe(201);
  return made.body as { id: string };
};
const change = (id: string, body: object, version = '*') => manager.patch(`/v1/part-orders/${id}`, body, version);
const takeBack = (id: string, body: object, key: string = randomUUID()) =>
  manager.post(`/v1/part-orders/${id}/take-back`, body, { 'idempotency-key': key });
const onHand = async () => (await manager.get(`/v1/parts/${partId}`)).body.onHand;
const overdue = async (): Promise<string[]> =>
  (await manager.get('/v1/alerts')).body.items
    .filter((each: { kind: string }) => each.kind === 'order-overdue')
    .map((each: { sentence: string }) => each.sentence);
/** Acts on the order, the first first. */
const acts = async (id: string) =>
  (await manager.get('/v1/audit-entries?limit=500')).body.items
    .filter((each: { subjectId: string }) => each.subjectId === id)
    .map((each: { action: string; detail: { quantity: string } }) => [each.action, each.detail.quantity])
    .sort();

describe('an order of parts', () => {
  it('that comes in two deliveries puts each on the shelf, and the rest is still to come', async () => {
    const { id } = await order('2026-06-03');
    const first = await change(id, { receivedOn: '2026-06-04', receivedQuantity: '4' });
    expect(first.body).toMatchObject({ outstanding: '5', receivedQuantity: '4', receivedOn: '2026-06-04' });
    expect(await onHand()).toBe('5');
    expect(await overdue()).toEqual([expect.stringMatching(/: 5 ordered on 2026-06-01 should have come/)]);
    expect((await change(id, { expectedOn: '2026-06-09' })).status).toBe(200);
    expect(await overdue()).toEqual([]);

    const last = await change(id, { receivedOn: '2026-06-05' });
    expect(last.body).toMatchObject({ outstanding: '0', receivedQuantity: '9', receivedOn: '2026-06-05' });
    expect(await onHand()).toBe('10');
    expect((await change(id, { receivedOn: '2026-06-05' })).status).toBe(409);
    expect(await acts(id)).toEqual([
      ['part-order.received', '4'],
      ['part-order.received', '5'],
    ]);
  });

  it('that is cancelled stays with its day, and nothing counts on what was to come', async () => {
    const { id } = await order('2026-06-03');
    await change(id, { receivedOn: '2026-06-04', receivedQuantity: '2.5' });
    const cancelled = await change(id, { cancelledOn: '2026-06-05' });
    expect(cancelled.body).toMatchObject({ outstanding: '0', receivedQuantity: '2.5', cancelledOn: '2026-06-05' });
    expect(await onHand()).toBe('3.5');
    expect(await overdue()).toEqual([]);
    expect((await manager.get('/v1/part-orders')).body.items).toHaveLength(1);
    for (const body of [{ receivedOn: '2026-06-05' }, { expectedOn: '2026-06-09' }, { cancelledOn: '2026-06-05' }])
      expect((await change(id, body)).status).toBe(409);
    expect(await onHand()).toBe('3.5');
    expect(await acts(id)).toEqual([
      ['part-order.cancelled', '6.5'],
      ['part-order.received', '2.5'],
    ]);
  });

  it('is counted on for as much as is still to come, and not at all once it is cancelled', async () => {
    const needed = async (): Promise<number> => {
      const { lines } = (await manager.get('/v1/order-list?weeks=12')).body;
      return lines.find((line: { partId: string }) => line.partId === partId)?.quantity ?? 0;
    };
    await database.store.inShop(shop.shopId, (tx) => tx.stock.updateMany({ where: { partId }, data: { onHand: 0 } }));
    const owed = await manager.post('/v1/stopgaps', {
      machineId: shop.machineIds.get('M2')!,
      code: 'bearing',
      description: 'old bearings greased and left in',
      madeOn: '2026-06-05',
      limitOn: '2026-06-12',
      partId,
      partQuantity: '12',
      partExpectedOn: '2026-06-09',
      minutes: 45,
      failureCents: 60_000,
    });
    expect(owed.status).toBe(201);
    await runPlan(manager, { iterations: 1000, seed: 1 });
    const without = await needed();
    expect(without).toBeGreaterThanOrEqual(12);
    const { id } = await order('2026-06-05');
    expect(await needed()).toBe(Math.max(0, without - 9));
    await change(id, { receivedOn: '2026-06-05', receivedQuantity: '4' });
    // what came lies on the shelf, the rest comes: as many as before
    expect(await needed()).toBe(Math.max(0, without - 9));
    await change(id, { cancelledOn: '2026-06-05' });
    expect(await needed()).toBe(Math.max(0, without - 4));
    await database.store.inShop(shop.shopId, (tx) => tx.stock.updateMany({ where: { partId }, data: { onHand: 0 } }));
    expect(await needed()).toBe(without);
  });

  it('refuses what cannot have come, with the field and what to do', async () => {
    const { id } = await order();
    await change(id, { receivedOn: '2026-06-05', receivedQuantity: '4' });
    const faults = [];
    for (const body of [
      { receivedOn: '2026-06-05', receivedQuantity: '10' },
      { receivedOn: '2026-06-05', receivedQuantity: '4' },
      { receivedQuantity: '5' },
      { receivedOn: '2026-06-05', cancelledOn: '2026-06-05' },
      { receivedOn: '2026-06-06' },
      { cancelledOn: '2026-06-06' },
    ]) {
      const { status, body: problem } = await change(id, body);
      faults.push([status, problem.errors?.[0]?.pointer]);
    }
    expect(faults).toEqual([
      [422, '/receivedQuantity'],
      [422, '/receivedQuantity'],
      [422, '/receivedOn'],
      [422, '/cancelledOn'],
      [422, '/receivedOn'],
      [422, '/cancelledOn'],
    ]);
    expect(await onHand()).toBe('5');
  });

  it('received by mistake is taken back from the shelf, and is still to come', async () => {
    const { id } = await order();
    await change(id, { receivedOn: '2026-06-05' });
    const reason = 'they were of another order';
    const part = await takeBack(id, { quantity: '4', reason }, 'same');
    expect(part).toMatchObject({
      status: 201,
      body: { outstanding: '4', receivedQuantity: '5', receivedOn: '2026-06-05' },
    });
    expect((await takeBack(id, { quantity: '4', reason }, 'same')).body).toEqual(part.body);
    expect(await onHand()).toBe('6');
    const all = await takeBack(id, { quantity: '5', reason });
    expect(all.body).toMatchObject({ outstanding: '9', receivedQuantity: '0', receivedOn: null });
    expect(await onHand()).toBe('1');
    expect((await takeBack(id, { quantity: '1', reason })).body.errors).toMatchObject([{ pointer: '/quantity' }]);
    expect((await change(id, { receivedOn: '2026-06-05', receivedQuantity: '2' })).body.outstanding).toBe('7');
    expect(await acts(id)).toEqual([
      ['part-order.received', '2'],
      ['part-order.received', '9'],
      ['part-order.taken-back', '4'],
      ['part-order.taken-back', '5'],
    ]);
    const trail = (await manager.get(`/v1/audit-entries?subjectId=${id}`)).body.items;
    expect(trail.map((each: { detail: object }) => each.detail)).toContainEqual({
      ...{ partId, quantity: '4', reason, on: '2026-06-05' },
    });
  });

  it('is not taken back where the shelf no longer holds so many, unless that is said', async () => {
    const { id } = await order();
    await change(id, { receivedOn: '2026-06-05', receivedQuantity: '4' });
    await change(id, { cancelledOn: '2026-06-05' });
    await database.store.inShop(shop.shopId, (tx) => tx.stock.updateMany({ where: { partId }, data: { onHand: 3 } }));
    const body = { quantity: '4', reason: 'none came' };
    expect(await takeBack(id, body)).toMatchObject({
      status: 409,
      body: { detail: expect.stringMatching(/^The shelf holds 3 of them/) },
    });
    expect(await onHand()).toBe('3');
    const gone = await takeBack(id, { ...body, evenIfGone: true });
    // what was cancelled stays so: nothing of it comes
    expect(gone.body).toMatchObject({ receivedQuantity: '0', outstanding: '0', cancelledOn: '2026-06-05' });
    expect(await onHand()).toBe('0');
  });

  it('received by two at once is put on the shelf once', async () => {
    const { id } = await order();
    const both = await Promise.all([1, 2].map(() => change(id, { receivedOn: '2026-06-05' }, '"1"')));
    expect(both.map(({ status }) => status).sort()).not.toEqual([200, 200]);
    expect(await onHand()).toBe('10');
  });
});
