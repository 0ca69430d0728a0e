import {
  betaInterval,
  biasReducedBeta,
  cramerVonMises,
  currentMtbf,
  type EventHistory,
  fitGroupedPowerLaw,
  fitPooledPowerLaw,
  fitPowerLaw,
  intensity,
  laplace,
  logLikelihood,
  meanCumulative,
  meanCumulativeAt,
  milHdbk,
  reversals,
} from '@deckround/reliability';
import { describe, expect, test } from '@jest/globals';
import { EARTH_MOVERS, HALFBEAK, VALVE_SEATS } from '../fixtures/repairable-data.js';
import { expectNear } from '../support/near.js';

const timed = (times: number[], end: number): EventHistory => ({ times, end, terminated: 'time' });

describe('R1, NIST/SEMATECH e-Handbook 8.4.5.2', () => {
  const history = timed([5, 40, 43, 175, 389, 712, 747, 795, 1299, 1478], 1500);

  test('printed by its R script', () => {
    const beta = biasReducedBeta(history)!;
    expect(beta).toBeCloseTo(0.483506, 6);
    expect(10 / 1500 ** beta).toBeCloseTo(0.2913003, 6);
    const now = currentMtbf(history, 1.2815515655)!; // printed 1.281552
    expect(now.mtbf).toBeCloseTo(310.234, 3);
    expect(now.low).toBeCloseTo(157.7138, 4);
    expect(now.high).toBeCloseTo(548.5566, 4);
  });

  test('[C] maximum likelihood, trend tests, limits', () => {
    const fit = fitPowerLaw(history)!;
    expectNear(fit.beta, 0.537228866);
    expectNear(fit.lambda, 0.1966582157);
    expectNear(1 / intensity(fit, 1500), 279.2106111);
    expectNear(laplace(history)!.statistic, -1.3269491826);
    expectNear(laplace(history)!.p, 0.1845254935);
    const test = milHdbk(history)!;
    expectNear(test.statistic, 37.2280814832);
    expect(test.degreesOfFreedom).toBe(20);
    expectNear(test.cdf, 0.9890136429);
    expect(test.direction).toBe('improving');
    expect(reversals(history)).toEqual({ reversals: 33, pairs: 45 });
    const limits = betaInterval(fit, 0.95);
    expectNear(limits.low, 0.2576221232);
    expectNear(limits.high, 0.9178449585);
    expectNear(cramerVonMises(history), 0.0537686852);
  });
});

test('R2, MIL-HDBK-189 (1981) appendix C: a stored validation file; last three [C]', () => {
  const history = timed(
    [
      2.6, 16.5, 16.5, 17.0, 21.4, 29.1, 33.3, 56.5, 63.1, 70.6, 73.0, 77.7, 93.9, 95.5, 98.1, 101.1, 132.0, 142.2,
      147.7, 149.0, 167.2, 190.7, 193.0, 198.7, 251.9, 282.5, 286.1,
    ],
    300,
  );
  const fit = fitPowerLaw(history)!;
  expectNear(fit.beta, 0.7163392624);
  expectNear(fit.lambda, 0.4538418614);
  expectNear(intensity(fit, 300), 0.0644705336);
  expectNear(1 / intensity(fit, 300), 15.510962);
  expectNear(biasReducedBeta(history), 0.6898081786);
  expectNear(cramerVonMises(history), 0.0910611, 1e-6);
  expect(laplace(history)!.statistic).toBeCloseTo(-2.318, 3);
  expectNear(laplace(history)!.p, 0.0204493211);
  expectNear(milHdbk(history)!.statistic, 75.3832755);
  expect(milHdbk(history)!.degreesOfFreedom).toBe(54);
  const limits = betaInterval(fit, 0.9);
  expectNear(limits.low, 0.5056322876);
  expectNear(limits.high, 0.957151512);
});

test('R3, MIL-HDBK-189 grouped example: a stored validation file', () => {
  const fit = fitGroupedPowerLaw([20, 40, 60, 80, 100], [13, 16, 5, 8, 7])!;
  expectNear(fit.beta, 0.752851, 1e-6);
  expectNear(fit.lambda, 1.529306, 1e-6);
  expectNear(intensity(fit, 100), 0.3688969, 1e-6);
  expectNear(1 / intensity(fit, 100), 2.710784, 1e-6);
});

test('R4, ended by failure: documentation of an open statistics library (ROCOF)', () => {
  const gaps = [
    104, 131, 1597, 59, 4, 503, 157, 6, 118, 173, 114, 62, 101, 216, 106, 140, 1, 102, 3, 393, 96, 232, 89, 61, 37, 293,
    7, 165, 87, 99,
  ];
  let at = 0;
  const times = gaps.map((gap) => {
    at += gap;
    return at;
  });
  const history: EventHistory = { times, end: 5256, terminated: 'failure' };
  expect(laplace(history)!.statistic).toBeCloseTo(2.409, 3);
  expectNear(laplace(history)!.statistic, 2.409438296);
  expect(laplace(history)!.direction).toBe('wearing-out');
  const fit = fitPowerLaw(history)!;
  expect(fit.beta).toBeCloseTo(1.588, 3);
  expectNear(fit.beta, 1.5880533881);
  expectNear(fit.lambda, 3.702728849e-5);
});

