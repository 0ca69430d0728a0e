import {
  bestAge,
  bestBlock,
  bestByCost,
  bestByDowntime,
  blockCostRate,
  costRate,
  costRateOf,
  downtimeRate,
  inspectionCostRate,
  meanLifeTo,
  runToFailureRate,
  shareFailing,
  survival,
} from '@deckround/reliability';
import { describe, expect, test } from '@jest/globals';
import { expectNear } from '../support/near.js';

// Barlow & Hunter 1960, Barlow & Proschan 1965; [C] SciPy quadrature and root of the first-order condition, 1e-6.
describe('age replacement [C]', () => {
  test.each([
    // beta, cf/cp, T*/eta, C*, run to failure, saving, F(T*), mean cycle; cp = 1, eta = 1
    [1.5, 2, 2.17464138, 2.2119998, 2.21546433, 0.001564, 0.959517, 0.885858],
    [1.5, 5, 0.67549199, 4.93129919, 5.53866084, 0.109659, 0.426028, 0.548357],
    [1.5, 10, 0.37814449, 8.30161632, 11.07732167, 0.250575, 0.207477, 0.34539],
    [1.5, 20, 0.22611987, 13.55233811, 22.15464335, 0.388285, 0.101946, 0.216713],
    [2, 2, 1.09079697, 2.18159394, 2.25675833, 0.033306, 0.695729, 0.777289],
    [2, 5, 0.51065522, 4.08524179, 5.64189584, 0.27591, 0.229541, 0.469535],
    [2, 10, 0.33645119, 6.05612144, 11.28379167, 0.46329, 0.107027, 0.324176],
    [2, 20, 0.2304268, 8.75621833, 22.56758334, 0.612, 0.051712, 0.226413],
    [2.5, 5, 0.49304696, 3.46204274, 5.63530249, 0.385651, 0.156921, 0.470152],
    [2.5, 10, 0.35457441, 4.7505468, 11.27060498, 0.578501, 0.07213, 0.347153],
    [3, 2, 0.81034203, 1.9699626, 2.23969304, 0.120432, 0.412638, 0.717089],
    [3, 5, 0.50260958, 3.0313967, 5.59923261, 0.458605, 0.119238, 0.487218],
    [3, 10, 0.38245553, 3.9493503, 11.19846522, 0.647331, 0.054407, 0.377191],
    [3, 20, 0.29777047, 5.05403343, 22.39693043, 0.774343, 0.026057, 0.29582],
  ])('shape %d, failure %d times as dear', (shape, ratio, age, rate, runToFailure, saving, failed, cycle) => {
    const life = { shape, scale: 1 };
    const costs = { planned: 1, failed: ratio };
    const best = bestAge(life, costs);
    expectNear(best.age, age);
    expectNear(best.costRate, rate);
    expectNear(costRate(life, costs, best.age!), rate);
    expectNear(runToFailureRate(life, costs), runToFailure);
    expect(1 - best.costRate / runToFailureRate(life, costs)).toBeCloseTo(saving, 6);
    expect(1 - survival(life, best.age!)).toBeCloseTo(failed, 6);
    expect(meanLifeTo(life, best.age!)).toBeCloseTo(cycle, 6);
  });

  test('worked in hours: eta 800, beta 2.5, cp 120, cf 900', () => {
    const life = { shape: 2.5, scale: 800 };
    const costs = { planned: 120, failed: 900 };
    expectNear(bestAge(life, costs).age, 323.622268);
    expectNear(bestAge(life, costs).costRate, 0.627143955);
    expectNear(runToFailureRate(life, costs), 1.26794306);
    for (const [age, rate] of [
      [200, 0.726417573],
      [400, 0.647027173],
      [600, 0.798275847],
      [800, 0.980875216],
    ] as const)
      expectNear(costRate(life, costs, age), rate);
  });

  test('the Lieblein & Zelen fit, cf/cp = 5', () => {
    const best = bestAge({ shape: 2.10205888, scale: 81.8783341 }, { planned: 1, failed: 5 });
    expectNear(best.age, 41.1436031);
    expectNear(best.costRate, 0.04810245);
    expectNear(runToFailureRate({ shape: 2.10205888, scale: 81.8783341 }, { planned: 1, failed: 5 }), 0.0689477793);
  });

  test('no finite optimum without ageing, nor when a failure costs no more', () => {
    expect(bestAge({ shape: 1, scale: 500 }, { planned: 1, failed: 9 })).toEqual({ age: null, costRate: 9 / 500 });
    expect(bestAge({ shape: 0.7, scale: 500 }, { planned: 1, failed: 9 }).age).toBeNull();
    expect(bestAge({ shape: 3, scale: 500 }, { planned: 2, failed: 2 }).age).toBeNull();
  });
});

