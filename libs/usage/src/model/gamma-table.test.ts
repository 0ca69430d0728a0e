import { expect, test } from '@jest/globals';
import { gammaProbability, unitGammaProbability, unitGammaQuantile } from './gamma-table.js';

test('a gamma variable of shape 1 is exponential', () => {
  for (const x of [0.1, 1, 3]) expect(gammaProbability(1, x)).toBeCloseTo(1 - Math.exp(-x), 10);
});

test('chi-squared with 4 degrees of freedom has its 95 % point at 9.4877', () => {
  expect(gammaProbability(2, 9.487729 / 2)).toBeCloseTo(0.95, 6);
});

test('table quantiles agree with the definition, and probability inverts quantile', () => {
  for (const k of [0.5, 0.9, 2.3, 17, 400]) {
    for (const p of [0.1, 0.25, 0.5, 0.77, 0.9]) {
      const x = unitGammaQuantile(k, p);
      expect(Math.abs(gammaProbability(k, x * k) - p)).toBeLessThan(0.01);
      expect(unitGammaProbability(k, x)).toBeCloseTo(p, 6);
    }
  }
});
