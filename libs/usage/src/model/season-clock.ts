import { yearFraction } from '../calendar.js';
import { SEASON_BINS } from './season-prior.js';
import type { WeatherEffect } from './weather-effect.js';

/**
 * Season days: the integral of the seasonal shape over time, S(t) = ∫ s. A machine at level ℓ (hours per season day)
 * is expected to run ℓ·(S(b) − S(a)) hours from a to b. A mean year has 365.24 season days, all in the growing season.
 */
export class SeasonClock {
  readonly #cumulative: Float64Array;
  readonly #doubt: Float64Array;

  /**
   * @param shape one value per bin of the year, mean 1; linear between bin centres
   * @param from, to first and last day number covered; outside the clock runs at rate 1
   * @param doubt standard deviation of the shape, one value per bin; absent = the shape is known
   * @param weather makes observed days run faster or slower than the season; fades after the last of them
   */
  constructor(
    readonly shape: Float64Array,
    readonly from: number,
    readonly to: number,
    doubt: Float64Array = new Float64Array(SEASON_BINS),
    readonly weather: WeatherEffect | null = null,
  ) {
    this.#cumulative = new Float64Array(to - from + 2);
    this.#doubt = new Float64Array(to - from + 2);
    for (let d = 0; d <= to - from; d++) {
      this.#cumulative[d + 1] = this.#cumulative[d]! + this.rate(from + d);
      this.#doubt[d + 1] = this.#doubt[d]! + valueOn(doubt, from + d);
    }
  }

  /** Shape on one day, weather included. */
  rate(day: number): number {
    const usual = valueOn(this.shape, day);
    return this.weather === null ? usual : usual * this.weather.foreseen(day, Infinity);
  }

  /** Season days from `asked` to a later moment as they could be foreseen then, with the weather known up to `asked`. */
  foreseen(asked: number, to: number): number {
    if (this.weather === null) return this.at(to) - this.at(asked);
    let sum = 0;
    for (let day = Math.floor(asked); day < to; day++) {
      const share = Math.min(to, day + 1) - Math.max(asked, day);
      sum += share * valueOn(this.shape, day) * this.weather.foreseen(day, Math.floor(asked) - 1);
    }
    return sum;
  }

  /** Season days from the start of the clock to a moment (whole days plus share of that day's work). */
  at(moment: number): number {
    return along(this.#cumulative, moment - this.from, 1);
  }

  /** Standard deviation of the season days between two moments, for what is not known of the season itself. */
  doubtBetween(a: number, b: number): number {
    return along(this.#doubt, b - this.from, 0) - along(this.#doubt, a - this.from, 0);
  }

  /** First day by whose end `seasonDays` are reached; null when beyond the clock. */
  dayReaching(seasonDays: number): number | null {
    const sums = this.#cumulative;
    let high = sums.length - 1;
    if (seasonDays > sums[high]!) return null;
    let low = 0;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (sums[middle]! >= seasonDays) high = middle;
      else low = middle + 1;
    }
    return this.from + Math.max(0, low - 1);
  }
}

/** A curve given by bins of the year, on one day: linear between bin centres. */
function valueOn(bins: Float64Array, day: number): number {
  const x = yearFraction(day + 0.5) * SEASON_BINS - 0.5;
  const b = Math.floor(x);
  const low = bins[(b + SEASON_BINS) % SEASON_BINS]!;
  return low + (x - b) * (bins[(b + 1) % SEASON_BINS]! - low);
}

/** Cumulative sums at x days from their start, linear within a day; beyond the ends they grow by `rate` a day. */
function along(sums: Float64Array, x: number, rate: number): number {
  if (x <= 0) return x * rate;
  const last = sums.length - 1;
  if (x >= last) return sums[last]! + (x - last) * rate;
  const d = Math.floor(x);
  return sums[d]! + (x - d) * (sums[d + 1]! - sums[d]!);
}
