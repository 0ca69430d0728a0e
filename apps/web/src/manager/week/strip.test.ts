import { expect, test } from '@jest/globals';
import type { DayRoute, Visit } from '../../data/types.js';
import { axisOf, stripOf } from './strip.js';

const clock = (text: string) => Number(text.slice(0, 2)) * 60 + Number(text.slice(3));
const visit = (arriveAt: string, startAt: string, endAt: string, driveMinutes: number) =>
  ({ arriveAt, startAt, endAt, driveMinutes, promisedFrom: null, promisedTo: null, items: [] }) as unknown as Visit;

// 07:00 out, 20 min drive; 08:20 done; lunch on the way at 12:00; home 16:09, nine minutes past the shift.
const route = {
  leaveAt: '07:00',
  returnAt: '16:09',
  lunchFrom: '12:00',
  lunchTo: '12:30',
  overtimeMinutes: 9,
  visits: [visit('07:20', '07:30', '11:50', 20), visit('12:40', '12:40', '15:40', 20)],
} as unknown as DayRoute;

test('a day is driving, waiting, visits and lunch without gap or overlap', () => {
  const { visits, stretches } = stripOf(route, clock, 960);
  const pieces = [...visits, ...stretches.filter((each) => each.kind !== 'overtime')].toSorted(
    (a, b) => a.from - b.from,
  );
  expect(pieces[0]!.from).toBe(clock('07:00'));
  for (let index = 1; index < pieces.length; index += 1) expect(pieces[index]!.from).toBe(pieces[index - 1]!.to);
  expect(pieces.at(-1)!.to).toBe(clock('16:09'));
  const time = (kind: string) =>
    stretches.filter((each) => each.kind === kind).reduce((sum, each) => sum + each.to - each.from, 0);
  expect(time('drive')).toBe(20 + 20 + 29);
  expect(time('slack')).toBe(10);
  expect(stretches).toContainEqual({ kind: 'overtime', from: 960, to: 969 });
});

test('a day that ends early has slack up to the end of the shift', () => {
  const early = { ...route, returnAt: '15:50', overtimeMinutes: 0 };
  expect(stripOf(early, clock, 960).stretches.at(-1)).toEqual({ kind: 'slack', from: 950, to: 960 });
});

test('the axis holds every strip in whole hours', () => {
  expect(axisOf([stripOf(route, clock, 960)])).toEqual({ from: 420, to: 1020 });
  expect(axisOf([])).toEqual({ from: 420, to: 1020 });
});
