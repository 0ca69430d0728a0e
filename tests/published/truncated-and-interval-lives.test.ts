import {
  compareGrades,
  fitLognormal,
  fitWeibull,
  type GradedLife,
  kaplanMeier,
  type Life,
  logRank,
  profileShapeInterval,
  sampleOf,
} from '@deckround/reliability';
import { describe, expect, test } from '@jest/globals';
import { lives } from '../fixtures/life-data.js';
import { expectNear } from '../support/near.js';

// Invented lives; reference values from R 4.2.2 with survival 3.5-3, computed once and noted beside each test.
const entry = [0, 0, 800, 300, 0, 150, 0, 500, 0, 0, 250, 0, 600, 0, 100, 0];
const age = [120, 430, 1250, 410, 980, 700, 655, 910, 310, 1400, 520, 205, 1100, 760, 890, 540];
const failed = [1, 1, 1, 0, 1, 1, 0, 1, 1, 0, 1, 1, 0, 1, 1, 0];
const rows = age.map(
  (each, i): Life => ({ age: each, entry: entry[i]!, outcome: failed[i] === 1 ? 'failed' : 'running' }),
);
const taken = sampleOf(rows);

describe('left truncation: machines taken on in mid-life', () => {
  test('Weibull: R dweibull/pweibull with −log S(entry), optim then nlm (survreg has no left truncation)', () => {
    const fit = fitWeibull(taken);
    if (!fit.ok) throw new Error(fit.statement);
    expectNear(fit.shape, 1.56605302524);
    expectNear(fit.scale, 840.108782222);
    expectNear(fit.logLikelihood, -83.0196692205, 1e-9);
    // Profile by R optimize over ln η, limits by uniroot.
    const { low, high } = profileShapeInterval(taken, fit, 0.95);
    expectNear(low, 0.850156278943);
    expectNear(high, 2.53508666756);
  });

  test('lognormal: R dlnorm/plnorm with −log S(entry), nlm', () => {
    const fit = fitLognormal(taken);
    if (!fit.ok) throw new Error(fit.statement);
    expectNear(fit.mu, 6.39975108205);
    expectNear(fit.sigma, 0.825325768693);
    expectNear(fit.logLikelihood, -83.439033176, 1e-9);
  });

  test('Kaplan–Meier: R survfit(Surv(entry, age, d) ~ 1, conf.type = "log-log")', () => {
    const expected = [
      [120, 10, 0.9, 0.0948683298051, 0.47300927136205, 0.985281393367],
      [205, 10, 0.81, 0.120747670785, 0.43037628887011, 0.948695819826],
      [310, 11, 0.736363636364, 0.1303033506307, 0.3865473929652, 0.906166353905],
      [430, 9, 0.654545454545, 0.1391613822439, 0.32210475691112, 0.85337981399],
      [520, 9, 0.581818181818, 0.141431981034, 0.27108087198568, 0.798744703805],
      [700, 7, 0.498701298701, 0.1435882486389, 0.20894188056459, 0.734056897703],
      [760, 6, 0.415584415584, 0.141685500361, 0.15267620123178, 0.663495835479],
      [890, 6, 0.34632034632, 0.1339356047638, 0.11449098545982, 0.595219249613],
      [910, 5, 0.277056277056, 0.1237691666604, 0.07894422464182, 0.522641924654],
      [980, 4, 0.207792207792, 0.1105213200684, 0.04733145844344, 0.445186004189],
      [1250, 2, 0.103896103896, 0.0919289984162, 0.00767074689681, 0.348970150991],
    ];
    const steps = kaplanMeier(taken, 0.95);
    expect(steps.map((each) => [each.age, each.atRisk])).toEqual(expected.map((each) => each.slice(0, 2)));
    steps.forEach((step, i) => {
      const [, , s, se, low, high] = expected[i]!;
      expectNear(step.survival, s!);
      expectNear(step.se, se!);
      expectNear(step.low, low!);
      expectNear(step.high, high!);
    });
  });

  test('log-rank: score test of R coxph(Surv(entry, age, d) ~ g), no ties', () => {
    const of = (odd: number) => sampleOf(rows.filter((_, i) => i % 2 === odd));
    const test = logRank([of(0), of(1)]);
    expectNear(test.ok ? test.chiSquare : null, 0.0369043341749);
  });

  test('grades apart, entries ignored: R survdiff', () => {
    const of = (odd: number) => sampleOf(rows.filter((_, i) => i % 2 === odd).map((each) => ({ ...each, entry: 0 })));
    const test = logRank([of(1), of(0)]);
    if (!test.ok) throw new Error(test.statement);
    expectNear(test.chiSquare, 0.00380221608668);
    expectNear(test.groups[0]!.expected, 4.89978354978);
  });

  test('three groups with ties: R survdiff', () => {
    const test = logRank([lives([10, 20, 30, 40], [20]), lives([15, 20, 25, 60], [35]), lives([12, 18, 55], [50, 70])]);
    if (!test.ok) throw new Error(test.statement);
    expectNear(test.chiSquare, 1.21427330416);
    expect(test.groups.map((each) => each.failures)).toEqual([4, 4, 3]);
    expectNear(test.groups[2]!.expected, 4.44719447219);
  });
});

