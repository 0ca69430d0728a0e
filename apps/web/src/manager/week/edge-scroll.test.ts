import { expect, test } from '@jest/globals';
import { edgeSpeed } from './edge-scroll.js';

test('a hand in the middle scrolls nothing, at an edge the faster the nearer', () => {
  expect(edgeSpeed(400, 844)).toBe(0);
  expect(edgeSpeed(60, 844)).toBeLessThan(0);
  expect(edgeSpeed(10, 844)).toBeLessThan(edgeSpeed(60, 844));
  expect(edgeSpeed(840, 844)).toBeGreaterThan(edgeSpeed(790, 844));
  expect(edgeSpeed(2000, 844)).toBe(-edgeSpeed(-2000, 844));
});
