import { expect, test } from '@jest/globals';
import { backtest } from './backtest.js';
import { BASELINES, baselinesOf } from './baselines.js';
import { dayNumber } from './calendar.js';
import { fitUsage } from './model/fit-usage.js';
import { forecastUsage } from './model/forecast-usage.js';
import { simulatedFleet } from './simulated-fleet.js';

test('a back-test on readings alone tells coverage and loss, the same every time', () => {
  const { snapshot } = simulatedFleet({
    seed: 21,
    machines: 60,
    latitude: 44,
    from: '2023-03-01',
    asOf: '2025-09-01',
    errorShare: 0.005,
  });
  const rows = backtest(snapshot, { daysAhead: [14, 30], origins: 3 });
  expect(rows.map((row) => row.daysAhead)).toEqual([14, 30]);
  for (const row of rows) {
    expect(row.judged).toBeGreaterThan(100);
    expect(row.coverage80!).toBeGreaterThan(0.6);
    expect(row.coverage50!).toBeLessThan(row.coverage80!);
    expect(row.coverage80!).toBeLessThan(row.coverage95!);
    expect(row.pinballHours!).toBeGreaterThan(0);
    for (const rule of BASELINES) expect(row.baselinePinballHours![rule]).toBeGreaterThan(row.pinballHours!);
  }
  expect(backtest(snapshot, { daysAhead: [14, 30], origins: 3 })).toEqual(rows);
});

test('without readings nothing is judged and nothing claimed', () => {
  const { snapshot } = simulatedFleet({ seed: 1, machines: 2, latitude: 44, from: '2025-01-01', asOf: '2025-03-01' });
  expect(backtest({ ...snapshot, readings: [] })[0]).toEqual({
    daysAhead: 7,
    judged: 0,
    coverage50: null,
    coverage80: null,
    coverage95: null,
    pinballHours: null,
    baselinePinballHours: null,
    biasHours: null,
  });
});

test('whole sites are judged when there are more machines than asked for', () => {
  const { snapshot } = simulatedFleet({ seed: 3, machines: 36, latitude: 44, from: '2024-03-01', asOf: '2025-09-01' });
  const all = backtest(snapshot, { daysAhead: [14], origins: 1 })[0]!;
  const some = backtest(snapshot, { daysAhead: [14], origins: 1, machines: 18 })[0]!;
  expect(all.judged).toBeGreaterThan(18);
  expect(some.judged).toBeGreaterThan(0);
  expect(some.judged).toBeLessThanOrEqual(18);
});

test('a machine in its dormant season is no success of the forecast', () => {
  const days = Array.from({ length: 60 }, (_, k) => new Date(Date.UTC(2024, 0, 1 + 14 * k)).toISOString().slice(0, 10));
  const still = days.map((day, k) => ({
    id: `r${k}`,
    machineId: 'm',
    readAt: `${day}T12:00:00`,
    hours: 80,
    source: '',
  }));
  const machine = { id: 'm', siteId: 's', machineClass: 'zero-turn', latitude: 44, longitude: 10, inServiceOn: null };
  const snapshot = { version: 1 as const, asOf: days.at(-1)!, horizonDays: 60, machines: [machine], meterChanges: [] };
  expect(backtest({ ...snapshot, readings: still }, { daysAhead: [28] })[0]!.judged).toBe(0);
});

test('the rules of thumb are the straight lines and the last year that they say', () => {
  const at = (id: string, date: string, hours: number) => ({
    id,
    machineId: 'm',
    readAt: `${date}T18:00:00`,
    hours,
    source: '',
  });
  const machine = { id: 'm', siteId: 's', machineClass: 'zero-turn', latitude: 0, longitude: 10, inServiceOn: null };
  const { machines } = forecastUsage(
    fitUsage({
      version: 1,
      asOf: '2025-05-11',
      horizonDays: 60,
      machines: [machine],
      readings: [at('a', '2025-04-11', 100), at('b', '2025-05-01', 140), at('c', '2025-05-11', 145)],
      meterChanges: [],
    }),
  );
  const rules = baselinesOf(machines.get('m')!, dayNumber('2025-05-20'))!;
  // from 18:00 on 11 May to the end of 20 May are 9.25 days
  expect(rules.lastTwo).toBeCloseTo(145 + 9.25 * 0.5, 6);
  expect(rules.wholeLife).toBeCloseTo(145 + 9.25 * 1.5, 6);
});
