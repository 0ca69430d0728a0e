import { upkeepSnapshot } from '@deckround/register';
import { loadRegister } from '@deckround/register-store';
import { afterAll, beforeAll, expect, it } from '@jest/globals';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { createSmallShop, smallRegister, WEEK } from '../support/small-shop.js';

let database: TestDatabase;
beforeAll(async () => {
  database = await freshDatabase();
});
afterAll(() => database.drop());

/** What falls due, and from what, under the shop's own names: ids of the database differ from import to import. */
function workOf(register: Awaited<ReturnType<typeof loadRegister>>) {
  const span = { asOf: '2026-06-07', costFrom: WEEK, costDays: 14 };
  const codes = new Map(register.machines.map((machine) => [machine.id, machine.code]));
  return upkeepSnapshot(register, span).items.map(({ machineId, code, slot, assumedShare, rule }) => ({
    ...{ machine: codes.get(machineId), code, slot, assumedShare, rule },
  }));
}

const byName = (work: ReturnType<typeof workOf>) => work.map((each) => JSON.stringify(each)).sort();

it('the same register falls due alike wherever it is imported, and in its files', async () => {
  const works = [];
  for (const name of ['First shop', 'Second shop']) {
    const { shopId } = await createSmallShop(database.store, name);
    works.push(workOf(await database.store.inShop(shopId, (tx) => loadRegister(tx))));
  }
  expect(works[0]!.filter((each) => each.assumedShare !== null).length).toBeGreaterThan(30);
  expect(works[1]).toEqual(works[0]);
  expect(byName(works[0]!)).toEqual(byName(workOf(smallRegister())));
});
