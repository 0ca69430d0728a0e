import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import type { WeeklyWindow } from './register.js';
import { formatWeeklyWindows } from './test-support/format-weekly-windows.js';
import { InvalidWindows, parseWeeklyWindows } from './weekly-windows.js';

const on = (weekday: number, startMinute: number, endMinute: number): WeeklyWindow => ({
  weekday,
  startMinute,
  endMinute,
});

describe('weekly windows', () => {
  it.each<[string, WeeklyWindow[]]>([
    ['', []],
    ['  ', []],
    ['Mon 07:00-15:30', [on(1, 420, 930)]],
    ['Sat-Sun 08:00-12:00', [on(6, 480, 720), on(7, 480, 720)]],
    ['Tue,Thu 08:00-16:00', [on(2, 480, 960), on(4, 480, 960)]],
    ['Mon,Wed-Thu 8:00 - 9:00', [on(1, 480, 540), on(3, 480, 540), on(4, 480, 540)]],
    ['sunday 00:00-24:00', [on(7, 0, 1440)]],
    ['Fri 13:00-15:00; Fri 07:00-12:00;', [on(5, 420, 720), on(5, 780, 900)]],
    ['Fri 07:00-12:00; Fri 12:00-15:00', [on(5, 420, 720), on(5, 720, 900)]],
  ])('reads "%s"', (text, windows) => {
    expect(parseWeeklyWindows(text)).toEqual(windows);
  });

  it('refuses more stretches of a day than are asked for', () => {
    const split = 'Mon-Tue 07:00-10:00; Mon-Fri 13:00-16:00';
    expect(parseWeeklyWindows(split, 2)).toEqual(parseWeeklyWindows(split));
    const thrice = `${split}; Tue 18:00-20:00`;
    expect(parseWeeklyWindows(thrice)).toHaveLength(8);
    expect(() => parseWeeklyWindows(thrice, 2)).toThrow('Tue has more than 2 stretches');
  });

  it.each([
    ['always', 'is not like'],
    ['07:00-15:30', 'is not like'],
    ['Mon 7-15', 'is not like'],
    ['Mon-Fri 07:00-12:00, 13:00-15:30', 'is not like'],
    ['Mon 15:30-07:00', 'ends before it begins'],
    ['Mon 07:00-07:00', 'ends before it begins'],
    ['Mon 07:60-15:30', 'a time that does not exist'],
    ['Mon 07:00-24:01', 'a time that does not exist'],
    ['Mon 07:00-25:00', 'a time that does not exist'],
    ['Moon 07:00-15:30', 'a day that cannot be read'],
    ['Monkey 07:00-15:30', 'a day that cannot be read'],
    ['Mo 07:00-15:30', 'a day that cannot be read'],
    ['Mon- 07:00-15:30', 'a day that cannot be read'],
    ['Mon-Wed-Fri 07:00-15:30', 'days that cannot be read'],
    ['Sat-Mon 07:00-15:30', 'runs past Sunday'],
    ['Mon,Mon 07:00-15:30', 'names Mon twice'],
    ['Mon-Wed,Tue 07:00-15:30', 'names Tue twice'],
    ['Mon-Fri 07:00-15:30; Fri 15:00-16:00', 'two windows overlap on Fri'],
  ])('refuses "%s": %s', (text, message) => {
    expect(() => parseWeeklyWindows(text)).toThrow(InvalidWindows);
    expect(() => parseWeeklyWindows(text)).toThrow(message);
  });

  it('names the part that cannot be read, not the whole text', () => {
    expect(() => parseWeeklyWindows('Mon 07:00-15:30; Sat whenever')).toThrow('"Sat whenever"');
  });

  it.each([
    ['Mon 07:00-15:30;Tue 07:00-15:30;Wed 07:00-15:30', 'Mon-Wed 07:00-15:30'],
    ['Monday, Tuesday 7:00-9:30', 'Mon,Tue 07:00-09:30'],
    ['Sat 08:00-12:00; Mon-Fri 07:00-15:30', 'Mon-Fri 07:00-15:30; Sat 08:00-12:00'],
  ])('writes "%s" shortest', (text, shortest) => {
    expect(formatWeeklyWindows(parseWeeklyWindows(text))).toBe(shortest);
  });

  it('reads back what it wrote, for any week', () => {
    // Between two cuts of a day lies a window or a gap, so that no two windows of a day overlap.
    const day = fc.uniqueArray(fc.integer({ min: 0, max: 1440 }), { maxLength: 6 }).map((cuts) => {
      const sorted = [...cuts].sort((a, b) => a - b);
      return sorted.slice(1).flatMap((end, index) => (index % 2 === 0 ? [[sorted[index]!, end] as const] : []));
    });
    const week = fc
      .array(day, { minLength: 7, maxLength: 7 })
      .map((days) => days.flatMap((windows, index) => windows.map(([start, end]) => on(index + 1, start, end))));
    fc.assert(
      fc.property(week, (windows) => {
        expect(parseWeeklyWindows(formatWeeklyWindows(windows))).toEqual(windows);
      }),
      { seed: 20140616, numRuns: 300 },
    );
  });
});
