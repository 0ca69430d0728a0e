import {
  fitExponential,
  fitLocationScale,
  fitLognormal,
  fitWeibull,
  goodnessOfFit,
  type LifeSample,
  mean,
  normalInterval,
  profileQuantileInterval,
  profileShapeInterval,
  quantile,
  sampleOfColumns,
  seLogQuantile,
  standardDeviation,
  type WeibullFit,
} from '@deckround/reliability';
import { describe, expect, test } from '@jest/globals';
import { ALLOY, CAGE, FAN, LOCO, lieblein, MINI, NIST, SHOCK, TINY, TRAC } from '../fixtures/life-data.js';
import { expectNear } from '../support/near.js';

function fitted(sample: LifeSample): WeibullFit {
  const fit = fitWeibull(sample);
  if (!fit.ok) throw new Error(fit.statement);
  return fit;
}

// [C]: R 4.2.2, survival 3.5-3, survreg(Surv(t, d) ~ 1, dist = "weibull", rel.tolerance 1e-14); relative 1e-6.
describe('Weibull by maximum likelihood [C]', () => {
  test.each<[string, LifeSample, number, number, number, number, number, number, number, number, number]>([
    // name, data, lives, failures, beta, se(beta), eta, se(eta), log-likelihood, mu, sigma
    [
      'Lieblein & Zelen, 48.48',
      lieblein(),
      23,
      23,
      2.10205888,
      0.32868701,
      81.8783341,
      8.60044573,
      -113.691290932,
      4.40523441,
      0.47572407,
    ],
    [
      'Lieblein & Zelen, 48.40',
      lieblein(48.4),
      23,
      23,
      2.10184686,
      0.32865733,
      81.8745587,
      8.60092648,
      -113.691959088,
      4.4051883,
      0.47577205,
    ],
    [
      'Lieblein & Zelen, 48.80',
      lieblein(48.8),
      23,
      23,
      2.10290297,
      0.3288056,
      81.8934309,
      8.59853828,
      -113.68866448,
      4.40541878,
      0.47553311,
    ],
    ['NIST', NIST, 20, 10, 1.72079726, 0.5021506, 606.527558, 124.910656, -75.134618165, 6.40775017, 0.58112598],
    [
      'shock absorbers',
      SHOCK,
      38,
      11,
      3.16047031,
      0.73081839,
      27718.7181,
      3046.02318,
      -123.995361189,
      10.22986321,
      0.3164086,
    ],
    [
      'generator fans',
      FAN,
      70,
      12,
      1.05844585,
      0.26825097,
      26296.8452,
      12251.4283,
      -135.152719943,
      10.17720426,
      0.94478145,
    ],
    ['alloy', ALLOY, 72, 67, 3.03325851, 0.27972008, 198.074408, 8.25475991, -376.090616798, 5.28864276, 0.32967846],
    [
      'bearing cages',
      CAGE,
      1703,
      6,
      2.03531861,
      0.66567491,
      11792.1782,
      9848.12672,
      -76.436896356,
      9.37519172,
      0.49132357,
    ],
    [
      'locomotive controls',
      LOCO,
      96,
      37,
      2.33125322,
      0.36095279,
      183.398801,
      16.4879112,
      -237.382513436,
      5.21166302,
      0.42895383,
    ],
    [
      'tractor brakes',
      TRAC,
      107,
      107,
      1.48558285,
      0.11007438,
      2238.59894,
      153.317384,
      -910.006025328,
      7.71360548,
      0.67313647,
    ],
    ['mini', MINI, 7, 3, 1.75280907, 0.89265954, 652.818111, 247.127604, -22.87606973, 6.48129855, 0.57051279],
    ['tiny', TINY, 6, 2, 3.21087469, 2.12953861, 653.413373, 197.096489, -15.382723143, 6.48220997, 0.31144162],
  ])('%s', (_, sample, lives, failures, beta, seBeta, eta, seEta, logLikelihood, mu, sigma) => {
    const fit = fitted(sample);
    expect([fit.lives, fit.failures]).toEqual([lives, failures]);
    expectNear(fit.shape, beta);
    expectNear(fit.seShape, seBeta);
    expectNear(fit.scale, eta);
    expectNear(fit.seScale, seEta);
    expectNear(fit.logLikelihood, logLikelihood, 1e-9);
    expectNear(Math.log(fit.scale), mu);
    expectNear(1 / fit.shape, sigma);
    // The general engine, which also takes intervals and covariates, finds the same.
    const general = fitLocationScale(sample, 'smallest-extreme-value');
    if (!general.ok) throw new Error(general.statement);
    expectNear(1 / general.sigma, beta);
    expectNear(general.logLikelihood, logLikelihood, 1e-9);
  });
});

