import { expect, test } from '@jest/globals';
import type { Week } from '../../data/types.js';
import { changesSince } from './changes-since.js';

const at = (technicianId: string, date: string, ...visits: [siteId: string, time: string][]) => ({
  ...{ technicianId, date },
  visits: visits.map(([siteId, time]) => ({ siteId, startAt: `${date}T${time}:00Z`, endAt: `${date}T23:00:00Z` })),
});
const week = (...routes: ReturnType<typeof at>[]) => ({ routes }) as unknown as Pick<Week, 'routes'>;

test('tells what has become of each visit, several of one site in the order of their times', () => {
  const before = {
    cost: 900,
    routes: [
      at('wren', '2026-06-08', ['park', '12:00'], ['school', '14:00'], ['campus', '16:00']),
      at('wren', '2026-06-10', ['park', '12:00']),
    ],
  };
  const now = week(
    at('wren', '2026-06-08', ['park', '12:00'], ['school', '14:30']),
    at('rowan', '2026-06-10', ['park', '12:00'], ['cemetery', '15:00']),
  );
  expect(changesSince(before, now).map(({ siteId, what }) => [siteId, what])).toEqual([
    ['park', 'moved'],
    ['school', 'retimed'],
    ['campus', 'gone'],
    ['cemetery', 'new'],
  ]);
  expect(changesSince(before, week(...before.routes))).toEqual([]);
});
