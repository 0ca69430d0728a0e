import { normalQuantile } from '../numeric/normal.js';
import { BETWEEN, FAILED, type LifeSample } from './life.js';

export type IntervalScale = 'plain' | 'log' | 'log-log';

export interface SurvivalStep {
  readonly age: number;
  readonly atRisk: number;
  readonly failures: number;
  /** Product-limit estimate just after the age. */
  readonly survival: number;
  /** Greenwood's standard error. */
  readonly se: number;
  readonly low: number;
  readonly high: number;
  /** Nelson–Aalen estimate of the cumulative hazard. */
  readonly cumulativeHazard: number;
}

/**
 * Kaplan–Meier estimate with left truncation: at risk at t are the lives with entry < t ≤ age. At equal ages a failure
 * comes before a censoring. An interval-censored life counts as failed in the middle of its interval.
 *
 * @param level two-sided, point by point
 * @source Kaplan & Meier 1958, Greenwood 1926 (from memory); checked against R's survfit in tests/published
 */
export function kaplanMeier(sample: LifeSample, level = 0.95, scale: IntervalScale = 'log-log'): SurvivalStep[] {
  const endOf = (i: number) =>
    sample.kind[i] === BETWEEN ? (sample.age[i]! + sample.failedBy[i]!) / 2 : sample.age[i]!;
  const rows = Array.from(sample.age, (_, i) => i);
  const byEnd = rows.toSorted((a, b) => endOf(a) - endOf(b));
  const byEntry = rows.toSorted((a, b) => sample.entry[a]! - sample.entry[b]!);
  const z = normalQuantile((1 + level) / 2);
  const steps: SurvivalStep[] = [];
  let [survival, greenwood, cumulativeHazard] = [1, 0, 0];
  let [entered, gone] = [0, 0];
  let nextEntry = 0;
  for (let i = 0; i < byEnd.length; ) {
    const age = endOf(byEnd[i]!);
    while (nextEntry < byEntry.length && sample.entry[byEntry[nextEntry]!]! < age)
      entered += sample.count[byEntry[nextEntry++]!]!;
    const atRisk = entered - gone;
    let failures = 0;
    for (; i < byEnd.length && endOf(byEnd[i]!) === age; i++) {
      const row = byEnd[i]!;
      gone += sample.count[row]!;
      if (sample.kind[row] === FAILED || sample.kind[row] === BETWEEN) failures += sample.count[row]!;
    }
    if (failures === 0) continue;
    survival *= 1 - failures / atRisk;
    greenwood += failures / (atRisk * (atRisk - failures));
    cumulativeHazard += failures / atRisk;
    const relative = Math.sqrt(greenwood);
    const [low, high] = survival > 0 ? bounds(survival, relative, z, scale) : [0, 0];
    const se = survival > 0 ? survival * relative : 0;
    steps.push({ age, atRisk, failures, survival, se, low, high, cumulativeHazard });
  }
  return steps;
}

function bounds(s: number, relative: number, z: number, scale: IntervalScale): [number, number] {
  if (scale === 'plain') return [Math.max(0, s - z * s * relative), Math.min(1, s + z * s * relative)];
  if (scale === 'log') return [s * Math.exp(-z * relative), Math.min(1, s * Math.exp(z * relative))];
  const theta = Math.exp((z * relative) / Math.log(s));
  return [s ** (1 / theta), s ** theta];
}
