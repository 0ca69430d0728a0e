import type { MachineForecast } from '@deckround/usage';

/** Equally likely courses of a machine's lifetime hours: the forecast's quantiles at (j + ½)/9. */
export const SCENARIOS = 9;

/** Lifetime hours at the end of the day before each day asked about, scenario after scenario. */
export interface UsageScenarios {
  readonly firstDay: number;
  readonly days: number;
  readonly hours: Float64Array;
}

/**
 * Each course follows one quantile through time, so the chance of having reached a mark by any one day is exact;
 * computed once per machine and shared by its items. The work is done in the morning: a day counts the hours run up to
 * the evening before.
 */
export function usageScenarios(forecast: MachineForecast, firstDay: number, days: number): UsageScenarios {
  const hours = new Float64Array(SCENARIOS * days);
  for (let j = 0; j < SCENARIOS; j++) {
    let floor = 0;
    for (let d = 0; d < days; d++) {
      floor = Math.max(floor, forecast.lifetimeHours(firstDay + d - 1, (j + 0.5) / SCENARIOS));
      hours[j * days + d] = floor;
    }
  }
  return { firstDay, days, hours };
}

/** Chance that a mark has been passed on day d, from the courses, linear between them. */
export function chancePassed(scenarios: UsageScenarios, mark: number, d: number): number {
  const at = (j: number) => scenarios.hours[j * scenarios.days + d]!;
  if (at(0) >= mark) return 1;
  if (at(SCENARIOS - 1) < mark) return 0;
  let j = 1;
  while (at(j) < mark) j++;
  const width = at(j) - at(j - 1);
  const share = width > 0 ? (mark - at(j - 1)) / width : 1;
  return 1 - (j - 0.5 + share) / SCENARIOS;
}
