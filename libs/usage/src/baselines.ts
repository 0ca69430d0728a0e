import type { MachineForecast } from './model/forecast-usage.js';

/** Lifetime hours by rules of thumb that a forecast has to beat; hours. */
export interface Baselines {
  /** Straight on along the slope of the last two readings. */
  readonly lastTwo: number;
  /** Straight on along the mean slope of all readings. */
  readonly wholeLife: number;
  /** As many hours as in the same weeks of last year. */
  readonly lastYear: number;
}

export const BASELINES = ['lastTwo', 'wholeLife', 'lastYear'] as const satisfies readonly (keyof Baselines)[];

/**
 * The three rules for the end of a day ahead, from the readings that the forecast rests on; readings less than half a
 * day apart give no slope, taken as 0 h a day.
 *
 * @returns null without any reading
 * @source common practice, no source
 */
export function baselinesOf(forecast: MachineForecast, day: number): Baselines | null {
  const { line } = forecast.usage;
  const last = line.at(-1);
  if (last === undefined) return null;
  const days = day + 1 - last.moment;
  const since = (earlier: (typeof line)[number] | undefined) =>
    earlier && last.moment - earlier.moment > 0.5
      ? (last.lifetimeHours - earlier.lifetimeHours) / (last.moment - earlier.moment)
      : 0;
  const aYearAgo = forecast.lifetimeHoursAt(Math.floor(last.moment) - 365);
  return {
    lastTwo: last.lifetimeHours + since(line.at(-2)) * days,
    wholeLife: last.lifetimeHours + since(line[0]) * days,
    lastYear: last.lifetimeHours + forecast.lifetimeHoursAt(day - 365) - aYearAgo,
  };
}
