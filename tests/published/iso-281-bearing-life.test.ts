import {
  axialFactors,
  BALL,
  BEARINGS,
  bearingLife,
  bearingOf,
  boreOf,
  checkTipSpeed,
  closedFormAxialFactors,
  equivalentLoad,
  equivalentStaticLoad,
  meanLoad,
  ROLLER,
  ratingLife,
  ratingLifeHours,
  relativeLife,
  reliabilityFactor,
  reliabilityFactorFormula,
  reliabilityOfRating,
  requiredRating,
  requiredRatingAt,
  sealOf,
  systemLife,
  X,
} from '@deckround/reliability';
import { describe, expect, test } from '@jest/globals';
import { expectNear } from '../support/near.js';

// ISO 281 and ISO 15 through bearing makers' stored pages; [C] recomputed with SciPy, relative 1e-6 unless printed.
const bearing = (designation: string) => bearingOf(designation)!;

describe('rating life', () => {
  test.each([
    ['6203', 5472.6382],
    ['6204', 13668.75],
    ['6205', 18009.9556],
    ['6206', 46474.5944],
    ['6304', 26342.4],
    ['6305', 71182.8],
  ])('%s at 1000 N and 3000 r/min, and an eighth of it at 2000 N [C]', (designation, hours) => {
    const at = (load: number) => ratingLifeHours(ratingLife(bearing(designation).ratingN, load), 3000);
    expectNear(at(1000), hours);
    expectNear(at(2000), hours / 8);
  });

  test('varying load, and three equal bearings together [C]', () => {
    const parts = [
      { share: 0.3, rpm: 3000, loadN: 2000 },
      { share: 0.7, rpm: 3000, loadN: 1000 },
    ];
    expectNear(meanLoad(parts), 1458.0997, 1e-7);
    expectNear(systemLife([1, 1, 1]), 0.48075);
  });
});

describe('e, X, Y of deep groove bearings (ISO 281:2007 table 3 as carried by nine stored copies)', () => {
  const entries = [0.172, 0.345, 0.689, 1.03, 1.38, 2.07, 3.45, 5.17, 6.89];
  const e = [0.19, 0.22, 0.26, 0.28, 0.3, 0.34, 0.38, 0.42, 0.44];
  const y = [2.3, 1.99, 1.71, 1.55, 1.45, 1.31, 1.15, 1.04, 1.0];
  test('every row, and straight lines between', () => {
    expect(X).toBe(0.56);
    entries.forEach((entry, i) => {
      expect(axialFactors(entry)).toEqual({ e: e[i], y: y[i], extrapolated: false });
      if (i === 0) return;
      const middle = axialFactors((entry + entries[i - 1]!) / 2);
      expect(middle.e).toBeCloseTo((e[i]! + e[i - 1]!) / 2, 12);
      expect(middle.y).toBeCloseTo((y[i]! + y[i - 1]!) / 2, 12);
    });
  });

  test('outside the table its end row, and it says so', () => {
    expect(axialFactors(0.01)).toEqual({ e: 0.19, y: 2.3, extrapolated: true });
    expect(axialFactors(9)).toEqual({ e: 0.44, y: 1, extrapolated: true });
  });

  test('closed form of a US engineering exam handbook at Fa/C0 = 0.1 [C]', () => {
    const factors = closedFormAxialFactors(0.1);
    expectNear(factors.e, 0.297932, 2e-6);
    expectNear(factors.y, 1.483472);
  });

  test('static load: 0.6 Fr + 0.5 Fa, at least Fr', () => {
    expect(equivalentStaticLoad(1000, 2000)).toBe(1600);
    expect(equivalentStaticLoad(1000, 100)).toBe(1000);
  });
});