describe('B10, its standard error and intervals; shape intervals; covariance [C]', () => {
  test.each<
    [string, LifeSample, number, number, [number, number], [number, number], [number, number], [number, number, number]]
  >([
    [
      'Lieblein & Zelen, 48.48',
      lieblein(),
      28.069414,
      0.22499151,
      [18.0601031, 43.6261077],
      [1.54720309, 2.85589627],
      [1.50414616, 2.79153517],
      [0.0110332618, -0.0054020406, 0.0244498015],
    ],
    [
      'Lieblein & Zelen, 48.40',
      lieblein(48.4),
      28.065089,
      0.22501612,
      [18.0564495, 43.6214893],
      [1.54704204, 2.85561745],
      [1.50399124, 2.79126535],
      [0.011035513, -0.0054026995, 0.0244503171],
    ],
    [
      'NIST',
      NIST,
      164.022439,
      0.34218695,
      [83.8751295, 320.754919],
      [0.9712661, 3.04874556],
      [0.90564536, 2.88573787],
      [0.0424128936, 0.0271278424, 0.0851546887],
    ],
    [
      'shock absorbers',
      SHOCK,
      13600.0347,
      0.14568919,
      [10221.8418, 18094.6788],
      [2.00873307, 4.97257338],
      [1.89853217, 4.77139078],
      [0.0120759171, 0.01261167, 0.0534706556],
    ],
    [
      'generator fans',
      FAN,
      3137.24078,
      0.31677206,
      [1686.20737, 5836.93314],
      [0.64408231, 1.73938579],
      [0.60597419, 1.65794086],
      [0.2170531763, 0.0957276112, 0.0642310911],
    ],
    [
      'alloy',
      ALLOY,
      94.3248918,
      0.08878283,
      [79.2600304, 112.253114],
      [2.53170784, 3.63417018],
      [2.50785134, 3.60424116],
      [0.0017368094, -0.0009872122, 0.0085041017],
    ],
    [
      'bearing cages',
      CAGE,
      3903.12667,
      0.49183625,
      [1488.54125, 10234.4478],
      [1.07210401, 3.86391787],
      [0.9709318, 3.5795383],
      [0.6974598164, 0.2651474003, 0.1069694012],
    ],
    [
      'locomotive controls',
      LOCO,
      69.8506461,
      0.11727065,
      [55.5072196, 87.9005074],
      [1.72106052, 3.15778643],
      [1.69124327, 3.10962861],
      [0.008082362, 0.0086336781, 0.0239729731],
    ],
    [
      'tractor brakes',
      TRAC,
      492.158662,
      0.1485984,
      [367.805271, 658.555404],
      [1.28477486, 1.71777676],
      [1.27695418, 1.7081651],
      [0.0046906196, -0.0015821014, 0.0054900807],
    ],
    [
      'mini',
      MINI,
      180.80791,
      0.57169275,
      [58.9646428, 554.425478],
      [0.64601122, 4.75586111],
      [0.49564016, 4.03076104],
      [0.1433039392, 0.0950160455, 0.2593596909],
    ],
  ])('%s', (_, sample, b10, se, b10Normal, shapeNormal, shapeProfile, variance) => {
    const fit = fitted(sample);
    expectNear(quantile(fit, 0.1), b10);
    expectNear(seLogQuantile(fit, 0.1), se);
    const normal = normalInterval(quantile(fit, 0.1), seLogQuantile(fit, 0.1), 0.95);
    expectNear(normal.low, b10Normal[0]);
    expectNear(normal.high, b10Normal[1]);
    const ofShape = normalInterval(fit.shape, fit.seShape / fit.shape, 0.95);
    expectNear(ofShape.low, shapeNormal[0]);
    expectNear(ofShape.high, shapeNormal[1]);
    const profile = profileShapeInterval(sample, fit, 0.95);
    expectNear(profile.low, shapeProfile[0]);
    expectNear(profile.high, shapeProfile[1]);
    variance.forEach((each, i) => {
      expectNear(fit.variance[i], each);
    });
  });

  test.each<[string, LifeSample, number, number]>([
    ['Lieblein & Zelen, 48.48', lieblein(), 16.2884, 40.764607],
    ['NIST', NIST, 59.854554, 271.949518],
    ['shock absorbers', SHOCK, 9371.2024, 17291.2379],
    ['bearing cages', CAGE, 2094.28078, 22144.4268],
  ])('likelihood-ratio interval of B10: %s', (_, sample, low, high) => {
    const interval = profileQuantileInterval(sample, fitted(sample), 0.1, 0.95);
    expectNear(interval.low, low);
    expectNear(interval.high, high);
  });
});

