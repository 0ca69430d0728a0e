import { expect, test } from '@jest/globals';
import { backtest } from './backtest.js';
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
    expect(row.pinballHours!).toBeGreaterThan(0);
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
    pinballHours: null,
    biasHours: null,
  });
});
