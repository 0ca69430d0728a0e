import { expect, test } from '@jest/globals';
import { lifeMarks } from './life-marks.js';

const life = (ageHours: number, reason: 'failed' | 'preventive' | null = null) => ({ ageHours, reason });

test('every life has its mark, failed ones their own', () => {
  expect(lifeMarks([life(1000), life(400, 'failed'), life(400), life(700, 'preventive')])).toEqual([
    { ageHours: 400, failed: true },
    { ageHours: 400, failed: false },
    { ageHours: 700, failed: false },
    { ageHours: 1000, failed: false },
  ]);
  expect(lifeMarks([])).toEqual([]);
  expect(lifeMarks([life(0), life(0)])).toEqual([{ ageHours: 0, failed: false }]);
});

test('ten thousand lives make no more marks than a chart has places, and none lies far from its life', () => {
  const lives = Array.from({ length: 10_000 }, (_, i) => life((i * 7919) % 1500, i % 3 === 0 ? 'failed' : null));
  const marks = lifeMarks(lives);
  expect(marks.length).toBeLessThanOrEqual(2 * 401);
  for (const { ageHours, reason } of lives)
    expect(
      marks.some((mark) => mark.failed === (reason === 'failed') && Math.abs(mark.ageHours - ageHours) <= 1500 / 400),
    ).toBe(true);
});