describe('other laws [C]', () => {
  test.each<[string, LifeSample, number, number]>([
    ['Lieblein & Zelen, 48.48', lieblein(), 72.2243478, -121.434875981],
    ['NIST', NIST, 777.1, -76.555690422],
    ['shock absorbers', SHOCK, 56818.1818, -131.423728215],
    ['generator fans', FAN, 28703.3333, -135.177222468],
  ])('exponential: %s', (_, sample, meanLife, logLikelihood) => {
    const fit = fitExponential(sample);
    if (!fit.ok) throw new Error(fit.statement);
    expectNear(fit.mean, meanLife);
    expectNear(fit.logLikelihood, logLikelihood, 1e-9);
  });

  test('likelihood ratio of Weibull against exponential', () => {
    const ratio = (sample: LifeSample) => {
      const exponential = fitExponential(sample);
      return exponential.ok ? 2 * (fitted(sample).logLikelihood - exponential.logLikelihood) : Number.NaN;
    };
    expectNear(ratio(lieblein()), 15.48717);
    expect(ratio(FAN)).toBeCloseTo(0.049005, 7);
    expectNear(goodnessOfFit(lieblein(), fitted(lieblein())).noAgeingP, 8.3067e-5, 1e-5);
    expect(goodnessOfFit(FAN, fitted(FAN)).noAgeingP).toBeCloseTo(0.8248, 4);
  });

  test.each<[string, LifeSample, number, number, number]>([
    ['NIST', NIST, 6.22601507, 0.90891404, -75.196270779],
    ['shock absorbers', SHOCK, 10.14477069, 0.53006803, -124.60854999],
  ])('lognormal: %s', (_, sample, mu, sigma, logLikelihood) => {
    const fit = fitLognormal(sample);
    if (!fit.ok) throw new Error(fit.statement);
    expectNear(fit.mu, mu);
    expectNear(fit.sigma, sigma);
    expectNear(fit.logLikelihood, logLikelihood, 1e-9);
  });
});

