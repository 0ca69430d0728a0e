import {
  conditionalSurvival,
  constantRate,
  density,
  hazard,
  mean,
  meanResidualLife,
  medianResidualLife,
  quantile,
  standardDeviation,
  survival,
  weibayes,
} from '@deckround/reliability';
import { describe, expect, test } from '@jest/globals';
import { lives } from '../fixtures/life-data.js';
import { expectNear } from '../support/near.js';

// [C]: R 4.2.2 and SciPy 1.17.1, relative 1e-6.
describe('Weibull values at one age [C]', () => {
  test.each([
    // beta, eta, t, pdf, F, S, hazard, mean, sd, median, B10; the first is the point of NIST e-Handbook 8.1.6.2
    [
      1.5, 5000, 1000, 1.22685086e-4, 0.0855593564, 0.914440644, 1.34164079e-4, 4513.726465, 3064.678959, 3916.098844,
      1115.377628,
    ],
    [
      2.1, 1000, 600, 8.50404705e-4, 0.289702994, 0.710297006, 1.19725227e-3, 885.693614, 443.102343, 839.85169,
      342.458948,
    ],
    [3, 800, 800, 1.3795479e-3, 0.632120559, 0.367879441, 3.75e-3, 714.383609, 259.640225, 707.997636, 377.846975],
  ])('shape %d, scale %d, age %d', (shape, scale, age, pdf, f, s, h, m, sd, median, b10) => {
    const life = { shape, scale };
    expectNear(density(life, age), pdf);
    expectNear(1 - survival(life, age), f);
    expectNear(survival(life, age), s);
    expectNear(hazard(life, age), h);
    expectNear(mean(life), m);
    expectNear(standardDeviation(life), sd);
    expectNear(quantile(life, 0.5), median);
    expectNear(quantile(life, 0.1), b10);
  });

  test('what is left at 600 h, shape 2.1, scale 1000', () => {
    const life = { shape: 2.1, scale: 1000 };
    expectNear(conditionalSurvival(life, 800, 600), 0.752913528);
    expectNear(meanResidualLife(life, 600), 486.647394);
    expectNear(medianResidualLife(life, 600), 416.619085);
  });
});

describe('Weibayes and constant rate [C]', () => {
  test('three failures among seven, shape 2', () => {
    const result = weibayes(lives([120, 260, 310], [400, 450, 520, 600]), 2);
    expectNear(result.scale, 624.766623);
    expectNear(result.scaleAtLeast, 388.620018);
  });

  test('no failure, ten units at 500 h, shape 2', () => {
    const result = weibayes(lives([], new Array(10).fill(500)), 2);
    expect(result.scale).toBeNull();
    expectNear(result.scaleAtLeast, 913.520937);
    expect(result.assumption).toBe('A shape of 2 is assumed, not learned: no failure is on record.');
  });

  test.each([
    [1600, 2, 800, 0.8, 300.620763, 3008.584196],
    [1600, 2, 800, 0.95, 221.462861, 6605.857586],
    [5000, 5, 1000, 0.8, 539.102513, 2055.421543],
    [5000, 5, 1000, 0.95, 428.510259, 3079.791756],
  ])('%d h with %d failures: MTBF %d, level %d', (time, failures, mtbf, level, low, high) => {
    const rate = constantRate(time, failures, level);
    expect(rate.mtbf).toBe(mtbf);
    expectNear(rate.low, low);
    expectNear(rate.high, high);
  });
});
