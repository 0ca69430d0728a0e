import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { dateOfDay, dayNumber } from '../calendar.js';
import { simulatedFleet } from '../simulated-fleet.js';
import type { Reading, UsageSnapshot } from '../snapshot.js';
import { fitUsage } from './fit-usage.js';
import { forecastUsage, lifetimeHoursAt, type MachineForecast } from './forecast-usage.js';

const machine = (id: string, latitude: number | null = 45) => ({
  id,
  siteId: 's',
  machineClass: 'zero-turn',
  latitude,
  longitude: null,
  inServiceOn: null,
});

function constantFleet(perDay: number, days: number, every: number): UsageSnapshot {
  const origin = dayNumber('2025-06-30');
  const machines = Array.from({ length: 20 }, (_, m) => machine(`m${m}`));
  const readings: Reading[] = machines.flatMap(({ id }) => {
    const own: Reading[] = [];
    for (let day = origin - days; day <= origin; day += every) {
      const hours = 100 + perDay * (day - origin + days);
      own.push({ id: `${id}-${day}`, machineId: id, readAt: `${dateOfDay(day)}T18:00:00`, hours, source: 'test' });
    }
    return own;
  });
  return { version: 1, asOf: '2025-06-30', horizonDays: 60, machines, readings, meterChanges: [] };
}

test('a constant rate is forecast as that rate', () => {
  const snapshot = constantFleet(2, 1100, 5);
  const forecast = forecastUsage(fitUsage(snapshot)).machines.get('m0')!;
  const { p10, p50, p90 } = forecast.quantiles();
  const now = 100 + 2 * 1100;
  expect(Math.abs(p50[59]! - (now + 120))).toBeLessThan(2.5);
  expect(p90[59]! - p10[59]!).toBeLessThan(12);
  const day = forecast.dayReaching(now + 60, 0.5)!;
  expect(Math.abs(day - (forecast.originDay + 30))).toBeLessThanOrEqual(1);
});

function expectSane(forecast: MachineForecast): void {
  const { p10, p25, p50, p75, p90 } = forecast.quantiles();
  let before = 0;
  p50.forEach((middle, d) => {
    const row = [p10[d]!, p25[d]!, middle, p75[d]!, p90[d]!];
    for (const value of row) expect(Number.isFinite(value)).toBe(true);
    expect([...row].sort((a, b) => a - b)).toEqual(row);
    expect(middle).toBeGreaterThanOrEqual(before);
    before = middle;
  });
  for (const hours of [0, 10, 1e6]) {
    const { p10: early, p90: late } = forecast.datesReaching(hours);
    if (early !== null && late !== null) expect(early <= late).toBe(true);
    const chance = forecast.probabilityReached(hours, forecast.originDay + 20);
    expect(chance).toBeGreaterThanOrEqual(0);
    expect(chance).toBeLessThanOrEqual(1);
  }
}

describe('odd input gives a wide forecast, never NaN', () => {
  const at = (id: string, date: string, hours: number): Reading => ({
    id,
    machineId: 'm',
    readAt: `${date}T09:00:00`,
    hours,
    source: 'test',
  });
  const daily = Array.from({ length: 3650 }, (_, k) => at(`d${k}`, dateOfDay(dayNumber('2015-07-03') + k), k / 10));
  test.each<[string, Reading[], number | null]>([
    ['no reading', [], 45],
    ['one reading', [at('a', '2025-05-01', 120)], -33],
    ['all equal', Array.from({ length: 9 }, (_, k) => at(`e${k}`, `2025-0${k + 1}-01`, 500)), null],
    ['ten years of daily readings', daily, 45],
    ['a clock ahead of the forecast origin', [at('a', '2025-05-01', 120), at('b', '2031-05-01', 990)], 45],
    ['not a number', [at('a', '2025-05-01', Number.NaN), at('b', '2025-05-02', -4)], 45],
    ['tropics', [at('a', '2025-05-01', 120), at('b', '2025-06-01', 160)], 2],
    [
      'sold, and bought back two years later',
      [
        at('a', '2022-05-01', 120),
        at('b', '2022-09-01', 310),
        at('c', '2024-10-01', 1490),
        at('d', '2025-06-20', 1620),
      ],
      45,
    ],
  ])('%s', (_, readings, latitude) => {
    const snapshot: UsageSnapshot = {
      version: 1,
      asOf: '2025-06-30',
      horizonDays: 90,
      machines: [machine('m', latitude)],
      readings,
      meterChanges: [],
    };
    const forecast = forecastUsage(fitUsage(snapshot));
    expectSane(forecast.machines.get('m')!);
    expect(Number.isFinite(lifetimeHoursAt(forecast, 'm', '2025-03-01'))).toBe(true);
  });
});

