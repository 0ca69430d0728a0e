import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { addDays, clockOf, dateOfDay, dayNumber, isLocalDate, weekdayOf } from './local-date.js';

describe('local dates', () => {
  it.each([
    ['1970-01-01', 0, 4],
    ['2000-02-29', 11_016, 2],
    ['2014-06-16', 16_237, 1],
    ['2014-06-22', 16_243, 7],
    ['1969-12-31', -1, 3],
  ])('%s is day %i, weekday %i', (date, day, weekday) => {
    expect(dayNumber(date)).toBe(day);
    expect(dateOfDay(day)).toBe(date);
    expect(weekdayOf(date)).toBe(weekday);
  });

  it.each([
    ['2014-02-28', 1, '2014-03-01'],
    ['2012-02-28', 1, '2012-02-29'],
    ['2014-01-01', -1, '2013-12-31'],
    ['2014-03-08', 2, '2014-03-10'],
  ])('%s and %i days is %s', (date, days, expected) => {
    expect(addDays(date, days)).toBe(expected);
  });

  it.each(['2014-02-30', '2013-02-29', '2014-13-01', '2014-00-10', '2014-6-16', '16.06.2014', '2014-06-16T00:00', ''])(
    '"%s" is no date',
    (text) => {
      expect(isLocalDate(text)).toBe(false);
    },
  );

  it('knows the days that exist, and counts them one by one', () => {
    fc.assert(
      fc.property(fc.integer({ min: -7000, max: 47_000 }), (day) => {
        const date = dateOfDay(day);
        expect(isLocalDate(date)).toBe(true);
        expect(dayNumber(date)).toBe(day);
        expect(weekdayOf(addDays(date, 1))).toBe((weekdayOf(date) % 7) + 1);
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  it.each([
    [0, '00:00'],
    [450, '07:30'],
    [1439, '23:59'],
    [1440, '24:00'],
  ])('minute %i of a day is %s', (minute, clock) => {
    expect(clockOf(minute)).toBe(clock);
  });
});
