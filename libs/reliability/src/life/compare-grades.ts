import { chiSquareQuantile } from '../numeric/gamma.js';
import { findRootOutward } from '../numeric/root.js';
import type { Interval } from './fit-weibull.js';
import { BETWEEN, FAILED, type Life, type LifeSample, RUNNING, sampleOf, sampleOfColumns } from './life.js';
import { fitLocationScale } from './location-scale.js';
import { type LogRank, logRank } from './log-rank.js';

export interface GradedLife extends Life {
  readonly grade: string;
  readonly severity: 'light' | 'normal' | 'severe';
}

export interface GradeComparison {
  readonly grades: readonly [string, string];
  readonly lives: readonly [number, number];
  readonly failures: readonly [number, number];
  /** Life of the first grade as a multiple of the second's; null when it cannot be estimated. */
  readonly ratio: number | null;
  readonly interval: Interval | null;
  readonly level: number;
  readonly logRankP: number | null;
  readonly verdict: 'first-lasts-longer' | 'second-lasts-longer' | 'cannot-tell';
  readonly sentence: string;
  readonly assumptions: readonly string[];
}

/**
 * Does the first grade outlast the second? Weibull accelerated failure time model ln t = θ₀ + θ₁·[first grade] +
 * severity + σ ε: life ratio exp θ₁ with its likelihood-ratio interval, beside the log-rank test. Severity of duty is
 * taken out where the lives hold more than one.
 *
 * The verdict follows the interval alone, so that test and interval never contradict each other in words.
 */
export function compareGrades(
  lives: readonly GradedLife[],
  grades: readonly [string, string],
  level = 0.9,
): GradeComparison {
  const usable = lives.filter((each) => grades.includes(each.grade) && isWatched(each));
  const of = (grade: string) => sampleOf(usable.filter((each) => each.grade === grade));
  const samples = [of(grades[0]), of(grades[1])] as const;
  const test = logRank(samples);
  const counts = {
    grades,
    lives: [samples[0].lives, samples[1].lives] as const,
    failures: [samples[0].failures, samples[1].failures] as const,
    level,
    logRankP: test.ok ? test.p : null,
  };
  const estimate = lifeRatio(usable, grades, level);
  if (!estimate)
    return {
      ...counts,
      ratio: null,
      interval: null,
      verdict: 'cannot-tell',
      sentence: refusal(counts.lives, counts.failures, grades),
      assumptions: [],
    };
  const { ratio, interval, severityTaken } = estimate;
  const verdict =
    interval.low > 1
      ? 'first-lasts-longer'
      : interval.high !== null && interval.high < 1
        ? 'second-lasts-longer'
        : 'cannot-tell';
  return {
    ...counts,
    ratio,
    interval,
    verdict,
    sentence: sentenceOf(verdict, ratio, interval, level, grades, test),
    assumptions: [
      'Both grades age alike: their lives differ by one factor (Weibull with a common shape).',
      severityTaken
        ? 'Severity of duty is taken out of the comparison.'
        : 'All lives have the same severity of duty on record.',
      'Which grade was fitted where is taken to have nothing else to do with how long it lasts.',
    ],
  };
}

function isWatched(life: Life): boolean {
  return sampleOf([life]).lives > 0;
}

function lifeRatio(lives: readonly GradedLife[], grades: readonly [string, string], level: number) {
  const failuresOf = (grade: string) =>
    lives.filter((each) => each.grade === grade && each.outcome !== 'running').length;
  if (failuresOf(grades[0]) === 0 || failuresOf(grades[1]) === 0) return null;
  if (failuresOf(grades[0]) + failuresOf(grades[1]) < 3) return null;
  const { sample, columns, severityTaken } = designOf(lives, grades[0]);
  const fit = fitLocationScale(sample, 'smallest-extreme-value', { covariates: columns });
  if (!fit.ok) return null;
  const estimate = fit.coefficients[1]!;
  const se = Math.sqrt(fit.covariance[1]![1]!);
  const drop = chiSquareQuantile(level, 1) / 2;
  const inside = (value: number) => {
    const held = fitLocationScale(sample, 'smallest-extreme-value', {
      covariates: columns,
      fixed: { index: 1, value },
    });
    return held.ok ? held.logLikelihood - (fit.logLikelihood - drop) : -1;
  };
  const low = findRootOutward(inside, estimate, -se, estimate - 8);
  const high = findRootOutward(inside, estimate, se, estimate + 8);
  return {
    ratio: Math.exp(estimate),
    interval: { low: low === null ? 0 : Math.exp(low), high: high === null ? null : Math.exp(high) },
    severityTaken,
  };
}