describe('interval-censored lives: R survreg(Surv(l, u, type = "interval2") ~ 1)', () => {
  const between = sampleOf([
    { age: 100, failedBy: 200, outcome: 'between' },
    { age: 200, failedBy: 300, outcome: 'between' },
    { age: 200, failedBy: 300, outcome: 'between' },
    { age: 300, failedBy: 500, outcome: 'between' },
    // Found failed at its first look: failed between 0 and 120.
    { age: 0, failedBy: 120, outcome: 'between' },
    { age: 450, failedBy: 450, outcome: 'between' },
    { age: 500, outcome: 'running' },
    { age: 500, outcome: 'running' },
    { age: 150, outcome: 'failed' },
    { age: 700, outcome: 'running' },
  ]);

  test('Weibull', () => {
    const fit = fitWeibull(between);
    if (!fit.ok) throw new Error(fit.statement);
    expectNear(fit.shape, 1.29430315467);
    expectNear(fit.scale, 470.390439917);
    expectNear(fit.logLikelihood, -26.1608022686, 1e-9);
    expectNear(Math.sqrt(fit.variance[0]), 0.293932316271);
    expectNear(Math.sqrt(fit.variance[2]), 0.349866884262);
  });

  test('lognormal', () => {
    const fit = fitLognormal(between);
    if (!fit.ok) throw new Error(fit.statement);
    expectNear(fit.mu, 5.80935525064);
    expectNear(fit.sigma, 0.906962286276);
    expectNear(fit.logLikelihood, -25.7898723347, 1e-9);
  });
});

test('two grades and severity: R survreg(Surv(t, d) ~ grade + severe), ratio exp(0.555976)', () => {
  const t = [565, 900, 543, 831, 333, 900, 259, 200, 155, 900, 240, 820, 900, 218, 451, 634, 113, 846, 79, 351];
  t.push(437, 51, 392, 600, 502, 468, 407, 272, 638, 900, 354, 884, 258, 741, 407, 102, 695, 789, 470, 900);
  const d = [1, 0, 1, 1, 1, 0, 1, 1, 1, 0, 1, 1, 0, 1, 1, 1, 1, 1, 1, 1];
  d.push(1, 1, 1, 1, 1, 1, 1, 1, 1, 0, 1, 1, 1, 1, 1, 1, 1, 1, 1, 0);
  const graded = t.map(
    (each, i): GradedLife => ({
      age: each,
      outcome: d[i] === 1 ? 'failed' : 'running',
      grade: i % 2 === 1 ? 'shielded' : 'plain',
      severity: i % 4 >= 2 ? 'severe' : 'normal',
    }),
  );
  const comparison = compareGrades(graded, ['shielded', 'plain'], 0.95);
  expectNear(comparison.ratio, Math.exp(0.555976001043));
  // Wald's interval is near the likelihood-ratio one: se 0.17964696.
  expect(Math.abs(Math.log(comparison.interval!.low) - (0.555976 - 1.96 * 0.179647))).toBeLessThan(0.03);
  expect(comparison.verdict).toBe('first-lasts-longer');
});
