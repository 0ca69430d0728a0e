import { expect, test } from '@jest/globals';
import { linear, roundTicks } from './scale.js';

test('a scale is straight, and one point lies in the middle', () => {
  expect(linear([0, 10], [100, 0])(2.5)).toBe(75);
  expect(linear([4, 4], [0, 10])(4)).toBe(5);
});

test('ticks are round and stay within', () => {
  expect(roundTicks(0, 100, 5)).toEqual([0, 20, 40, 60, 80, 100]);
  expect(roundTicks(0.13, 0.62, 4)).toEqual([0.2, 0.4, 0.6]);
  expect(roundTicks(3, 3, 4)).toEqual([3]);
});