describe('reliability factor a1, ISO 281:2007 and 1990', () => {
  const percent = [90, 95, 96, 97, 98, 99, 99.2, 99.4, 99.6, 99.8, 99.9, 99.92, 99.94, 99.95];
  const table = [1, 0.64, 0.55, 0.47, 0.37, 0.25, 0.22, 0.19, 0.16, 0.12, 0.093, 0.087, 0.08, 0.077];
  const formula = [
    1, 0.6379, 0.5549, 0.4654, 0.3659, 0.2483, 0.2208, 0.1909, 0.1575, 0.1176, 0.0926, 0.0867, 0.0803, 0.0768,
  ];
  const x = [1, 0.6189, 0.5315, 0.4372, 0.3325, 0.2088, 0.1798, 0.1483, 0.1131, 0.0712, 0.0448, 0.0386, 0.0319, 0.0282];
  test.each(percent.map((each, i) => [each, table[i]!, formula[i]!, x[i]!]))(
    '%d %%: %d',
    (reliability, a1, exact, relative) => {
      expect(reliabilityFactor(reliability)).toBe(a1);
      expect(reliabilityFactorFormula(reliability)).toBeCloseTo(exact, 4);
      expect(relativeLife(reliability)).toBeCloseTo(relative, 4);
      // The table is the formula, rounded.
      expect(Math.abs(reliabilityFactorFormula(reliability) - a1)).toBeLessThanOrEqual(a1 >= 0.1 ? 0.005 : 0.0005);
    },
  );

  test('the 1990 row is the plain Weibull law with slope 1.5, rounded', () => {
    [1, 0.62, 0.53, 0.44, 0.33, 0.21].forEach((printed, i) => {
      expect(relativeLife(percent[i]!)).toBeCloseTo(printed, 2);
    });
  });
});

describe('boundary dimensions (ISO 15) and ratings: one maker’s 2018 catalogue in a stored extraction', () => {
  test.each([
    ['6203', 17, 40, 12, 9950, 4750],
    ['6204', 20, 47, 14, 13500, 6550],
    ['6205', 25, 52, 15, 14800, 7800],
    ['6206', 30, 62, 16, 20300, 11200],
    ['6303', 17, 47, 14, 14300, 6550],
    ['6304', 20, 52, 15, 16800, 7800],
    ['6305', 25, 62, 17, 23400, 11600],
    ['6208', 40, 80, 18, 32500, 19000],
    ['6310', 50, 110, 27, 65000, 38000],
  ])('%s', (designation, boreMm, outerMm, widthMm, ratingN, staticRatingN) => {
    expect(bearing(`${designation}-2Z`)).toMatchObject({
      designation,
      boreMm,
      outerMm,
      widthMm,
      ratingN,
      staticRatingN,
    });
    expect(boreOf(designation)).toBe(boreMm);
  });

  test('bore codes 00 to 03, then five times the code; seals from the suffix', () => {
    expect(['6000', '6201', '6302', '6203', '6204', '6210'].map(boreOf)).toEqual([10, 12, 15, 17, 20, 50]);
    expect(BEARINGS.every((each) => boreOf(each.designation) === each.boreMm)).toBe(true);
    expect(['6205-2Z', '6205-RS', '6205 2RS C3', '6205-ZZ', '6205'].map(sealOf)).toEqual([
      'two shields',
      'one seal',
      'two seals',
      'two shields',
      'open',
    ]);
  });
});