test('whatever is read, told and moved, forecasts are numbers in order', () => {
  const day = fc.integer({ min: -900, max: 40 }).map((ago) => dateOfDay(dayNumber('2025-06-30') + ago));
  const place = fc.record({
    latitude: fc.option(fc.double({ min: -90, max: 90, noNaN: true })),
    longitude: fc.option(fc.double({ min: -180, max: 180, noNaN: true })),
  });
  const reading = fc.record({
    machine: fc.nat({ max: 3 }),
    date: day,
    hours: fc.oneof(fc.double({ min: 0, max: 12_000 }), fc.constantFrom(0, 9999.9, -1, 1e9)),
  });
  const change = fc.record({ machine: fc.nat({ max: 3 }), date: day, oldHours: fc.nat(9000), newHours: fc.nat(100) });
  const scene = fc.record({
    readings: fc.array(reading, { maxLength: 60 }),
    changes: fc.array(change, { maxLength: 3 }),
    places: fc.array(place, { minLength: 4, maxLength: 4 }),
    moved: fc.option(fc.record({ place, until: day })),
    bought: fc.option(day),
  });
  fc.assert(
    fc.property(scene, ({ readings, changes, places, moved, bought }) => {
      const snapshot: UsageSnapshot = {
        ...{ version: 1, asOf: '2025-06-30', horizonDays: 90 },
        machines: places.map((at, m) => ({
          ...{ ...machine(`m${m}`), ...at, inServiceOn: bought },
          ...(moved && m === 0 && { formerSites: [{ siteId: 'other', ...moved.place, until: moved.until }] }),
        })),
        readings: readings.map(({ machine: m, date, hours }, k) => ({
          ...{ id: `r${k}`, machineId: `m${m}`, readAt: `${date}T10:00:00`, hours, source: 'test' },
        })),
        meterChanges: changes.map(({ machine: m, date, ...rest }) => ({
          ...{ machineId: `m${m}`, changedAt: date, ...rest },
        })),
      };
      for (const each of forecastUsage(fitUsage(snapshot)).machines.values()) expectSane(each);
    }),
    { seed: 3, numRuns: 40 },
  );
});

test.each([
  { name: 'north, in season', seed: 5, latitude: 47, asOf: '2025-06-10', most: 0.95, widest: 0.8 },
  { name: 'south, in season', seed: 6, latitude: -34, asOf: '2024-12-20', most: 0.95, widest: 0.8 },
  // the law cannot know that in this fleet every spring comes on the same day
  { name: 'north, last readings in autumn', seed: 8, latitude: 47, asOf: '2025-03-20', most: 1, widest: 1.4 },
])('simulated fleet, $name: intervals cover as stated', ({ seed, latitude, asOf, most, widest }) => {
  let judged = 0;
  let inside80 = 0;
  let inside50 = 0;
  let width = 0;
  for (const round of [0, 1, 2]) {
    const fleet = simulatedFleet({ seed: seed + 100 * round, machines: 90, latitude, from: '2022-11-01', asOf });
    const forecast = forecastUsage(fitUsage(fleet.snapshot));
    for (const [id, each] of forecast.machines) {
      for (const ahead of [14, 30, 60]) {
        const day = each.originDay + ahead;
        const hours = fleet.truth(id, day);
        judged++;
        if (hours >= each.lifetimeHours(day, 0.1) - 0.05 && hours <= each.lifetimeHours(day, 0.9) + 0.05) inside80++;
        if (hours >= each.lifetimeHours(day, 0.25) - 0.05 && hours <= each.lifetimeHours(day, 0.75) + 0.05) inside50++;
      }
      const q = (p: number) => each.lifetimeHours(each.originDay + 60, p);
      width += (q(0.9) - q(0.1)) / (q(0.5) - each.lifetimeHoursNow) / (3 * forecast.machines.size);
    }
  }
  console.info(`80 %: ${(inside80 / judged).toFixed(3)}, 50 %: ${(inside50 / judged).toFixed(3)} of ${judged}`);
  expect(inside80 / judged).toBeGreaterThan(0.68);
  expect(inside80 / judged).toBeLessThanOrEqual(most);
  expect(width).toBeLessThan(widest);
});

