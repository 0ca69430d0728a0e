import { expect, test } from '@jest/globals';
import type { FieldDay } from '../data/types.js';
import { changesBetween } from './day-changes.js';

const dayWith = (...visits: [site: string, startAt: string][]) =>
  ({
    date: '2026-06-08',
    visits: visits.map(([siteId, startAt]) => ({ siteId, startAt, site: { name: siteId } })),
  }) as unknown as FieldDay;

test('what the shop has planned otherwise is told, what stayed is not', () => {
  const before = dayWith(['A', '08:00'], ['B', '10:00'], ['C', '13:00']);
  const after = dayWith(['A', '08:00'], ['C', '12:30'], ['D', '15:00']);
  expect(changesBetween(before, after).map(({ what, site, startAt }) => [what, site, startAt])).toEqual([
    ['retimed', 'C', '12:30'],
    ['added', 'D', '15:00'],
    ['gone', 'B', '10:00'],
  ]);
  expect(changesBetween(after, after)).toEqual([]);
});
