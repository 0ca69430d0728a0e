import { chiSquareQuantile } from '../numeric/gamma.js';
import { FAILED, type LifeSample } from './life.js';

export interface Weibayes {
  readonly shape: number;
  /** null without any failure. */
  readonly scale: number | null;
  /** One-sided lower bound of the scale. */
  readonly scaleAtLeast: number;
  readonly failures: number;
  readonly assumption: string;
}

/**
 * Scale under an assumed shape, for few failures or none: η = (Σ t^β / r)^(1/β), with lower bound
 * (2 Σ t^β / χ²(level; 2r + 2))^(1/β), which for no failure is (Σ t^β / −ln(1 − level))^(1/β). Left truncation: each
 * entry age is taken off the sum. An interval-censored life counts as failed in the middle.
 *
 * @source Weibayes after Abernethy, from memory; checked in tests/published/weibull-points.test.ts
 */
export function weibayes(sample: LifeSample, shape: number, level = 0.95): Weibayes {
  let sum = 0;
  for (let i = 0; i < sample.age.length; i++) {
    const end =
      sample.kind[i] === 0 || sample.kind[i] === FAILED ? sample.age[i]! : (sample.age[i]! + sample.failedBy[i]!) / 2;
    sum += sample.count[i]! * (end ** shape - sample.entry[i]! ** shape);
  }
  const r = sample.failures;
  return {
    shape,
    scale: r === 0 ? null : (sum / r) ** (1 / shape),
    scaleAtLeast: ((2 * sum) / chiSquareQuantile(level, 2 * r + 2)) ** (1 / shape),
    failures: r,
    assumption: `A shape of ${shape} is assumed, not learned: ${r === 0 ? 'no failure is' : r === 1 ? 'one failure is' : `${r} failures are`} on record.`,
  };
}

export interface ConstantRate {
  /** Mean time between failures, T/r; null without failures. */
  readonly mtbf: number | null;
  readonly low: number;
  /** null without failures: no upper bound. */
  readonly high: number | null;
}

/** Limits of a constant failure rate over total time T with r failures, watching ended by time (two-sided level). */
export function constantRate(totalTime: number, failures: number, level: number): ConstantRate {
  const a = 1 - level;
  return {
    mtbf: failures === 0 ? null : totalTime / failures,
    low: (2 * totalTime) / chiSquareQuantile(1 - a / 2, 2 * failures + 2),
    high: failures === 0 ? null : (2 * totalTime) / chiSquareQuantile(a / 2, 2 * failures),
  };
}
