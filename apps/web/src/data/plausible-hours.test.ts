import { expect, test } from '@jest/globals';
import { doubtAbout } from './plausible-hours.js';

const LAST = { readAt: '2026-06-07T15:00:00Z', hours: '408.2' };
const NOW = new Date('2026-06-08T15:00:00Z');

test('a figure is doubted for what it would mean', () => {
  expect(doubtAbout('412.6', LAST, NOW)).toBeNull();
  expect(doubtAbout('408.2', LAST, NOW)).toBeNull();
  expect(doubtAbout('40.8', LAST, NOW)).toMatchObject({ kind: 'less' });
  expect(doubtAbout('439.2', LAST, NOW)).toMatchObject({ kind: 'too-many', days: 1, slip: null });
  expect(doubtAbout('4126', LAST, NOW)).toMatchObject({ kind: 'too-many', slip: 412.6 });
  expect(doubtAbout('4.1.2', LAST, NOW)).toEqual({ kind: 'not-a-figure' });
  expect(doubtAbout('', LAST, NOW)).toEqual({ kind: 'not-a-figure' });
  expect(doubtAbout('9', null, NOW)).toBeNull();
});
