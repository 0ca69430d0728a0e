import { loadLifeHistory, loadRegister } from '@deckround/register-store';
import { afterAll, beforeAll, expect, it } from '@jest/globals';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { createSmallShop } from '../support/small-shop.js';

/** Slots, each with its work and a life: more than the client can name in one statement. */
const MANY = 33_000;

let database: TestDatabase;
beforeAll(async () => {
  database = await freshDatabase();
});
afterAll(() => database.drop());

it('a large shop of many years is read whole: each piece of work with its slot and part', async () => {
  const { shopId } = await createSmallShop(database.store);
  const before = await database.store.inShop(shopId, (tx) => loadRegister(tx));
  await database.store.asOwner(async (tx) => {
    await tx.$executeRaw`
      insert into component_slot (shop_id, machine_id, name, kind)
      select ${shopId}::uuid, machine.id, 'place ' || n, 'spindle'
      from generate_series(1, ${MANY}::int) as n, (select id from machine where shop_id = ${shopId}::uuid limit 1) as machine`;
    await tx.$executeRaw`
      insert into completion (shop_id, machine_id, item_code, slot_id, done_on, meter_hours, outcome, part_id)
      select slot.shop_id, slot.machine_id, 'replace-spindle-bearings', slot.id, '2026-05-01', 100, 'done', part.id
      from component_slot slot, (select id from part where shop_id = ${shopId}::uuid order by code limit 1) as part
      where slot.shop_id = ${shopId}::uuid and slot.name like 'place %'`;
    await tx.$executeRaw`
      insert into component_life (shop_id, slot_id, fitted_on)
      select shop_id, id, '2026-05-01' from component_slot where shop_id = ${shopId}::uuid and name like 'place %'`;
  });
  const register = await database.store.inShop(shopId, (tx) => loadRegister(tx));
  const work = register.completions.filter((each) => each.slot?.startsWith('place '));
  expect(work.length).toBe(MANY);
  expect(register.completions.length).toBe(before.completions.length + MANY);
  expect(new Set(work.map((each) => each.slot)).size).toBe(MANY);
  expect(work.every((each) => each.part !== null && each.meterHours === 100 && each.doneOn === '2026-05-01')).toBe(
    true,
  );
  const { recorded = [] } = await database.store.inShop(shopId, loadLifeHistory);
  expect(recorded.length).toBe(MANY);
  expect(new Set(recorded.map((each) => each.slot)).size).toBe(MANY);
});
