import { findRoot } from '../numeric/root.js';
import { BETWEEN, type CannotTell, cannotTell, FAILED, type LifeSample } from './life.js';
import type { Weibull } from './weibull.js';

export interface RankedFailure {
  readonly age: number;
  /** Johnson's adjusted rank. */
  readonly rank: number;
  /** Bernard's approximation of the median rank, (i − 0.3)/(n + 0.4). */
  readonly medianRank: number;
}

/**
 * Plotting positions for lives watched since new: each failure's rank grows by (n + 1 − previous)/(1 + number at or
 * after it), so that censored lives between failures count (Johnson). For plots; entries are not considered.
 *
 * @source Johnson's adjusted ranks and Bernard's approximation, from memory; checked in tests/published
 */
export function medianRanks(sample: LifeSample): RankedFailure[] {
  const rows = Array.from(sample.age, (_, i) => i).toSorted(
    (a, b) => endOf(sample, a) - endOf(sample, b) || Number(isFailure(sample, b)) - Number(isFailure(sample, a)),
  );
  const n = sample.lives;
  const ranked: RankedFailure[] = [];
  let [rank, passed] = [0, 0];
  for (const row of rows) {
    for (let k = 0; k < sample.count[row]!; k++) {
      if (isFailure(sample, row)) {
        rank += (n + 1 - rank) / (1 + n - passed);
        ranked.push({ age: endOf(sample, row), rank, medianRank: (rank - 0.3) / (n + 0.4) });
      }
      passed += 1;
    }
  }
  return ranked;
}

function endOf(sample: LifeSample, row: number): number {
  return sample.kind[row] === BETWEEN ? (sample.age[row]! + sample.failedBy[row]!) / 2 : sample.age[row]!;
}

function isFailure(sample: LifeSample, row: number): boolean {
  return sample.kind[row] === FAILED || sample.kind[row] === BETWEEN;
}

/** Exact median of the i-th smallest of n uniform shares: the p at which at least i of n fall below it half the time. */
export function exactMedianRank(i: number, n: number): number {
  const chance = (p: number) => {
    let term = (1 - p) ** n;
    let below = 0;
    for (let k = 0; k < i; k++) {
      below += term;
      term *= ((n - k) / (k + 1)) * (p / (1 - p));
    }
    return 1 - below - 0.5;
  };
  return findRoot(chance, 1e-9, 1 - 1e-9)!;
}

export interface RankRegression extends Weibull {
  readonly ok: true;
  readonly rSquared: number;
}

/**
 * Straight line through y = ln(−ln(1 − F)) and x = ln t: least squares of y on x (`y-on-x`) or of x on y.
 */
export function rankRegression(
  ranked: readonly RankedFailure[],
  direction: 'y-on-x' | 'x-on-y',
): RankRegression | CannotTell {
  if (ranked.length < 2 || ranked.every((each) => each.age === ranked[0]!.age))
    return cannotTell('one-age', 'A line needs failures at two different ages.');
  const xs = ranked.map((each) => Math.log(each.age));
  const ys = ranked.map((each) => Math.log(-Math.log1p(-each.medianRank)));
  const [mx, my] = [meanOf(xs), meanOf(ys)];
  let [sxx, sxy, syy] = [0, 0, 0];
  xs.forEach((x, i) => {
    sxx += (x - mx) ** 2;
    sxy += (x - mx) * (ys[i]! - my);
    syy += (ys[i]! - my) ** 2;
  });
  const shape = direction === 'y-on-x' ? sxy / sxx : syy / sxy;
  return { ok: true, shape, scale: Math.exp(mx - my / shape), rSquared: (sxy * sxy) / (sxx * syy) };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, each) => sum + each, 0) / values.length;
}
