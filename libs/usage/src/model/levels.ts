import type { Increments } from './increments.js';
import type { SeasonClock } from './season-clock.js';

/** Level of a machine about which nothing at all is known, hours per season day. Own assumption, no source. */
export const UNKNOWN_LEVEL = 0.8;
/** Season days of data that weigh as much as the level one step up. Own choice. */
const SHRINK_DAYS = 40;

/**
 * Long-run levels that machines are drawn toward: global → climate group and class → site and class, each
 *   ℓ = (Σ hours + K·ℓ_above) / (Σ season days + K),
 * the posterior mean of a gamma level given Poisson-like hours.
 *
 * @returns hours per season day, one entry per machine
 * @source empirical Bayes for gamma–Poisson rates (Robbins; Efron & Morris), from memory
 */
export function baseLevels(
  increments: Increments,
  seasonDays: Float64Array,
  groupClass: readonly string[],
  siteClass: readonly string[],
): Float64Array {
  const totals = new Map<string, { hours: number; days: number }>();
  const add = (key: string, hours: number, days: number) => {
    const sum = totals.get(key);
    if (sum) {
      sum.hours += hours;
      sum.days += days;
    } else totals.set(key, { hours, days });
  };
  increments.machine.forEach((m, i) => {
    const hours = increments.hours[i]!;
    const days = seasonDays[i]!;
    add('', hours, days);
    add(groupClass[m]!, hours, days);
    add(siteClass[m]!, hours, days);
  });
  const drawn = (key: string, above: number) => {
    const sum = totals.get(key);
    return ((sum?.hours ?? 0) + SHRINK_DAYS * above) / ((sum?.days ?? 0) + SHRINK_DAYS);
  };
  const global = drawn('', UNKNOWN_LEVEL);
  return Float64Array.from(siteClass, (key, m) => drawn(key, drawn(groupClass[m]!, global)));
}

/** Season days of every increment. */
export function seasonDaysOf(increments: Increments, clockOf: (machine: number) => SeasonClock): Float64Array {
  return Float64Array.from(increments.machine, (m, i) => {
    const clock = clockOf(m);
    return Math.max(1e-3, clock.at(increments.to[i]!) - clock.at(increments.from[i]!));
  });
}

/** Whole-history level of each machine, drawn toward its base level; hours per season day. */
export function longRunLevels(increments: Increments, seasonDays: Float64Array, base: Float64Array): Float64Array {
  return base.map((above, m) => {
    let hours = SHRINK_DAYS * above;
    let days = SHRINK_DAYS;
    for (let i = increments.first[m]!; i < increments.first[m + 1]!; i++) {
      hours += increments.hours[i]!;
      days += seasonDays[i]!;
    }
    return Math.max(1e-4, hours / days);
  });
}
