import { describe, expect, it, test } from '@jest/globals';
import fc from 'fast-check';
import { DateTime } from 'luxon';
import { minutesInto, sameTimeAfter } from './local-date.js';

test('an instant on the wall clock of each zone, also past midnight and over a change of the clocks', () => {
  const instant = '2026-06-09T03:30:00Z';
  expect(minutesInto('2026-06-08', instant, 'America/Chicago')).toBe(22 * 60 + 30);
  expect(minutesInto('2026-06-08', instant, 'America/Denver')).toBe(21 * 60 + 30);
  expect(minutesInto('2026-06-08', instant, 'UTC')).toBe(27 * 60 + 30);
  expect(minutesInto('2026-03-08', '2026-03-08T08:30:00Z', 'America/Chicago')).toBe(3 * 60 + 30);
});

describe('the same time on another day', () => {
  it.each([
    ['2026-11-28T05:25:00Z', -177, '2026-06-04T04:25:00Z', 'in summer time, as the clock shows it'],
    ['2026-06-04T04:25:00Z', 177, '2026-11-28T05:25:00Z', 'and back'],
    ['2026-03-07T08:30:00Z', 1, '2026-03-08T08:30:00Z', 'in the hour that the clock leaves out'],
    ['2026-06-04T04:25:00Z', 0, '2026-06-04T04:25:00Z', 'no days away'],
  ])('%s %i days later is %s: %s', (instant, days, later) =>
    expect(sameTimeAfter(new Date(instant), days, 'America/Chicago')).toEqual(new Date(later)),
  );

  it('is what the library of dates that the services use finds, but for hours that are left out or come twice', () => {
    const arbitrary = fc.tuple(
      fc.date({ min: new Date('2020-01-01'), max: new Date('2035-01-01'), noInvalidDate: true }),
      fc.integer({ min: -800, max: 800 }),
      fc.constantFrom('America/Chicago', 'America/St_Johns', 'Europe/Madrid', 'Australia/Lord_Howe', 'UTC'),
    );
    fc.assert(
      fc.property(arbitrary, ([instant, days, zone]) => {
        const found = DateTime.fromJSDate(sameTimeAfter(instant, days, zone), { zone });
        const expected = DateTime.fromJSDate(instant, { zone }).plus({ days });
        const offsets = [-3, 3].map((hours) => expected.plus({ hours }).offset);
        fc.pre(offsets[0] === offsets[1]);
        expect(found.toISO()).toBe(expected.toISO());
      }),
      { seed: 17, numRuns: 500 },
    );
  });
});
