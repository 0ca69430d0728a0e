import { expect, it } from '@jest/globals';
import { chanceDay, chanceOverdue } from './chance-overdue.js';

const forecast = { costFrom: '2014-06-16', probabilityOverdue: [0.1, 0.2, 0.3] };

it.each([
  ['before the forecast begins, its first day', '2014-06-12', 0.1, '2014-06-16'],
  ['on one of its days', '2014-06-17', 0.2, '2014-06-17'],
  ['after it, its last day', '2014-06-25', 0.3, '2014-06-18'],
])('the chance of being overdue is told of a day: %s', (_name, today, chance, day) => {
  expect(chanceOverdue(forecast, today)).toBe(chance);
  expect(chanceDay(forecast, today)).toBe(day);
});

it('there is none without a forecast of chances', () => {
  expect(chanceOverdue({ ...forecast, probabilityOverdue: [] }, '2014-06-17')).toBe(0);
});
