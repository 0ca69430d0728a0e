import { exactMedianRank, kaplanMeier, type LifeSample, medianRanks, rankRegression } from '@deckround/reliability';
import { describe, expect, test } from '@jest/globals';
import { lieblein, MINI, NIST, SHOCK } from '../fixtures/life-data.js';
import { expectNear } from '../support/near.js';

// [C]: R survival 3.5-3 survfit; relative 1e-6.
describe('Kaplan–Meier [C]', () => {
  test('NIST: steps of 0.05', () => {
    const steps = kaplanMeier(NIST);
    steps.forEach((step, i) => {
      expectNear(step.survival, 0.95 - 0.05 * i);
    });
    expect(steps).toHaveLength(10);
    expect(steps[9]!.age).toBe(386);
    expectNear(steps[9]!.se, 0.1118034);
  });

  test('MINI', () => {
    const steps = kaplanMeier(MINI);
    const expected = [
      [120, 0.857143, 0.13226],
      [310, 0.685714, 0.186294],
      [450, 0.457143, 0.224175],
    ];
    steps.forEach((step, i) => {
      expect(step.age).toBe(expected[i]![0]);
      expect(step.survival).toBeCloseTo(expected[i]![1]!, 6);
      expect(step.se).toBeCloseTo(expected[i]![2]!, 6);
    });
  });

  test.each([
    // age, at risk, S, Greenwood se, plain, log, log-log 95 %, Nelson–Aalen
    [6700, 38, 0.9736842105, 0.0259672206, 0.9227893934, 1, 0.9240966624, 1, 0.8275127319, 0.996250682, 0.0263157895],
    [9120, 34, 0.9450464396, 0.037831416, 0.8708982269, 1, 0.8737324498, 1, 0.7973157259, 0.9859948769, 0.0557275542],
    [12200, 26, 0.9086984996, 0.0509273805, 0.8088826681, 1, 0.8141694602, 1, 0.7396660034, 0.970060016, 0.0941890926],
    [
      13150, 24, 0.8708360622, 0.0612845822, 0.7507204883, 0.990951636, 0.7586362503, 0.999629858, 0.6873321902,
      0.9502647322, 0.1358557593,
    ],
    [
      14300, 20, 0.827294259, 0.0720465384, 0.6860856385, 0.9685028796, 0.6974795193, 0.9812700905, 0.6272213145,
      0.9258320901, 0.1858557593,
    ],
    [
      17520, 19, 0.7837524559, 0.0803417545, 0.6262855106, 0.9412194013, 0.6410959234, 0.9581528906, 0.5736341206,
      0.8986800833, 0.2384873383,
    ],
    [
      20100, 12, 0.7184397513, 0.0966131109, 0.5290815335, 0.907797969, 0.5519807472, 0.9350972454, 0.4800948926,
      0.8615538933, 0.3218206716,
    ],
    [
      20900, 8, 0.6286347824, 0.119177309, 0.3950515489, 0.8622180158, 0.4335374651, 0.9115283486, 0.3557344704,
      0.8118115379, 0.4468206716,
    ],
    [
      22700, 7, 0.5388298135, 0.1317111464, 0.2806807102, 0.7969789167, 0.3337217903, 0.8699988323, 0.2613465397,
      0.7520592317, 0.5896778145,
    ],
    [
      26510, 5, 0.4310638508, 0.1428055001, 0.1511702137, 0.7109574878, 0.2251906162, 0.8251500287, 0.1619658921,
      0.6777354169, 0.7896778145,
    ],
    [
      27490, 3, 0.2873759005, 0.1510890119, 0, 0.5835049224, 0.1025481382, 0.805328206, 0.0578827485, 0.5794285066,
      1.1230111478,
    ],
  ])('shock absorbers at %d km', (age, atRisk, s, se, plainLow, plainHigh, logLow, logHigh, llLow, llHigh, h) => {
    const at = (scale: 'plain' | 'log' | 'log-log') =>
      kaplanMeier(SHOCK, 0.95, scale).find((each) => each.age === age)!;
    expect(at('plain').atRisk).toBe(atRisk);
    expectNear(at('plain').survival, s);
    expectNear(at('plain').se, se);
    expectNear(at('plain').cumulativeHazard, h);
    if (plainLow === 0) expect(at('plain').low).toBe(0);
    else expectNear(at('plain').low, plainLow);
    expectNear(at('plain').high, plainHigh);
    expectNear(at('log').low, logLow);
    expectNear(at('log').high, logHigh);
    expectNear(at('log-log').low, llLow);
    expectNear(at('log-log').high, llHigh);
  });
});

describe('median ranks: Bernard, Johnson, regression [C]', () => {
  test('Lieblein & Zelen', () => {
    const ranks = medianRanks(lieblein());
    expectNear(ranks[0]!.medianRank, 0.0299145299);
    expect(ranks[11]!.medianRank).toBeCloseTo(0.5, 12);
    expectNear(ranks[22]!.medianRank, 0.9700854701);
    expectNear(exactMedianRank(1, 23), 0.0296872473);
    expectNear(exactMedianRank(12, 23), 0.5);
    expectNear(exactMedianRank(23, 23), 0.9703127527);
  });

  test.each<[string, LifeSample, number[]]>([
    ['NIST', NIST, [1, 2, 3, 4, 5, 6, 7, 8, 9, 10]],
    [
      'shock absorbers',
      SHOCK,
      [
        1, 2.085714286, 3.452910053, 4.874793651, 6.499803477, 8.124813303, 10.499827664, 13.666513479, 16.833199295,
        20.527666079, 25.145749559,
      ],
    ],
    ['mini', MINI, [1, 2.166666667, 3.625]],
  ])('adjusted ranks: %s', (_, sample, expected) => {
    const ranks = medianRanks(sample).map((each) => each.rank);
    expect(ranks).toHaveLength(expected.length);
    ranks.forEach((rank, i) => {
      expectNear(rank, expected[i]!);
    });
  });

  test.each<[string, LifeSample, number, number, number, number, number]>([
    ['Lieblein & Zelen', lieblein(), 2.181228876, 81.57757427, 0.9703439209, 2.247892555, 80.97235179],
    ['NIST', NIST, 1.45751892, 667.3363635, 0.8964036259, 1.625962767, 601.9598903],
    ['shock absorbers', SHOCK, 2.726169115, 28720.45047, 0.9901585347, 2.75326528, 28554.79563],
    ['mini', MINI, 1.311876518, 717.8495487, 0.9824166459, 1.335356565, 704.9431062],
  ])('regression: %s', (_, sample, yBeta, yEta, r2, xBeta, xEta) => {
    const yOnX = rankRegression(medianRanks(sample), 'y-on-x');
    const xOnY = rankRegression(medianRanks(sample), 'x-on-y');
    if (!yOnX.ok || !xOnY.ok) throw new Error('no line');
    expectNear(yOnX.shape, yBeta);
    expectNear(yOnX.scale, yEta);
    expectNear(yOnX.rSquared, r2);
    expectNear(xOnY.shape, xBeta);
    expectNear(xOnY.scale, xEta);
  });
});