describe('worked examples', () => {
  test('B1, a scribd lecture "Antifriction Bearings", example 1', () => {
    const life = ratingLife(22.4, 3.2);
    expect(life).toBeCloseTo(343, 9);
    expect(Math.round(ratingLifeHours(life, 650))).toBe(8795);
    expectNear(ratingLifeHours(life, 650), 8794.8718);
  });

  test('B2, sarthaks.com 2642436', () => {
    expect(ratingLife(16, 2)).toBe(512);
  });

  test('B3 to B5, Budynas & Nisbett, solutions 11-1 to 11-3', () => {
    const b3 = requiredRatingAt(2.278, 540, 0.9);
    expect(b3).toBeCloseTo(18.59, 2);
    expectNear(b3, 18.591645);
    expectNear(reliabilityOfRating(19.5, 2.278, 540), 0.918683);
    const b4 = requiredRatingAt(854, 1440, 0.9);
    expect(Math.round(b4)).toBe(9665);
    expectNear(b4, 9665.2154);
    expect(b4 * 0.0044482216).toBeCloseTo(43.0, 1);
    // The solution rounds 854 lbf to 3.80 kN.
    expect(reliabilityOfRating(46.2, 3.8, 1440)).toBeCloseTo(0.927, 3);
    expectNear(reliabilityOfRating(46.2, 3.8, 1440), 0.926768);
    // The roller takes the plain formula: 1440 million revolutions are 24,000 h at 1000 r/min.
    const b5 = requiredRating(10.279, 1000, 24_000, ROLLER);
    expect(b5).toBeCloseTo(91.1, 1);
    expectNear(b5, 91.0877);
  });

  test('B6 and B7, Faires, problem 601', () => {
    const first = X * 1500 + 1.8 * 1000;
    expect(first).toBeCloseTo(2640, 9);
    const rating = requiredRating(first, 1500, 15_000);
    expect(Math.round(rating)).toBe(29_178);
    expectNear(rating, 29177.529);
    const second = X * 1500 + 1.93 * 1000;
    expect(second).toBeCloseTo(2770, 9);
    expectNear(requiredRating(second, 1500, 15_000), 30614.302);
    expect(Math.round(requiredRating(second, 1500, 15_000))).toBe(30_614);
    const b10 = ratingLife(29_900, second);
    expect(Math.round(b10)).toBe(1258);
    expectNear(b10, 1257.692);
    expectNear(ratingLifeHours(b10, 1500), 13974.354);
    // Survival to 1350 million revolutions with slope 1.34, from the rounded B10.
    const survival = Math.exp(-Math.log(1 / 0.9) * (1350 / Math.round(b10)) ** 1.34);
    expect(survival).toBeCloseTo(0.891, 3);
    expectNear(survival, 0.890643);
  });

  test('B8, a notebook after Shigley: outer ring turns, V = 1.2, rows of its own', () => {
    const y = 1.55 + ((0.088 - 0.084) / (0.11 - 0.084)) * (1.45 - 1.55);
    expect(y).toBeCloseTo(1.5346, 4);
    expect(3 / (1.2 * 7)).toBeCloseTo(0.357, 3);
    expect(X * 1.2 * 7 + 1.53 * 3).toBeCloseTo(9.294, 3);
  });

  test('B9, hchbearing.com example 1', () => {
    expectNear(requiredRating(2000, 1600, 10_000), 19729.7);
    const load = equivalentLoad(2000, 300, { staticRatingN: 12_800, f0: 13.8 });
    expect(load.relativeAxialLoad).toBeCloseTo(0.3234, 4);
    expect(load.e).toBeCloseTo(0.21626, 4);
    expect(load).toMatchObject({ loadN: 2000, axialCounts: false });
    expect(bearing('6206').ratingN).toBeGreaterThan(19_730);
  });

  test('B10, hchbearing.com example 2', () => {
    expect(X * 4000 + 1.6 * 2400).toBeCloseTo(6080, 9);
    expectNear(requiredRating(6080, 1000, 10_000), 51280.706);
    expect(bearing('6310').ratingN).toBeGreaterThan(51_280);
  });

  test('B11, Shigley example 11-1 (from memory, recomputed)', () => {
    expectNear(requiredRating(400, 1725, 5000), 3211.4175);
    expect(Math.round(requiredRating(400, 1725, 5000, BALL))).toBe(3211);
  });

  test('B12 and B13 [C]', () => {
    const b12 = bearingLife(
      { ...bearing('6305'), f0: 13 },
      { radialN: 2000, axialN: 1000, rpm: 3000, reliabilityPercent: 90, contamination: 'clean' },
    );
    expectNear(b12.load.relativeAxialLoad, 1.12069);
    expectNear(b12.load.e, 0.285182, 2e-6);
    expectNear(b12.load.y, 1.524089);
    expectNear(b12.load.loadN, 2644.0887);
    expectNear(b12.millionRevolutions, 693.13771);
    expectNear(b12.l10Hours, 3850.7651);
    const b13 = equivalentLoad(1500, 150, { staticRatingN: 7800, f0: 14 });
    expectNear(b13.relativeAxialLoad, 0.269231, 2e-6);
    expectNear(b13.e, 0.206861, 2e-6);
    expect(b13.loadN).toBe(1500);
  });
});

describe('blade tip speed, limit 19,000 ft/min (ANSI B71.1 and B71.4 through secondary sources)', () => {
  test.each([
    [25, 3200, 20943.951, true], // gardenweb.com, printed 20 944
    [22, 4000, 23038.346, true],
    [19, 4000, 19896.753, true],
    [21, 3450, 18967.366, false], // [C]
    [20.5, 3500, 18784.106, false], // [C]
  ])('%d in at %d r/min', (inches, rpm, feetPerMinute, isOver) => {
    const check = checkTipSpeed(inches, rpm);
    expectNear(check.feetPerMinute, feetPerMinute);
    expect(check.isOver).toBe(isOver);
    expect(check.warning === null).toBe(!isOver);
  });

  test.each([
    [16.5, 4398.464],
    [18, 4031.925],
    [20.5, 3540.227],
    [21, 3455.936],
    [25, 2902.986],
  ])('highest speed of a blade of %d in [C]', (inches, rpm) => {
    expectNear(checkTipSpeed(inches, 3000).highestRpm, rpm);
  });
});
