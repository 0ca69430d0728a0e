import { expect, test } from '@jest/globals';
import type { Week } from '../../data/types.js';
import { weekFigures } from './week-figures.js';

const visit = (id: string, machineId: string, waitingCents: number | null) => ({
  id,
  items: [{ machineId, waitingCents }],
});
const week = {
  routes: [
    { driveMinutes: 40, visits: [visit('a', 'm1', 500), visit('b', 'm2', null)] },
    { driveMinutes: 70, visits: [visit('c', 'm1', 900), visit('d', 'm3', -20)] },
  ],
  cannotBeMade: [],
} as unknown as Week;
const without = (...ids: string[]): Week => ({
  ...week,
  cannotBeMade: ids.map((visitId) => ({ visitId, why: 'technician-away' })),
});

test('the week adds up all its visits', () => {
  expect(weekFigures(week)).toEqual({ visits: 4, machines: 3, driveMinutes: 110, avoidedCents: 1400 });
});

test('visits that nobody can make count in no figure, and a day of which none can be made is not driven', () => {
  expect(weekFigures(without('c', 'd'))).toEqual({ visits: 2, machines: 2, driveMinutes: 40, avoidedCents: 500 });
  expect(weekFigures(without('a'))).toEqual({ visits: 3, machines: 3, driveMinutes: 110, avoidedCents: 900 });
});
