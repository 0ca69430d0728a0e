import {
  clopperPearsonInterval,
  crpsEnsemble,
  crpsNormal,
  intervalScore,
  pinballLoss,
  wilsonInterval,
} from '@deckround/usage';
import { describe, expect, test } from '@jest/globals';

// Values marked [C] were computed by closed form and numeric integration; [F+C] is found in the unit tests of
// R scoringRules (tests/testthat/test-crps_norm.R) and computed again. Tolerances are the printed digits.
describe('pinball loss [C]', () => {
  test.each([
    [10, 8, 0.9, 1.8],
    [10, 8, 0.1, 0.2],
    [10, 8, 0.5, 1],
    [5, 8, 0.9, 0.3],
    [8, 8, 0.9, 0],
    [0, 3, 0.25, 2.25],
  ])('outcome %d, quantile %d, tau %d', (y, q, tau, loss) => {
    expect(pinballLoss(y, q, tau)).toBeCloseTo(loss, 12);
  });
});

describe('CRPS of a normal forecast, Gneiting & Raftery 2007', () => {
  test.each([
    [-3, 0, 1, 2.4365747251], // [F+C], printed 2.43657473
    [-2.7, 0, 0.9, 2.43657473 * 0.9], // [F+C]
    [0, 0, 1, 0.2336949773], // [C]
    [1, 0, 1, 0.6024413576], // [C]
    [120, 100, 15, 12.809009698], // [C]
    [310, 300, 25, 7.4172022587], // [C]
    [50, 50, 0.5, 0.1168474886], // [C]
  ])('outcome %d, mean %d, sd %d', (y, m, s, crps) => {
    expect(crpsNormal(y, m, s)).toBeCloseTo(crps, 7);
  });
});

test('CRPS of an ensemble [C]', () => {
  expect(crpsEnsemble(3, [1, 2, 4, 7])).toBeCloseTo(0.75, 12);
  expect(crpsEnsemble(10, [8, 9, 11])).toBeCloseTo(0.6666666667, 9);
});

test('interval (Winkler) score of a 90 % interval [C]', () => {
  expect(intervalScore(120, 80, 130, 0.9)).toBeCloseTo(50, 9);
  expect(intervalScore(140, 80, 130, 0.9)).toBeCloseTo(250, 9);
  expect(intervalScore(70, 80, 130, 0.9)).toBeCloseTo(250, 9);
});

describe('95 % intervals of a measured coverage [C]', () => {
  test.each([
    [90, 100, 0.8237774023, 0.9509953108, 0.8256343385, 0.9447708629],
    [85, 100, 0.7646924999, 0.9135456144, 0.7671644041, 0.9069401471],
    [18, 20, 0.683017286, 0.9876514728, 0.6989663548, 0.9721335188],
    [45, 50, 0.7818646336, 0.9667249064, 0.7863976856, 0.9565242351],
  ])('%d of %d', (k, n, exactLow, exactHigh, wilsonLow, wilsonHigh) => {
    const [low, high] = clopperPearsonInterval(k, n);
    expect(low).toBeCloseTo(exactLow, 9);
    expect(high).toBeCloseTo(exactHigh, 9);
    const [lower, upper] = wilsonInterval(k, n);
    expect(lower).toBeCloseTo(wilsonLow, 9);
    expect(upper).toBeCloseTo(wilsonHigh, 9);
  });
});