test('before any season has been seen the latitude decides: little use in winter, on either side of the equator', () => {
  for (const [latitude, winter, summer] of [
    [47, '2025-12-20', '2025-06-20'],
    [-37, '2025-06-20', '2025-12-20'],
  ] as const) {
    const paceAt = (asOf: string) => {
      const snapshot: UsageSnapshot = {
        version: 1,
        asOf,
        horizonDays: 30,
        machines: [machine('m', latitude)],
        readings: [],
        meterChanges: [],
      };
      return forecastUsage(fitUsage(snapshot)).machines.get('m')!.hoursPerWeek;
    };
    expect(paceAt(winter)).toBeLessThan(0.2 * paceAt(summer));
  }
});

/** A fleet in its first months, as of a day when the weeks ahead have never been seen. */
const firstYear = (seed: number, latitude: number, from: string, asOf: string) =>
  simulatedFleet({ seed, machines: 60, latitude, from, asOf });

test.each([
  { name: 'north, first summer', latitude: 47, from: '2025-03-01', asOf: '2025-07-10' },
  { name: 'north, first autumn', latitude: 47, from: '2025-03-01', asOf: '2025-09-10' },
  { name: 'south, first summer', latitude: -34, from: '2024-09-01', asOf: '2024-12-20' },
])('in the first year ($name) intervals are wide enough for a season that nobody has seen', (scene) => {
  let judged = 0;
  let inside = 0;
  for (const seed of [11, 12, 13, 14]) {
    const fleet = firstYear(seed, scene.latitude, scene.from, scene.asOf);
    for (const [id, each] of forecastUsage(fitUsage(fleet.snapshot)).machines) {
      const day = each.originDay + 60;
      const hours = fleet.truth(id, day);
      judged++;
      if (hours >= each.lifetimeHours(day, 0.1) && hours <= each.lifetimeHours(day, 0.9)) inside++;
    }
  }
  expect(inside / judged).toBeGreaterThan(0.7);
});

test('a season once seen leaves less doubt than one never seen', () => {
  const relativeWidth = (from: string) => {
    const fleet = firstYear(11, 47, from, '2025-07-10');
    const each = forecastUsage(fitUsage(fleet.snapshot)).machines.get('m0')!;
    const q = (p: number) => each.lifetimeHours(each.originDay + 60, p);
    return (q(0.9) - q(0.1)) / (q(0.5) - each.lifetimeHours(each.originDay, 0.5));
  };
  expect(relativeWidth('2025-03-01')).toBeGreaterThan(1.3 * relativeWidth('2022-03-01'));
});

test('no quantile falls with the days, though the doubt about an unseen season grows', () => {
  const fleet = firstYear(3, 47, '2025-07-20', '2025-10-05');
  for (const each of forecastUsage(fitUsage(fleet.snapshot)).machines.values()) {
    for (const p of [0.05, 0.1, 0.5, 0.9]) {
      let before = 0;
      for (let ahead = 0; ahead < 300; ahead += 3) {
        const hours = each.lifetimeHours(each.originDay + ahead, p);
        expect(hours).toBeGreaterThanOrEqual(before - 1e-6);
        before = hours;
      }
    }
  }
});
