import { yearFraction } from '../calendar.js';
import type { Increments } from './increments.js';
import { SEASON_BINS, seasonPrior } from './season-prior.js';

const ROUNDS = 24;
/** Machine-weeks of data that weigh as much as the prior in one bin. */
const PRIOR_WEEKS = 0.15;
/**
 * Smoothing passes over a shape learned from one year: a wet fortnight of that year is weather, not season. Each pass
 * has a standard deviation of 0.7 bins; with more years their mean does the smoothing. Own choice.
 */
const WEATHER_PASSES = 6;
const BIN_DAYS = 365.2425 / SEASON_BINS;
/** Bins touched by one gap between readings are walked one by one; longer gaps than this say nothing about season. */
const LONGEST_GAP_DAYS = 200;

/**
 * Seasonal shape of a climate group, learned from gaps of any length: y_i ~ level_m(i) · Σ_b o_ib s_b, where o_ib are
 * the days of gap i in bin b. Maximum likelihood for counts by the multiplicative EM step
 *   s_b ← (Σ_i s_b o_ib ℓ_i y_i/μ_i + c·s⁰_b) / (Σ_i o_ib ℓ_i + c)
 * followed by a light circular smoothing, levels re-estimated in every round; s⁰ is the latitude's prior, scaled to the
 * bins that have been seen. A dormant season comes out as zero where the data say so.
 *
 * @returns one value per bin, mean 1 over the year
 * @source Richardson 1972 / Lucy 1974 iteration with smoothing after Silverman, Jones, Wilson & Nychka 1990; from memory
 */
export function learnSeason(
  increments: Increments,
  machines: readonly number[],
  latitude: number | null,
  until = Number.POSITIVE_INFINITY,
): Float64Array<ArrayBuffer> {
  const prior = seasonPrior(latitude);
  const gaps: number[] = [];
  for (const m of machines) {
    for (let i = increments.first[m]!; i < increments.first[m + 1]!; i++) {
      if (increments.to[i]! <= until && increments.to[i]! - increments.from[i]! <= LONGEST_GAP_DAYS) gaps.push(i);
    }
  }
  let total = 0;
  let days = 0;
  for (const i of gaps) {
    total += increments.hours[i]!;
    days += increments.to[i]! - increments.from[i]!;
  }
  if (total <= 0 || days < 60) return prior;
  const overlap = overlaps(increments, gaps);
  let shape = prior.map((value) => 0.7 * value + 0.3);
  const level = new Map<number, number>();
  for (let round = 0; round < ROUNDS; round++) {
    estimateLevels(increments, gaps, overlap, shape, total / days, level);
    shape = emStep(increments, gaps, overlap, shape, prior, level, total / days);
    shape = normalised(round < ROUNDS - 2 ? smoothed(shape) : shape);
  }
  for (let pass = 0; pass < Math.round(WEATHER_PASSES / yearsSeen(increments, gaps)); pass++) {
    shape = shape.map((value, b) => {
      const n = shape.length;
      return 0.5 * value + 0.25 * (shape[(b + n - 1) % n]! + shape[(b + 1) % n]!);
    });
  }
  return normalised(shape);
}

/** Years between the first and the last gap, at least one. */
function yearsSeen(increments: Increments, gaps: readonly number[]): number {
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (const i of gaps) {
    first = Math.min(first, increments.from[i]!);
    last = Math.max(last, increments.to[i]!);
  }
  return Math.max(1, (last - first) / 365.2425);
}

interface Overlaps {
  readonly start: Int32Array;
  readonly bin: Int16Array;
  readonly days: Float32Array;
}

function overlaps(increments: Increments, gaps: readonly number[]): Overlaps {
  const start = new Int32Array(gaps.length + 1);
  const bin: number[] = [];
  const days: number[] = [];
  gaps.forEach((i, g) => {
    start[g] = bin.length;
    const end = increments.to[i]!;
    let at = increments.from[i]!;
    while (at < end - 1e-6) {
      const position = yearFraction(at) * SEASON_BINS;
      const b = Math.min(SEASON_BINS - 1, Math.floor(position));
      const stay = Math.min(end - at, Math.max(1e-3, (b + 1 - position) * BIN_DAYS));
      bin.push(b);
      days.push(stay);
      at += stay;
    }
  });
  start[gaps.length] = bin.length;
  return { start, bin: Int16Array.from(bin), days: Float32Array.from(days) };
}

function estimateLevels(
  increments: Increments,
  gaps: readonly number[],
  overlap: Overlaps,
  shape: Float64Array<ArrayBuffer>,
  mean: number,
  level: Map<number, number>,
): void {
  const hours = new Map<number, number>();
  const exposure = new Map<number, number>();
  gaps.forEach((i, g) => {
    let days = 0;
    for (let k = overlap.start[g]!; k < overlap.start[g + 1]!; k++) days += shape[overlap.bin[k]!]! * overlap.days[k]!;
    const m = increments.machine[i]!;
    hours.set(m, (hours.get(m) ?? 0) + increments.hours[i]!);
    exposure.set(m, (exposure.get(m) ?? 0) + days);
  });
  for (const [m, sum] of hours) level.set(m, (sum + mean * 20) / (exposure.get(m)! + 20));
}

function emStep(
  increments: Increments,
  gaps: readonly number[],
  overlap: Overlaps,
  shape: Float64Array<ArrayBuffer>,
  prior: Float64Array,
  level: ReadonlyMap<number, number>,
  mean: number,
): Float64Array<ArrayBuffer> {
  const earned = new Float64Array(SEASON_BINS);
  const exposed = new Float64Array(SEASON_BINS);
  gaps.forEach((i, g) => {
    const own = level.get(increments.machine[i]!)!;
    let expected = 0;
    for (let k = overlap.start[g]!; k < overlap.start[g + 1]!; k++)
      expected += own * shape[overlap.bin[k]!]! * overlap.days[k]!;
    const ratio = increments.hours[i]! / Math.max(expected, 1e-6);
    for (let k = overlap.start[g]!; k < overlap.start[g + 1]!; k++) {
      const b = overlap.bin[k]!;
      earned[b] = earned[b]! + own * shape[b]! * overlap.days[k]! * ratio;
      exposed[b] = exposed[b]! + own * overlap.days[k]!;
    }
  });
  let seen = 0;
  let seenPrior = 0;
  for (let b = 0; b < SEASON_BINS; b++) {
    seen += earned[b]!;
    seenPrior += exposed[b]! * prior[b]!;
  }
  const scale = seenPrior > 0 ? seen / seenPrior : 1;
  const weight = PRIOR_WEEKS * BIN_DAYS * mean;
  return prior.map((value, b) => (earned[b]! + weight * value * scale) / (exposed[b]! + weight));
}

function smoothed(shape: Float64Array<ArrayBuffer>): Float64Array<ArrayBuffer> {
  const n = shape.length;
  return shape.map((value, b) => 0.7 * value + 0.15 * (shape[(b + n - 1) % n]! + shape[(b + 1) % n]!));
}

function normalised(shape: Float64Array<ArrayBuffer>): Float64Array<ArrayBuffer> {
  const mean = shape.reduce((sum, value) => sum + value, 0) / shape.length;
  return mean > 0 ? shape.map((value) => value / mean) : shape;
}
