import { chiSquareCdf } from '../numeric/gamma.js';
import { normalCdf } from '../numeric/normal.js';

/**
 * Events of one repairable machine at times 0 < t ≤ end. `failure`: watching ended at the last event, which then carries
 * no information and is left out of the sums.
 */
export interface EventHistory {
  readonly times: readonly number[];
  readonly end: number;
  readonly terminated: 'time' | 'failure';
}

function used(history: EventHistory): readonly number[] {
  return history.terminated === 'failure' ? history.times.slice(0, -1) : history.times;
}

export interface TrendTest {
  readonly statistic: number;
  /** Two-sided. */
  readonly p: number;
  readonly direction: 'improving' | 'wearing-out' | 'none';
}

/**
 * Laplace test: U = (mean(t) − T/2)/(T/√(12 n)); positive = wearing out.
 *
 * @source Cox & Lewis 1966 (from memory); checked in tests/published/repairable-machines.test.ts
 */
export function laplace(history: EventHistory): TrendTest | null {
  const times = used(history);
  const n = times.length;
  if (n === 0 || history.end <= 0) return null;
  const mean = times.reduce((sum, each) => sum + each, 0) / n;
  const statistic = (mean - history.end / 2) / (history.end / Math.sqrt(12 * n));
  const p = 2 * normalCdf(-Math.abs(statistic));
  return { statistic, p, direction: directionOf(statistic, p) };
}

/**
 * MIL-HDBK-189 test: 2 Σ ln(T/t) is χ² with 2n degrees of freedom without trend; large = improving, small = wearing out.
 */
export function milHdbk(history: EventHistory): (TrendTest & { degreesOfFreedom: number; cdf: number }) | null {
  const times = used(history);
  if (times.length === 0 || times.some((each) => each <= 0)) return null;
  const statistic = 2 * times.reduce((sum, each) => sum + Math.log(history.end / each), 0);
  const degreesOfFreedom = 2 * times.length;
  const cdf = chiSquareCdf(statistic, degreesOfFreedom);
  const p = 2 * Math.min(cdf, 1 - cdf);
  return { statistic, p, degreesOfFreedom, cdf, direction: directionOf(0.5 - cdf, p) };
}

function directionOf(sign: number, p: number): TrendTest['direction'] {
  if (p > 0.1) return 'none';
  return sign > 0 ? 'wearing-out' : 'improving';
}

/** Pairs of gaps in which the later one is longer, of all pairs: many = improving. */
export function reversals(history: EventHistory): { reversals: number; pairs: number } {
  const gaps = history.times.map((each, i) => each - (history.times[i - 1] ?? 0));
  let count = 0;
  for (let i = 0; i < gaps.length; i++) for (let j = i + 1; j < gaps.length; j++) if (gaps[j]! > gaps[i]!) count += 1;
  return { reversals: count, pairs: (gaps.length * (gaps.length - 1)) / 2 };
}
