import { afterAll, beforeAll, expect, it } from '@jest/globals';
import { type FieldShop, fieldShop } from '../support/field-shop.js';

let field: FieldShop;
let manager: FieldShop['manager'];
beforeAll(async () => {
  field = await fieldShop();
  manager = field.manager;
}, 60_000);
afterAll(() => field.stop());

it('what was decided at the desk is told by the shop’s own calendar, as what was recorded in the field is', async () => {
  const machineId = field.shop.machineIds.get('M1')!;
  const subject = { machineId, code: 'hose', minutes: 30, failureCents: 1000 };
  const made = { ...subject, madeOn: '2026-06-01', limitOn: '2026-06-20' };
  const stopgap = async (description: string) =>
    (await manager.post('/v1/stopgaps', { ...made, description })).body.id as string;
  const [renewed, closed] = [await stopgap('hose tied up'), await stopgap('pin bent')];
  const completion = (await manager.get(`/v1/completions?machineId=${machineId}`)).body.items[0];
  const part = (await manager.get('/v1/parts')).body.items[0];
  const order = { partId: part.id, quantity: '3', orderedOn: '2026-06-01', expectedOn: '2026-06-09' };
  const { body: ordered } = await manager.post('/v1/part-orders', order);
  // From now on its calendar stands three days behind.
  await field.database.store.asOwner((tx) => tx.shop.updateMany({ data: { clockShiftDays: -3 } }));
  const asked = [
    await manager.post(`/v1/stopgaps/${renewed}/renew`, { limitOn: '2026-07-20', reason: 'holds' }),
    await manager.post(`/v1/stopgaps/${closed}/close`, { because: 'not-needed', reason: 'sold' }),
    await manager.delete(`/v1/completions/${completion.id}`),
    await manager.post('/v1/meter-changes', { machineId, changedOn: '2026-05-30', oldHours: '900', newHours: '0' }),
    await manager.patch(
      `/v1/part-orders/${ordered.id}`,
      { receivedOn: '2026-06-02', receivedQuantity: '2' },
      `"${ordered.version}"`,
    ),
    await manager.post(`/v1/part-orders/${ordered.id}/take-back`, { quantity: '1', reason: 'counted twice' }),
  ];
  expect(asked.map(({ status }) => status)).toEqual([201, 201, 204, 201, 200, 201]);
  const { items } = (await manager.get('/v1/audit-entries?limit=100')).body;
  const told = items.filter(({ action }: { action: string }) => /^(stopgap|completion|meter|part-order)/.test(action));
  expect(told.map(({ at }: { at: string }) => at.slice(0, 10))).toEqual(Array(6).fill('2026-06-02'));
});