describe('published age replacement', () => {
  test('life uniform on 0..40,000 km: solution manual of a maintenance textbook (Jardine & Tsang, ch. 2, problem 2)', () => {
    const end = 40_000;
    const rate = (age: number) =>
      costRateOf(
        (t) => 1 - t / end,
        (t) => t - (t * t) / (2 * end),
        { planned: 100, failed: 200 },
        age,
      );
    expect(rate(10_000)).toBeCloseTo(0.0143, 4);
    expect(rate(20_000)).toBeCloseTo(0.01, 4);
    expect(rate(30_000)).toBeCloseTo(0.0093, 4);
    expect(rate(40_000)).toBeCloseTo(0.01, 4);
    expectNear(rate(29_282.0323), 0.009330127);
    expect(rate(29_282.0323)).toBeLessThan(Math.min(rate(29_000), rate(29_500)));
  });

  test('beta 2.5, eta 1000, cost 1 and 5: documentation of an open statistics library, which scans a grid', () => {
    const best = bestAge({ shape: 2.5, scale: 1000 }, { planned: 1, failed: 5 });
    expect(Math.abs(best.age! - 493.19)).toBeLessThan(0.2);
    expect(best.costRate).toBeCloseTo(0.0035, 4);
    expectNear(best.age, 493.04696);
    expectNear(best.costRate, 0.00346204, 1e-6);
  });
});

describe('periodic replacement with minimal repair [C]', () => {
  test.each([
    [0.1, [0.34199519, 0.31622777, null, 0.36840315]],
    [0.2, [0.54288352, 0.4472136, null, 0.46415888]],
    [0.5, [1, Math.SQRT1_2, null, 0.62996052]],
    [2, [2.5198421, Math.SQRT2, 1.12195515, 1]],
    [5, [4.64158883, 2.23606798, 1.61864458, 1.35720881]],
    [10, [7.368063, 3.16227766, 2.13581433, 1.70997595]],
    [20, [11.69607095, 4.47213595, 2.81822391, 2.15443469]],
  ] as const)('planned/minimal %d', (ratio, expected) => {
    [1.5, 2, 2.5, 3].forEach((shape, i) => {
      if (expected[i] !== null) expectNear(bestBlock({ shape, scale: 1 }, ratio, 1).interval, expected[i]!);
    });
  });

  test('worked: eta 1200 h, beta 2.5, cp 90, cm 45', () => {
    const life = { shape: 2.5, scale: 1200 };
    const best = bestBlock(life, 90, 45);
    expectNear(best.interval, 1346.346175);
    expectNear(best.costRate, 0.1114126537);
    expectNear(blockCostRate(life, 90, 45, best.interval!), 0.1114126537);
    expect(bestBlock({ shape: 1, scale: 1200 }, 90, 45).interval).toBeNull();
  });
});

describe('delay time [C]; model Christer & Waller 1984, Wang', () => {
  test.each([
    [0.1, 0.0483741804],
    [0.5, 0.2130613194],
    [1, 0.3678794412],
    [2, 0.5676676416],
    [5, 0.8013475894],
  ])('share failing at aT = %d', (aT, share) => {
    expectNear(shareFailing(1, aT), share);
  });

  test('least downtime: k .1, a .05, db .5, di .35', () => {
    const model = { defectRate: 0.1, delayRate: 0.05 };
    const best = bestByDowntime(model, 0.5, 0.35);
    expectNear(best.interval, 24.021718);
    expectNear(best.rate, 0.0349566339);
    expectNear(downtimeRate(model, 0.5, 0.35, 10), 0.0441092425);
    expectNear(downtimeRate(model, 0.5, 0.35, 50), 0.0383730884);
    expectNear(downtimeRate(model, 0.5, 0.35, 100), 0.0434154255);
  });

  test('least cost: k .004/h, mean delay 150 h, cb 900, cr 180, ci 40', () => {
    const model = { defectRate: 0.004, delayRate: 1 / 150 };
    const costs = { failure: 900, found: 180, inspection: 40 };
    const best = bestByCost(model, costs);
    expectNear(best.interval, 76.176853);
    expectNear(best.rate, 1.86684297);
    expectNear(inspectionCostRate(model, costs, 50), 1.950830523);
    expectNear(inspectionCostRate(model, costs, 100), 1.897961954);
    expectNear(inspectionCostRate(model, costs, 200), 2.209369818);
  });
});
