import { stoppedClock } from '@deckround/platform';
import { dateText } from '@deckround/register-store';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { planAgain } from '../support/plan-again.js';
import { createSmallShop } from '../support/small-shop.js';

let database: TestDatabase;
let shopId: string;
const clock = stoppedClock('2026-06-05T15:00:00Z');
beforeAll(async () => {
  database = await freshDatabase();
  ({ shopId } = await createSmallShop(database.store));
  await database.store.inShop(shopId, async (tx) => {
    for (const { id, technicianId, weekday } of await tx.technicianShift.findMany()) {
      await tx.technicianShift.update({ where: { id }, data: { startMinute: 420, endMinute: 540 } });
      await tx.technicianShift.create({ data: { shopId, technicianId, weekday, startMinute: 780, endMinute: 960 } });
    }
  });
});
afterAll(() => database.drop());

describe('a shop that rests in the middle of the day', () => {
  it('plans one route a day around the rest', async () => {
    const { store } = database;
    await planAgain(store, shopId, clock);
    const visits = await store.inShop(shopId, (tx) => tx.visit.findMany());
    expect(visits.length).toBeGreaterThan(0);
    // 07:00 to 09:00 and 13:00 to 16:00, an hour of overtime, in Chicago
    for (const visit of visits) {
      const hours = (at: Date) => at.getUTCHours() + at.getUTCMinutes() / 60 - 5;
      expect([dateText(visit.visitDate), hours(visit.endAt) <= 9 || hours(visit.startAt) >= 13]).toEqual([
        dateText(visit.visitDate),
        true,
      ]);
      expect(hours(visit.endAt)).toBeLessThanOrEqual(17);
    }
  });
});
