import { expect, it } from '@jest/globals';
import { isDoneAhead, leftToLoad } from './left-to-load.js';

const belt = (quantity: number, missing = 0) => ({
  ...{ partId: 'p1', name: 'deck belt', quantity, unit: 'each', missing },
});
const grease = (quantity: number) => ({ partId: null, name: 'grease', quantity, unit: 'g', missing: 0 });
type Part = { partId: string | null; name: string; quantity: number; unit: string };
const item = (role: string, ...parts: Part[]) => ({ role, parts, isSpared: true });
const open = (...parts: Part[]) => ({ role: 'anchor', parts, isSpared: false });

it('leaves out what work done ahead needed', () => {
  const ahead = [item('anchor', belt(1)), item('rider', grease(0.1))];
  expect(leftToLoad([belt(3), grease(0.3)], [...ahead, open(belt(2)), open(grease(0.2))])).toEqual([
    belt(2),
    grease(0.2),
  ]);
  expect(leftToLoad([belt(1), grease(0.3)], [item('must-do', belt(1))])).toEqual([grease(0.3)]);
});

it('leaves a list whole that was made after that work', () => {
  expect(leftToLoad([belt(2)], [item('anchor', belt(1)), open(belt(2))])).toEqual([belt(2)]);
});

it('leaves what the day was given for its work, whatever that needs by now', () => {
  expect(leftToLoad([belt(2)], [open(belt(1))])).toEqual([belt(2)]);
});

it('lacks no more than is left to load', () => {
  expect(leftToLoad([belt(3, 2)], [item('anchor', belt(1)), open(belt(2))])).toEqual([belt(2, 1)]);
  expect(leftToLoad([belt(3, 0)], [item('anchor', belt(1)), open(belt(2))])).toEqual([belt(2, 0)]);
});

it('keeps what was loaded for others when work was found on the spot', () => {
  expect(leftToLoad([belt(1)], [item('found', belt(1))])).toEqual([belt(1)]);
});

it('counts a visit as done ahead by the day of its own site', () => {
  const visit = (finishedAt: string | null) => ({
    date: '2026-06-09',
    finishedAt,
    site: { timeZone: 'America/Chicago' },
  });
  expect(isDoneAhead(visit('2026-06-09T03:00:00Z'))).toBe(true);
  expect(isDoneAhead(visit('2026-06-09T15:00:00Z'))).toBe(false);
  expect(isDoneAhead(visit(null))).toBe(false);
});
