import { expect, test } from '@jest/globals';
import { minutesInto } from './local-date.js';

test('an instant on the wall clock of each zone, also past midnight and over a change of the clocks', () => {
  const instant = '2026-06-09T03:30:00Z';
  expect(minutesInto('2026-06-08', instant, 'America/Chicago')).toBe(22 * 60 + 30);
  expect(minutesInto('2026-06-08', instant, 'America/Denver')).toBe(21 * 60 + 30);
  expect(minutesInto('2026-06-08', instant, 'UTC')).toBe(27 * 60 + 30);
  expect(minutesInto('2026-03-08', '2026-03-08T08:30:00Z', 'America/Chicago')).toBe(3 * 60 + 30);
});
