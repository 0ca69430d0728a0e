import type { MeterChange } from '../snapshot.js';
import { misreadingsOf } from './misreadings.js';
import { BACKWARD_TOLERANCE, doubtOfUse, type PlausibleUse } from './plausible-use.js';
import { hoursBetween, type PlacedReading } from './told-changes.js';

/** How one believed reading follows the one believed before it. */
export interface Step {
  /** Index of the believed reading. */
  readonly at: number;
  /** Hours run since the previous believed reading; 0 at the first. */
  readonly grown: number;
  readonly by: 'first' | 'running' | 'rollover' | 'new-meter' | 'restart';
}

// Prices, in units of −ln(probability): a keying error happens about once in two hundred readings, an untold meter
// change about once in ten thousand. Own judgement; no source.
const SET_ASIDE = 6.5;
const SET_ASIDE_EXPLAINED = 5;
/** A first reading too high for those after it, by no known keying error: more often its meter was changed. */
const SET_ASIDE_FIRST = 9.8;
/** More than any story costs that believes it. */
const SET_ASIDE_CONFIRMED = 1000;
const ROLLOVER = 3;
const NEW_METER = 9;
const RESTART = 19;
/** Where a meter of four or five figures before the point starts again; for meters of which nothing is told. */
const USUAL_ROLLOVERS = [10_000, 100_000];
/** Longest run of readings that can be disbelieved in a row. */
const LONGEST_RUN = 14;

/**
 * The most plausible story behind a machine's readings: which ones to believe, and where the meter was changed.
 *
 * Shortest path over the readings in time order (dynamic programming as in Viterbi's algorithm): believing reading i
 * right after reading j costs the doubt of that much use in that time, plus a price for each reading skipped between
 * them, less when a slipped decimal or swapped digits explain it. Because whole stories are compared, one wrong
 * reading never condemns the good ones after it, and a new reading may overturn an old verdict.
 *
 * @param placed in time order
 * @param rollover hours at which the meter starts again from zero, where told
 * @returns the believed readings in time order; at least one when there is any. Cost O(n · 15).
 * @source Viterbi 1967, from memory; prices are own judgement
 */
export function chooseReadings(
  placed: readonly PlacedReading[],
  changes: readonly MeterChange[],
  use: PlausibleUse,
  rollover?: number,
): Step[] {
  const rollovers = rollover === undefined ? USUAL_ROLLOVERS : [rollover];
  const n = placed.length;
  if (n === 0) return [];
  const cost = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  const from = new Int32Array(n).fill(-1);
  const steps: Step[] = [];
  for (let i = 0; i < n; i++) {
    let best = i === 0 ? 0 : Number.POSITIVE_INFINITY;
    let bestStep: Step = { at: i, grown: 0, by: 'first' };
    for (let j = i - 1; j >= 0 && j >= i - LONGEST_RUN - 1; j--) {
      const step = follow(placed[j]!, placed[i]!, changes, use, rollovers);
      let total = cost[j]! + step.doubt;
      // even if every skipped reading were explained; spares nearly all looks at misreadings
      if (total + SET_ASIDE_EXPLAINED * (i - j - 1) >= best) continue;
      for (let k = j + 1; k < i; k++) total += priceOfSkipping(placed, k, j, i, changes, use);
      if (total < best) {
        best = total;
        from[i] = j;
        bestStep = { at: i, grown: step.grown, by: step.by };
      }
    }
    if (i > 0 && i <= LONGEST_RUN && SET_ASIDE_EXPLAINED * i < best) {
      let total = 0;
      for (let k = 0; k < i; k++) total += priceOfSkipping(placed, k, -1, i, changes, use);
      if (total < best) {
        best = total;
        from[i] = -1;
        bestStep = { at: i, grown: 0, by: 'first' };
      }
    }
    cost[i] = best;
    steps.push(bestStep);
  }
  let end = n - 1;
  let bestEnd = Number.POSITIVE_INFINITY;
  for (let i = n - 1; i >= 0 && i >= n - 1 - LONGEST_RUN; i--) {
    let total = cost[i]!;
    if (total + SET_ASIDE_EXPLAINED * (n - 1 - i) >= bestEnd) continue;
    for (let k = i + 1; k < n; k++) total += priceOfSkipping(placed, k, i, -1, changes, use);
    if (total < bestEnd) {
      bestEnd = total;
      end = i;
    }
  }
  const story: Step[] = [];
  for (let i = end; i >= 0; i = from[i]!) story.push(steps[i]!);
  return story.reverse();
}

function follow(
  a: PlacedReading,
  b: PlacedReading,
  changes: readonly MeterChange[],
  use: PlausibleUse,
  rollovers: readonly number[],
) {
  const days = b.moment - a.moment;
  const grown = hoursBetween(a, b, changes);
  if (grown >= -BACKWARD_TOLERANCE) {
    const doubt = doubtOfUse(grown, days, use);
    if (doubt < RESTART) return { grown: Math.max(0, grown), by: 'running' as const, doubt };
    return { grown: Math.min(24 * days, use.peakRate * days), by: 'restart' as const, doubt: RESTART };
  }
  for (const point of rollovers) {
    const across = point - a.hours + b.hours;
    const doubt = a.meter === b.meter && a.hours <= point ? doubtOfUse(across, days, use) : Number.POSITIVE_INFINITY;
    if (doubt < 2) return { grown: across, by: 'rollover' as const, doubt: ROLLOVER + doubt };
  }
  const sinceZero = doubtOfUse(b.hours, days, use);
  if (sinceZero < 2) return { grown: b.hours, by: 'new-meter' as const, doubt: NEW_METER + sinceZero };
  return { grown: 0, by: 'restart' as const, doubt: RESTART };
}

function priceOfSkipping(
  placed: readonly PlacedReading[],
  skipped: number,
  before: number,
  after: number,
  changes: readonly MeterChange[],
  use: PlausibleUse,
): number {
  if (placed[skipped]!.reading.confirmed) return SET_ASIDE_CONFIRMED;
  if (explainMisreading(placed[skipped]!, placed[before], placed[after], changes, use) !== null)
    return SET_ASIDE_EXPLAINED;
  const isTooHighFirst = before < 0 && hoursBetween(placed[skipped]!, placed[after]!, changes) < -BACKWARD_TOLERANCE;
  return isTooHighFirst ? SET_ASIDE_FIRST : SET_ASIDE;
}

/** The keying error that makes a disbelieved reading fit between its believed neighbours, nearest first; null if none. */
export function explainMisreading(
  odd: PlacedReading,
  before: PlacedReading | undefined,
  after: PlacedReading | undefined,
  changes: readonly MeterChange[],
  use: PlausibleUse,
) {
  if (before === undefined && after === undefined) return null;
  for (const guess of misreadingsOf(odd.hours)) {
    const meant = { ...odd, hours: guess.meant };
    const fitsBefore = before === undefined || fits(before, meant, guess.slack, changes, use);
    if (fitsBefore && (after === undefined || fits(meant, after, guess.slack, changes, use))) return guess;
  }
  return null;
}

function fits(
  a: PlacedReading,
  b: PlacedReading,
  slack: number,
  changes: readonly MeterChange[],
  use: PlausibleUse,
): boolean {
  const grown = hoursBetween(a, b, changes);
  return grown >= -slack && doubtOfUse(Math.max(0, grown - slack), b.moment - a.moment, use) < 1;
}
