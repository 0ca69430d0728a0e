import { stoppedClock } from '@deckround/platform';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runPlan } from '../support/planned-shop.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop, WEEK } from '../support/small-shop.js';

interface Span {
  startAt: string;
  endAt: string;
}

let database: TestDatabase;
let shop: SmallShop;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;
const clock = stoppedClock('2026-06-05T15:00:00Z');
/** 07:00 to 09:00 and 13:00 to 16:00 on all days of the week, an hour of overtime. */
const SHIFTS = [1, 2, 3, 4, 5].flatMap((weekday) => [
  { weekday, from: '07:00', to: '09:00' },
  { weekday, from: '13:00', to: '16:00' },
]);

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  api = await runningApi(database, undefined, clock);
  manager = await api.signIn('manager');
  for (const { id, version } of (await manager.get('/v1/technicians')).body.items) {
    const changed = await manager.patch(`/v1/technicians/${id}`, { shifts: SHIFTS }, `"${version}"`);
    expect([changed.status, changed.body.shifts]).toEqual([200, SHIFTS]);
  }
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

/** Hours since midnight in Chicago, in June. */
const hour = (instant: string) => (new Date(instant).getTime() / 3_600_000 + 24 - 5) % 24;
const isInRest = ({ startAt, endAt }: Span) => hour(startAt) < 13 && hour(endAt) > 9;
const visits = async (): Promise<(Span & { id: string; date: string })[]> =>
  (await manager.get('/v1/visits')).body.items;

describe('a shop that rests from nine to one', () => {
  it('plans one route a day around the rest', async () => {
    await runPlan(manager);
    const planned = await visits();
    expect(planned.length).toBeGreaterThan(0);
    expect(planned.filter(isInRest)).toEqual([]);
    for (const { endAt } of planned) expect(hour(endAt)).toBeLessThanOrEqual(17);
    const { routes } = (await manager.get(`/v1/week?weekOf=${WEEK}`)).body;
    const days = routes.map(({ technicianId, date }: Record<string, string>) => `${technicianId} ${date}`);
    expect(new Set(days).size).toBe(days.length);
  });

  it('moves visits to places outside the rest alone', async () => {
    let places = 0;
    for (const { id } of await visits()) {
      const { body } = await manager.get(`/v1/visits/${id}/move-prices`);
      places += body.places.length;
      expect(body.places.filter(isInRest)).toEqual([]);
    }
    expect(places).toBeGreaterThan(0);
  });

  it('answers a call that comes in the rest no sooner than after it', async () => {
    clock.moveTo('2026-06-08T16:30:00Z');
    const call = await manager.post('/v1/road-calls', {
      machineId: shop.machineIds.get('M1')!,
      calledAt: '2026-06-08T11:20:00-05:00',
      symptom: 'howls under load',
    });
    const given = await manager.post(`/v1/road-calls/${call.body.id}/options`, { daysAhead: 1 });
    expect(given.status).toBe(200);
    expect(given.body.options.length).toBeGreaterThan(0);
    for (const { date, startAt } of given.body.options) expect([date, hour(startAt) >= 13]).toEqual([WEEK, true]);
    const [{ kind }] = given.body.options;
    const chosen = await manager.post(`/v1/road-calls/${call.body.id}/choose`, { kind, stamp: given.body.stamp });
    expect(chosen.body).toMatchObject({ state: 'planned' });
    expect((await visits()).filter(isInRest)).toEqual([]);
  });
});
