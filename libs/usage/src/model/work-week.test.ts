import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { dateOfDay, dayNumber } from '../calendar.js';
import type { Reading, UsageSnapshot } from '../snapshot.js';
import { fitUsage } from './fit-usage.js';
import { forecastUsage } from './forecast-usage.js';
import { WorkWeek } from './work-week.js';

const MONDAY = dayNumber('2025-06-02');

describe('worked time', () => {
  const weights = fc
    .array(fc.double({ min: 0, max: 3, noNaN: true }), { minLength: 7, maxLength: 7 })
    .filter((each) => each.some((weight) => weight > 0.01))
    .map((each) => each.map((weight) => (7 * weight) / each.reduce((sum, other) => sum + other, 0)));
  const moment = fc.double({ min: MONDAY, max: MONDAY + 100, noNaN: true });

  test('whole weeks pass as they are, and it never runs backwards', () => {
    fc.assert(
      fc.property(
        weights,
        moment,
        fc.nat({ max: 9 }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (w, from, n, more) => {
          const week = new WorkWeek(w);
          expect(week.even(from, from + 7 * n)).toBeCloseTo(from + 7 * n, 6);
          expect(week.even(from, from + 7 * n + more)).toBeGreaterThanOrEqual(week.even(from, from + 7 * n) - 1e-9);
        },
      ),
      { seed: 5 },
    );
  });

  test('a day of rest passes in no time', () => {
    const week = new WorkWeek([1.4, 1.4, 1.4, 1.4, 1.4, 0, 0]);
    expect(week.even(MONDAY, MONDAY + 1)).toBeCloseTo(MONDAY + 1.4, 9);
    expect(week.even(MONDAY, MONDAY + 5)).toBeCloseTo(MONDAY + 7, 9);
    expect(week.even(MONDAY + 5, MONDAY + 7)).toBeCloseTo(MONDAY + 5, 9);
  });
});

/** Six machines that run 4 h from Monday to Friday, read every evening or every tenth, in the tropics. */
function workingWeek(every: number): UsageSnapshot {
  const asOf = '2025-06-27';
  const origin = dayNumber(asOf);
  const machines = Array.from({ length: 6 }, (_, m) => ({
    ...{ id: `m${m}`, siteId: 's', machineClass: 'zero-turn', latitude: 1, longitude: 10, inServiceOn: null },
  }));
  const readings = machines.flatMap(({ id }): Reading[] => {
    const own: Reading[] = [];
    let hours = 100;
    for (let day = origin - 400; day <= origin; day++) {
      if ((day + 3) % 7 < 5) hours += 4;
      if ((origin - day) % every === 0)
        own.push({ id: `${id}-${day}`, machineId: id, readAt: `${dateOfDay(day)}T19:00:00`, hours, source: 'test' });
    }
    return own;
  });
  return { version: 1, asOf, horizonDays: 30, machines, readings, meterChanges: [] };
}

test('a machine read daily is expected to rest on the days on which it rests', () => {
  const forecast = forecastUsage(fitUsage(workingWeek(1))).machines.get('m0')!;
  const now = forecast.usage.knownHours;
  // 27 June 2025 is a Friday
  const sunday = forecast.lifetimeHours(forecast.originDay + 2, 0.5) - now;
  const monday = forecast.lifetimeHours(forecast.originDay + 3, 0.5) - now;
  const nextFriday = forecast.lifetimeHours(forecast.originDay + 7, 0.5) - now;
  expect(sunday).toBeLessThan(0.7);
  expect(monday).toBeGreaterThan(3);
  expect(Math.abs(nextFriday - 20)).toBeLessThan(1.5);
});

test('where readings are further apart no weekday is told from another', () => {
  expect(fitUsage(workingWeek(10)).machines.get('m0')!.week).toBeNull();
});
