import { growingDegreeDays, growthPotential } from '@deckround/usage';
import { describe, expect, test } from '@jest/globals';

// [F+C]: ohccturf.blogspot.com 2016-04, after Purdue and MSU, base 50 °F; the two in °C [C].
test.each([
  [74, 52, 50, 13],
  [72, 48, 50, 10],
  [68, 42, 50, 5],
  [70, 46, 50, 8],
  [61, 39, 50, 0],
  [75, 52, 50, 13.5],
  [80, 55, 50, 17.5],
  [17, 9, 6, 7],
  [22, 8, 10, 5],
])('a day of %d over %d with base %d', (high, low, base, degreeDays) => {
  expect(growingDegreeDays(high, low, base)).toBe(degreeDays);
});

// Formula [M], values [C]; printed to six digits.
describe('growth potential', () => {
  test.each([
    [5, 0.024258, 0.00101],
    [10, 0.191495, 0.011109],
    [15, 0.661515, 0.07337],
    [20, 1, 0.290924],
    [25, 0.661515, 0.692569],
    [30, 0.191495, 0.989848],
  ])('at %d °C', (celsius, cool, warm) => {
    expect(growthPotential(celsius, 'cool')).toBeCloseTo(cool, 6);
    expect(growthPotential(celsius, 'warm')).toBeCloseTo(warm, 6);
  });
});