test('R5, submarine engine: Meeker & Escobar ch. 16 (from memory); values [C]', () => {
  const fit = fitPowerLaw(timed(HALFBEAK, 25.518))!;
  expectNear(fit.beta, 2.7603395538);
  expectNear(fit.lambda ** (-1 / fit.beta), 5.4473259664);
  expectNear(fit.lambda, 0.00928718167);
  expect(fit.beta).toBeCloseTo(2.76, 2);
  expect(fit.lambda ** (-1 / fit.beta)).toBeCloseTo(5.45, 2);
  expectNear(logLikelihood(fit, timed(HALFBEAK, 25.518)), 28.4655870743);
  expectNear(laplace({ times: HALFBEAK, end: 25.518, terminated: 'failure' })!.statistic, 7.4430863885);
});

test('R6 and R7, two machines with unequal ends: [C], and a stored validation file', () => {
  const r6 = fitPooledPowerLaw([
    { times: [1.5, 3, 7, 9.5], end: 10 },
    { times: [2, 6.5, 8, 11, 14], end: 15 },
  ])!;
  expectNear(r6.beta, 1.1849417892);
  expectNear(r6.lambda, 0.2246617855);
  const r7 = fitPooledPowerLaw([
    { times: [0.5, 1, 1.5, 2, 3], end: 4 },
    { times: [50], end: 100 },
  ])!;
  expectNear(r7.beta, 0.3443837166);
  expectNear(r7.lambda, 0.9236718623);
});

describe('mean cumulative function', () => {
  test('M1, five machines: documentation of an open statistics library', () => {
    const machines = (
      [
        [[5, 10, 15], 17],
        [[6, 13, 17], 19],
        [[12, 20, 25], 26],
        [[13, 15], 24],
        [[16, 22, 25], 28],
      ] as const
    ).map(([ages, to], i) => ({ id: `${i}`, to, events: ages.map((age) => ({ age, amount: 1 })) }));
    const printed = [
      [5, 0.2],
      [6, 0.4],
      [10, 0.6],
      [12, 0.8],
      [13, 1.2],
      [15, 1.6],
      [16, 1.8],
      [17, 2.0],
      [20, 2.33333],
      [22, 2.66667],
      [25, 3.66667],
    ];
    const steps = meanCumulative(machines);
    expect(steps.map((each) => each.age)).toEqual(printed.map(([age]) => age));
    steps.forEach((step, i) => {
      expect(step.mean).toBeCloseTo(printed[i]![1]!, 5);
    });
  });

  test.each([
    // day, at risk, M, robust se (R survfit with id), se with sample variance (formula after Nelson, from memory)
    [61, 41, 0.0243902439, 0.0240909658, 0.0243902439],
    [98, 41, 0.1463414634, 0.0551993371, 0.0558850694],
    [139, 41, 0.2195121951, 0.073269812, 0.0741800309],
    [265, 41, 0.4146341463, 0.0911008081, 0.0922325385],
    [377, 41, 0.6585365854, 0.1318416483, 0.1334794955],
    [404, 40, 0.6835365854, 0.1359389574, 0.1376302598],
    [561, 40, 0.8835365854, 0.1617477262, 0.1637742757],
    [586, 34, 1.0142641396, 0.1738443285, 0.1760424207],
    [621, 17, 1.1185422144, 0.2075028832, 0.2111133538],
    [646, 13, 1.3204652913, 0.228505155, 0.2331373324],
    [653, 9, 1.5426875136, 0.3116560748, 0.3238553408],
  ])('M2, valve seats at day %d [C]', (age, atRisk, mean, se, sampleSe) => {
    const step = meanCumulative(VALVE_SEATS).find((each) => each.age === age)!;
    expect(step.atRisk).toBe(atRisk);
    expectNear(step.mean, mean);
    expectNear(step.se, se);
    expectNear(step.sampleSe, sampleSe);
  });

  test('M3, earth-moving machines [C]: actions and cost a machine', () => {
    const counts = meanCumulative(
      EARTH_MOVERS.map((each) => ({ ...each, events: each.events.map(({ age }) => ({ age, amount: 1 })) })),
    );
    const costs = meanCumulative(EARTH_MOVERS);
    for (const [age, actions, cost] of [
      [1000, 3.5217391304, 10.6608695652],
      [2000, 7.6086956522, 23.2347826087],
      [4000, 16.1996626943, 57.4030775556],
      [6000, 25.1655762527, 92.6139634303],
      [8000, 33.0494867866, 118.6587109048],
    ] as const) {
      expectNear(meanCumulativeAt(counts, age), actions);
      expectNear(meanCumulativeAt(costs, age), cost);
    }
  });
});
