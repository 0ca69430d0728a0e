import type { LookBack } from './look-back.js';

/** Length of a period: what a climate's machines have in common is taken to be one thing for so long. Own choice. */
const PERIOD_DAYS = 28;
/** Look-backs over fewer days tell of which day grass was cut, not of the weather that machines share. */
const LEAST_DAYS = 11;
/** Hours of look-backs that count as much as "nothing in common". */
const SHRINK_HOURS = 300;
const LEAST_LOOK_BACKS = 8;
/**
 * Periods that weigh as much as the prior τ₀ = 0.9·σ, and share of ln r that is weather to come: some of it is the season's own
 * shape, smoothed away. Own choice, after registers simulated from other weather.
 */
const PRIOR_PERIODS = 4;
const PRIOR_SHARE = 0.9;
const COMING_SHARE = 0.5;

/** One period of one climate. */
export interface Period {
  /** Hours run over hours expected, drawn toward 1. */
  readonly ratio: number;
  /** Share of what is seen in `ratio` that is not noise of single machines, 0..1. */
  readonly reliability: number;
  /** How much like the weeks ahead that season was, 0..1. */
  readonly weight: number;
}

/**
 * What look-backs had in common: all machines of a climate stand under one sky, and however many there are, one period is
 * one observation of it.
 *
 * @returns factor: of a look-back's period, on its expected hours; periods: those with enough look-backs
 */
export function skyOf(lookBacks: readonly LookBack[]): {
  factor: (lookBack: LookBack) => number;
  periods: Period[];
} {
  const sums = new Map<string, { hours: number; expected: number; weight: number; count: number }>();
  const key = ({ climate, middle }: LookBack) => `${climate}|${Math.floor(middle / PERIOD_DAYS)}`;
  for (const each of lookBacks) {
    if (each.days < LEAST_DAYS) continue;
    const sum = sums.get(key(each)) ?? { hours: 0, expected: 0, weight: 0, count: 0 };
    sum.hours += each.hours;
    sum.expected += each.expected;
    sum.weight += each.weight;
    sum.count++;
    sums.set(key(each), sum);
  }
  const ratioOf = ({ hours, expected }: { hours: number; expected: number }) =>
    (hours + SHRINK_HOURS) / (expected + SHRINK_HOURS);
  return {
    factor: (lookBack) => {
      const sum = sums.get(key(lookBack));
      return sum === undefined ? 1 : ratioOf(sum);
    },
    periods: [...sums.values()]
      .filter(({ count }) => count >= LEAST_LOOK_BACKS)
      .map((sum) => ({
        ratio: ratioOf(sum),
        reliability: sum.expected / (sum.expected + SHRINK_HOURS),
        weight: sum.weight / sum.count,
      })),
  };
}

/**
 * Variance of what a climate's machines will have in common, τ² = (ν₀·τ₀² + n·s²)/(ν₀ + n)·(1 + 1/years), with
 * s² = Σ w (½ ln r)²/Σ w·reliability and n = Σ w · Σ w·reliability / Σ w² the number of periods that speak. The prior's τ₀ follows
 * σ, since the same weather parts sites from each other. A season learned from few years has their weather in it, which
 * hides as much and errs as much again: hence the last factor.
 *
 * @source shrinkage of a variance toward a prior one with ν₀ degrees of freedom (scaled inverse χ²), from memory
 */
export function sharedVariance(periods: readonly Period[], sigma2: number, years: number): number {
  let sum = 0;
  let weights = 0;
  let told = 0;
  let squares = 0;
  for (const { ratio, reliability, weight } of periods) {
    sum += weight * (COMING_SHARE * Math.log(ratio)) ** 2;
    weights += weight;
    told += weight * reliability;
    squares += weight * weight;
  }
  const speaking = squares > 0 ? (weights * told) / squares : 0;
  const seen = told > 0 ? sum / told : 0;
  const prior = PRIOR_SHARE ** 2 * sigma2;
  return ((PRIOR_PERIODS * prior + speaking * seen) / (PRIOR_PERIODS + speaking)) * (1 + 1 / years);
}