describe('published answers, to their printed digits', () => {
  test('NIST/SEMATECH e-Handbook 8.4.1.3', () => {
    const fit = fitted(NIST);
    expect(fit.scale).toBeCloseTo(606.528, 3);
    expect(fit.shape).toBeCloseTo(1.7208, 4);
    expect(fit.logLikelihood).toBeCloseTo(-75.135, 3);
    expect(4 - 2 * fit.logLikelihood).toBeCloseTo(154.27, 2);
    const lognormal = fitLognormal(NIST);
    expect(lognormal.ok && 4 - 2 * lognormal.logLikelihood).toBeCloseTo(154.39, 2);
    expect(mean(fit)).toBeCloseTo(540.737, 3);
    expect(standardDeviation(fit)).toBeCloseTo(323.806, 3);
  });

  test('Lieblein & Zelen: a stored test file citing Meeker and Lawless', () => {
    expect(fitted(lieblein()).shape).toBeCloseTo(2.102, 3);
    expect(fitted(lieblein()).scale).toBeCloseTo(81.88, 2);
  });

  test('shock absorbers: Meeker & Escobar 1998, ch. 8 (from memory)', () => {
    const fit = fitted(SHOCK);
    expect(Math.log(fit.scale)).toBeCloseTo(10.23, 2);
    expect(Math.sqrt(fit.variance[0])).toBeCloseTo(0.1099, 4);
    expect(1 / fit.shape).toBeCloseTo(0.3164, 4);
    // R's 0.0731654 is printed without rounding up.
    expect(Math.abs(fit.seShape / fit.shape ** 2 - 0.07316)).toBeLessThan(1e-5);
  });

  test('bearing cages: Meeker & Escobar 1998, sec. 8.4 (from memory), thousand hours', () => {
    const fit = fitted(CAGE);
    expect(fit.shape).toBeCloseTo(2.035, 3);
    expect(quantile(fit, 0.1) / 1000).toBeCloseTo(3.903, 3);
    // Printed 2.093; R's 2.0943 rounds to 2.094.
    const { low, high } = profileQuantileInterval(CAGE, fit, 0.1, 0.95);
    expect(Math.abs(low / 1000 - 2.093)).toBeLessThan(0.002);
    expect(high! / 1000).toBeCloseTo(22.144, 3);
  });

  test('rolling bearings at four loads, Weibull regression on ln load; Nelson 1990 p. 305, data SAS qcug', () => {
    const lives: [load: number, ages: number[]][] = [
      [0.87, [1.67, 2.2, 2.51, 3.0, 3.9, 4.7, 7.53, 14.7, 27.76, 37.4]],
      [0.99, [0.8, 1.0, 1.37, 2.25, 2.95, 3.7, 6.07, 6.65, 7.05, 7.37]],
      [1.09, [0.18, 0.2, 0.24, 0.26, 0.32, 0.32, 0.42, 0.44, 0.88]],
      [1.18, [0.073, 0.098, 0.117, 0.135, 0.175, 0.262, 0.27, 0.35, 0.386, 0.456]],
    ];
    const rows = lives.flatMap(([load, ages]) => ages.map((age) => ({ load, age })));
    const age = Float64Array.from(rows, (each) => each.age);
    const sample = sampleOfColumns({
      age,
      entry: new Float64Array(rows.length),
      failedBy: age,
      kind: new Uint8Array(rows.length).fill(1),
      count: new Float64Array(rows.length).fill(1),
    });
    const fit = fitLocationScale(sample, 'smallest-extreme-value', {
      covariates: [Float64Array.from(rows, (each) => Math.log(each.load))],
    });
    if (!fit.ok) throw new Error(fit.statement);
    expectNear(fit.coefficients[0], 0.832284, 1e-6);
    expectNear(fit.coefficients[1], -13.852946, 1e-6);
    expectNear(fit.sigma, 0.804261, 1e-6);
    expect(fit.coefficients[0]).toBeCloseTo(0.8323, 4);
    expect(fit.coefficients[1]).toBeCloseTo(-13.8529, 4);
    expect(fit.sigma).toBeCloseTo(0.8043, 4);
    expect(Math.sqrt(fit.covariance[0]![0]!)).toBeCloseTo(0.141, 4);
    expect(Math.sqrt(fit.covariance[1]![1]!)).toBeCloseTo(1.2333, 4);
    expect(fit.sigma * Math.sqrt(fit.covariance[2]![2]!)).toBeCloseTo(0.0999, 4);
    expectNear(fit.logLikelihood, -54.138784, 1e-6);
    const onLog = fit.logLikelihood + rows.reduce((sum, each) => sum + Math.log(each.age), 0);
    expect(onLog).toBeCloseTo(-51.77737, 5);
  });
});