/** Rows with their covariates: the grade, and one column for each severity that has failures of its own. */
function designOf(lives: readonly GradedLife[], first: string) {
  const severities = (['light', 'severe'] as const).filter(
    (each) =>
      lives.some((life) => life.severity === each && life.outcome !== 'running') &&
      lives.some((life) => life.severity !== each && life.outcome !== 'running'),
  );
  const merged = new Map<string, { life: GradedLife; count: number }>();
  for (const life of lives) {
    const key = `${life.outcome} ${life.age} ${life.entry ?? 0} ${life.failedBy ?? ''} ${life.grade} ${life.severity}`;
    const before = merged.get(key);
    if (before) before.count += life.count ?? 1;
    else merged.set(key, { life, count: life.count ?? 1 });
  }
  const rows = [...merged.values()];
  const sample: LifeSample = sampleOfColumns({
    age: Float64Array.from(rows, ({ life }) => life.age),
    entry: Float64Array.from(rows, ({ life }) => Math.max(0, life.entry ?? 0)),
    failedBy: Float64Array.from(rows, ({ life }) => life.failedBy ?? life.age),
    kind: Uint8Array.from(rows, ({ life }) =>
      life.outcome === 'failed' ? FAILED : life.outcome === 'between' ? BETWEEN : RUNNING,
    ),
    count: Float64Array.from(rows, ({ count }) => count),
  });
  const columns = [
    Float64Array.from(rows, ({ life }) => (life.grade === first ? 1 : 0)),
    ...severities.map((each) => Float64Array.from(rows, ({ life }) => (life.severity === each ? 1 : 0))),
  ];
  return { sample, columns, severityTaken: severities.length > 0 };
}

function refusal(
  lives: readonly [number, number],
  failures: readonly [number, number],
  grades: readonly [string, string],
): string {
  const describe = (i: 0 | 1) =>
    `${grades[i]}: ${failures[i]} ${failures[i] === 1 ? 'failure' : 'failures'} in ${lives[i]} ${lives[i] === 1 ? 'life' : 'lives'}`;
  return `The data cannot tell (${describe(0)}; ${describe(1)}): each grade needs at least one failure, and three together.`;
}

function sentenceOf(
  verdict: GradeComparison['verdict'],
  ratio: number,
  interval: Interval,
  level: number,
  grades: readonly [string, string],
  test: LogRank | { ok: false },
): string {
  const range = `${Math.round(level * 100)} % interval ${interval.low.toFixed(2)} to ${interval.high === null ? 'no upper bound' : interval.high.toFixed(2)}`;
  const p = test.ok ? `; log-rank p ${test.p < 0.001 ? 'below 0.001' : test.p.toFixed(3)}` : '';
  if (verdict === 'first-lasts-longer')
    return `Yes: ${grades[0]} lasts ${ratio.toFixed(2)} times as long as ${grades[1]} here (${range}${p}).`;
  if (verdict === 'second-lasts-longer')
    return `No: ${grades[0]} lasts only ${ratio.toFixed(2)} times as long as ${grades[1]} here (${range}${p}).`;
  return `The data cannot tell: ${grades[0]} may last ${ratio.toFixed(2)} times as long as ${grades[1]}, but the ${range} holds 1${p}.`;
}
