import { chiSquareQuantile } from '../numeric/gamma.js';
import { findRoot } from '../numeric/root.js';
import type { EventHistory } from './trend.js';

/** Power-law process: expected events by age t are λ t^β; β > 1 wears out. */
export interface PowerLaw {
  readonly beta: number;
  readonly lambda: number;
  readonly events: number;
}

/**
 * One machine: β = n / Σ ln(T/tᵢ), λ = n/T^β. When watching ended at the last event its term is ln 1 = 0.
 *
 * @source Crow 1974, MIL-HDBK-189 (from memory); checked in tests/published/repairable-machines.test.ts
 */
export function fitPowerLaw(history: EventHistory): PowerLaw | null {
  const n = history.times.length;
  const sum = history.times.reduce((total, each) => total + Math.log(history.end / each), 0);
  if (n === 0 || !(sum > 0) || !Number.isFinite(sum)) return null;
  const beta = n / sum;
  return { beta, lambda: n / history.end ** beta, events: n };
}

/** Bias-reduced shape: (n − 1)/Σ when ended by time, (n − 2)/Σ when ended by the last event. */
export function biasReducedBeta(history: EventHistory): number | null {
  const n = history.times.length;
  const sum = history.times.reduce((total, each) => total + Math.log(history.end / each), 0);
  const free = history.terminated === 'time' ? n - 1 : n - 2;
  return free <= 0 || !(sum > 0) ? null : free / sum;
}

/** Intensity λ β t^(β−1), events per hour at age t. */
export function intensity({ beta, lambda }: PowerLaw, age: number): number {
  return lambda * beta * age ** (beta - 1);
}

export function expectedEvents({ beta, lambda }: PowerLaw, age: number): number {
  return lambda * age ** beta;
}

/** Density of the event times: n ln(λβ) + (β − 1) Σ ln t − λ T^β. */
export function logLikelihood({ beta, lambda }: PowerLaw, history: EventHistory): number {
  const sumLog = history.times.reduce((sum, each) => sum + Math.log(each), 0);
  return history.times.length * Math.log(lambda * beta) + (beta - 1) * sumLog - lambda * history.end ** beta;
}

/** Limits of β for a history ended by time: β χ²(a/2; 2n)/(2n) and the other tail. */
export function betaInterval(fit: PowerLaw, level: number): { low: number; high: number } {
  const a = 1 - level;
  const n = fit.events;
  return {
    low: (fit.beta * chiSquareQuantile(a / 2, 2 * n)) / (2 * n),
    high: (fit.beta * chiSquareQuantile(1 - a / 2, 2 * n)) / (2 * n),
  };
}

/**
 * Current MTBF with Crow's approximate limits for r events ended by time:
 * L = M r(r−1)/(r + z²/4 + √(r z²/2 + z⁴/16))², U = M r(r−1)/(r − z √(r/2))².
 *
 * @source NIST/SEMATECH e-Handbook 8.4.5.2
 */
export function currentMtbf(
  history: EventHistory,
  z: number,
): { mtbf: number; low: number; high: number | null } | null {
  const beta = biasReducedBeta(history);
  const r = history.times.length;
  if (beta === null) return null;
  const mtbf = history.end / (r * beta);
  const below = r + (z * z) / 4 + Math.sqrt((r * z * z) / 2 + z ** 4 / 16);
  const above = r - z * Math.sqrt(r / 2);
  return {
    mtbf,
    low: (mtbf * r * (r - 1)) / (below * below),
    high: above > 0 ? (mtbf * r * (r - 1)) / (above * above) : null,
  };
}

/** Cramér–von Mises distance of the event times from the fitted law: 1/(12 M) + Σ ((tᵢ/T)^b − (2i − 1)/(2M))². */
export function cramerVonMises(history: EventHistory): number | null {
  const b = biasReducedBeta(history);
  if (b === null) return null;
  const m = history.times.length;
  return history.times
    .toSorted((x, y) => x - y)
    .reduce((sum, t, i) => sum + ((t / history.end) ** b - (2 * i + 1) / (2 * m)) ** 2, 1 / (12 * m));
}

/**
 * Several machines with unequal ends, one law: n/β + Σ ln t − n Σ T^β ln T / Σ T^β = 0, λ = n / Σ T^β.
 */
export function fitPooledPowerLaw(histories: readonly Pick<EventHistory, 'times' | 'end'>[]): PowerLaw | null {
  const times = histories.flatMap((each) => each.times);
  const ends = histories.map((each) => each.end).filter((each) => each > 0);
  const n = times.length;
  if (n === 0 || ends.length === 0 || times.some((each) => each <= 0)) return null;
  const longest = Math.max(...ends);
  const sumLog = times.reduce((sum, each) => sum + Math.log(each / longest), 0);
  const score = (beta: number) => {
    let [s0, s1] = [0, 0];
    for (const end of ends) {
      const p = (end / longest) ** beta;
      s0 += p;
      s1 += p * Math.log(end / longest);
    }
    return n / beta + sumLog - (n * s1) / s0;
  };
  const beta = findRoot(score, 1e-3, 100);
  if (beta === null) return null;
  return { beta, lambda: n / ends.reduce((sum, each) => sum + each ** beta, 0), events: n };
}

/**
 * Counts in intervals that start at 0: Σ nᵢ [(tᵢ^β ln tᵢ − tᵢ₋₁^β ln tᵢ₋₁)/(tᵢ^β − tᵢ₋₁^β) − ln T] = 0.
 */
export function fitGroupedPowerLaw(ends: readonly number[], counts: readonly number[]): PowerLaw | null {
  const n = counts.reduce((sum, each) => sum + each, 0);
  const last = ends[ends.length - 1];
  if (n === 0 || last === undefined) return null;
  const score = (beta: number) =>
    counts.reduce((sum, count, i) => {
      const [from, to] = [(ends[i - 1] ?? 0) / last, ends[i]! / last];
      const lower = from > 0 ? from ** beta * Math.log(from) : 0;
      return sum + (count * (to ** beta * Math.log(to) - lower)) / (to ** beta - from ** beta);
    }, 0);
  const beta = findRoot(score, 1e-3, 50);
  return beta === null ? null : { beta, lambda: n / last ** beta, events: n };
}
