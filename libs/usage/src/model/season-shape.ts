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
/** Shape, with mean 1, from which on a bin belongs to the growing season. Own choice. */
const IN_SEASON = 0.6;
const BIN_DAYS = 365.2425 / SEASON_BINS;
/**
 * How far the latitude's prior may be off where no season has been seen, as share of the shape and besides, in units of
 * the year's mean; never more than this share of the shape in all, lest a quantile fall with the days. Own choice, on
 * simulated first years with a summer slump that no prior here foresees.
 */
const PRIOR_SHARE_OFF = 0.45;
const PRIOR_OFF = 0.35;
const MOST_OFF = 0.8;
/** Shape below which a bin belongs to the edges of the season, and by how much those shift from year to year. */
const EDGE = 1.2;
const SHIFT_DAYS = 30;
/** Machine-weeks seen in a bin that halve the doubt about it; a gap longer than three weeks shows its bins less sharply. */
const SEEN_WEEKS = 3;
const SHARP_DAYS = 21;
/** Bins touched by one gap between readings are walked one by one; longer gaps than this say nothing about season. */
const LONGEST_GAP_DAYS = 200;

/**
 * Seasonal shape of a climate group, learned from gaps of any length: y_i ~ level_m(i) · Σ_b o_ib s_b, where o_ib are
 * the days of gap i in bin b. Maximum likelihood for counts by the multiplicative EM step
 *   s_b ← (Σ_i s_b o_ib ℓ_i y_i/μ_i + c·s⁰_b) / (Σ_i o_ib ℓ_i + c)
 * followed by a light circular smoothing, levels re-estimated in every round; s⁰ is the latitude's prior, scaled to the
 * bins that have been seen. A dormant season comes out as zero where the data say so.
 *
 * @returns shape: one value per bin, mean 1 over the year; doubt: its standard deviation per bin where little or
 *   nothing has been seen of it, fully correlated between bins
 * @source Richardson 1972 / Lucy 1974 iteration with smoothing after Silverman, Jones, Wilson & Nychka 1990; from memory
 */
export function learnSeason(
  increments: Increments,
  machines: readonly number[],
  latitude: number | null,
): LearnedSeason {
  const prior = seasonPrior(latitude);
  const gaps: number[] = [];
  /** For each gap the place of its machine among `machines`. */
  const owner: number[] = [];
  machines.forEach((m, own) => {
    for (let i = increments.first[m]!; i < increments.first[m + 1]!; i++) {
      if (increments.to[i]! - increments.from[i]! <= LONGEST_GAP_DAYS) {
        gaps.push(i);
        owner.push(own);
      }
    }
  });
  let total = 0;
  let days = 0;
  for (const i of gaps) {
    total += increments.hours[i]!;
    days += increments.to[i]! - increments.from[i]!;
  }
  if (total <= 0 || days < 60) return { shape: prior, doubt: doubtOf(prior, new Float64Array(SEASON_BINS), 1) };
  const overlap = overlaps(increments, gaps);
  let shape = prior.map((value) => 0.7 * value + 0.3);
  const level = new Float64Array(machines.length);
  for (let round = 0; round < ROUNDS; round++) {
    estimateLevels(increments, gaps, owner, overlap, shape, total / days, level);
    shape = emStep(increments, gaps, owner, overlap, shape, prior, level, total / days);
    shape = normalised(round < ROUNDS - 2 ? smoothed(shape) : shape);
  }
  for (let pass = 0; pass < Math.round(WEATHER_PASSES / yearsSeen(increments, gaps)); pass++) {
    shape = shape.map((value, b) => {
      const n = shape.length;
      const before = shape[(b + n - 1) % n]!;
      const after = shape[(b + 1) % n]!;
      // the edge of the growing season stays where it was seen
      return Math.min(value, before, after) < IN_SEASON ? value : 0.5 * value + 0.25 * (before + after);
    });
  }
  shape = normalised(shape);
  return { shape, doubt: doubtOf(shape, weeksSeen(increments, gaps, overlap), yearsSeen(increments, gaps)) };
}

export interface LearnedSeason {
  readonly shape: Float64Array<ArrayBuffer>;
  readonly doubt: Float64Array<ArrayBuffer>;
}

/**
 * sd_b² = ((0.45·s_b + 0.35)·c/(c + machine-weeks seen in b))² + e_b², at most 0.8·s_b; e_b = |s′_b|·δ·√(1 + 1/years)
 * where s_b < 1.2: a season begins and ends δ days earlier or later from year to year, and so it did in the years seen.
 * Own assumption, no source; δ after registers simulated from other weather.
 */
function doubtOf(shape: Float64Array<ArrayBuffer>, weeks: Float64Array, years: number): Float64Array<ArrayBuffer> {
  return shape.map((value, b) => {
    const unseen = SEEN_WEEKS / (SEEN_WEEKS + weeks[b]!);
    const shifted = value < EDGE ? Math.abs(slopeOf(shape, b)) * SHIFT_DAYS * Math.sqrt(1 + 1 / years) : 0;
    return Math.min(MOST_OFF * value, Math.hypot(unseen * (PRIOR_SHARE_OFF * value + PRIOR_OFF), shifted));
  });
}

/** Change of the shape per day. */
function slopeOf(shape: Float64Array, b: number): number {
  return (shape[(b + 1) % SEASON_BINS]! - shape[(b + SEASON_BINS - 1) % SEASON_BINS]!) / (2 * BIN_DAYS);
}

/** Machine-weeks of data in each bin. */
function weeksSeen(increments: Increments, gaps: readonly number[], overlap: Overlaps): Float64Array {
  const weeks = new Float64Array(SEASON_BINS);
  gaps.forEach((i, g) => {
    const sharp = Math.min(1, SHARP_DAYS / (increments.to[i]! - increments.from[i]!));
    for (let k = overlap.start[g]!; k < overlap.start[g + 1]!; k++) {
      const b = overlap.bin[k]!;
      weeks[b] = weeks[b]! + (sharp * overlap.days[k]!) / 7;
    }
  });
  return weeks;
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
  owner: readonly number[],
  overlap: Overlaps,
  shape: Float64Array<ArrayBuffer>,
  mean: number,
  level: Float64Array,
): void {
  const hours = new Float64Array(level.length);
  const exposure = new Float64Array(level.length);
  gaps.forEach((i, g) => {
    let days = 0;
    for (let k = overlap.start[g]!; k < overlap.start[g + 1]!; k++) days += shape[overlap.bin[k]!]! * overlap.days[k]!;
    const own = owner[g]!;
    hours[own] = hours[own]! + increments.hours[i]!;
    exposure[own] = exposure[own]! + days;
  });
  for (let own = 0; own < level.length; own++) level[own] = (hours[own]! + mean * 20) / (exposure[own]! + 20);
}

function emStep(
  increments: Increments,
  gaps: readonly number[],
  owner: readonly number[],
  overlap: Overlaps,
  shape: Float64Array<ArrayBuffer>,
  prior: Float64Array,
  level: Float64Array,
  mean: number,
): Float64Array<ArrayBuffer> {
  const earned = new Float64Array(SEASON_BINS);
  const exposed = new Float64Array(SEASON_BINS);
  gaps.forEach((i, g) => {
    const own = level[owner[g]!]!;
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
