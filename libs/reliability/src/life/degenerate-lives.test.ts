import { describe, expect, test } from '@jest/globals';
import { compareGrades } from './compare-grades.js';
import { fitWeibull } from './fit-weibull.js';
import { reportGroup } from './group-report.js';
import { kaplanMeier } from './kaplan-meier.js';
import { type Life, sampleOf } from './life.js';
import { logRank } from './log-rank.js';
import { medianRanks, rankRegression } from './median-ranks.js';
import { fitExponential, fitLognormal } from './other-laws.js';
import { poolGroups } from './pooling.js';
import { fitThresholdWeibull } from './threshold-weibull.js';

const failed = (...ages: number[]): Life[] => ages.map((age) => ({ age, outcome: 'failed' }));
const running = (...ages: number[]): Life[] => ages.map((age) => ({ age, outcome: 'running' }));
const PRIOR = { shape: { median: 2, sdLog: 0.4 }, scale: { scale: 900, worthFailures: 1 } };

/** Every number anywhere in an answer. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (value instanceof Float64Array) return [...value];
  if (Array.isArray(value)) return value.flatMap(numbersIn);
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(numbersIn) : [];
}

describe('lives that cannot carry a figure get a statement', () => {
  test.each<[string, Life[], string, RegExp]>([
    ['none', [], 'no-lives', /no life on record/],
    ['no failure', running(400, 500, 600), 'no-failure', /None of 3 lives has ended in failure/],
    ['one failure', [...failed(300), ...running(500)], 'one-failure', /one failure cannot tell ageing from chance/],
    ['all at one age', failed(500, 500, 500), 'one-age', /All failures lie at one age/],
    ['only zero hours', failed(0, 0), 'no-lives', /no life on record/],
    ['no numbers', failed(Number.NaN, Number.POSITIVE_INFINITY), 'no-lives', /no life on record/],
  ])('%s', (_, lives, code, statement) => {
    const sample = sampleOf(lives);
    const fit = fitWeibull(sample);
    expect(fit).toMatchObject({ ok: false, code });
    expect(fit.ok ? '' : fit.statement).toMatch(statement);
    expect(fitThresholdWeibull(sample).ok).toBe(false);
    expect(fitLognormal(sample).ok).toBe(false);
    const report = reportGroup(sample);
    expect([report.shape, report.scale, report.b10, report.belief]).toEqual([null, null, null, null]);
    // With a stated prior there is an answer, and every number in it is one.
    const stated = reportGroup(sample, PRIOR);
    const numbers = numbersIn([stated.shape, stated.scale, stated.b10]);
    expect(numbers).toHaveLength(9);
    expect(numbers.every(Number.isFinite)).toBe(true);
    expect(numbersIn(kaplanMeier(sample)).every(Number.isFinite)).toBe(true);
  });

  test('what is left out is told', () => {
    expect(sampleOf([...failed(0, 120), { age: 100, entry: 100, outcome: 'failed' }]).leftOut).toEqual([
      '2 lives without any watched running hours left out',
    ]);
    expect(sampleOf(failed(Number.NaN, 5)).leftOut).toEqual(['1 row without a usable age left out']);
  });

  test('tied ages are no obstacle, and count like the same lives told one by one', () => {
    const ties = fitWeibull(sampleOf(failed(300, 300, 500, 500, 500)));
    const counted = fitWeibull(
      sampleOf([
        { age: 300, outcome: 'failed', count: 2 },
        { age: 500, outcome: 'failed', count: 3 },
      ]),
    );
    expect(ties).toEqual(counted);
    expect(ties.ok).toBe(true);
  });

  test('failures at one age with running lives beyond can be fitted', () => {
    const fit = fitWeibull(sampleOf([...failed(300, 300), ...running(500, 500, 500)]));
    expect(fit.ok && Number.isFinite(fit.shape) && Number.isFinite(fit.scale)).toBe(true);
  });

  test('ranks, exponential, pool and comparison without failures', () => {
    const none = sampleOf(running(100, 200));
    expect(medianRanks(none)).toEqual([]);
    expect(rankRegression([], 'y-on-x')).toMatchObject({ ok: false });
    expect(rankRegression(medianRanks(sampleOf(failed(5, 5))), 'y-on-x')).toMatchObject({ ok: false });
    expect(fitExponential(none)).toMatchObject({ ok: false, code: 'no-failure' });
    expect(poolGroups([none, none], PRIOR)).toMatchObject({ prior: PRIOR, failures: 0 });
    expect(logRank([none, none])).toMatchObject({ ok: false, code: 'no-failure' });
    expect(logRank([none])).toMatchObject({ ok: false, code: 'one-group' });
  });

  test('a grade without failures: the data cannot tell, and it says how little there is', () => {
    const graded = [
      ...failed(100, 200, 300).map((each) => ({ ...each, grade: 'plain', severity: 'normal' as const })),
      ...running(400).map((each) => ({ ...each, grade: 'shielded', severity: 'normal' as const })),
    ];
    const comparison = compareGrades(graded, ['shielded', 'plain']);
    expect(comparison.verdict).toBe('cannot-tell');
    expect(comparison.ratio).toBeNull();
    expect(comparison.sentence).toBe(
      'The data cannot tell (shielded: 0 failures in 1 life; plain: 3 failures in 3 lives): each grade needs at least one failure, and three together.',
    );
  });
});
