import { expect, test } from '@jest/globals';
import { lifetimeOf, type MeterChange } from './lifetime.js';

test('hours run on across a new meter', () => {
  const change = { changedOn: '2025-03-17', oldHours: '1766.2', newHours: '0' } as MeterChange;
  expect(lifetimeOf('2025-03-16T12:00:00Z', 1760, [change])).toBe(1760);
  expect(lifetimeOf('2025-04-01T12:00:00Z', 12.5, [change])).toBeCloseTo(1778.7, 6);
});
