import { yearFraction } from '../calendar.js';
import { SEASON_BINS } from './season-prior.js';

/**
 * Season days: the integral of the seasonal shape over time, S(t) = ∫ s. A machine at level ℓ (hours per season day)
 * is expected to run ℓ·(S(b) − S(a)) hours from a to b. A mean year has 365.24 season days, all in the growing season.
 */
export class SeasonClock {
  readonly #cumulative: Float64Array;

  /**
   * @param shape one value per bin of the year, mean 1; linear between bin centres
   * @param from, to first and last day number covered; outside the clock runs at rate 1
   */
  constructor(
    readonly shape: Float64Array,
    readonly from: number,
    readonly to: number,
  ) {
    this.#cumulative = new Float64Array(to - from + 2);
    for (let d = 0; d <= to - from; d++) this.#cumulative[d + 1] = this.#cumulative[d]! + this.rate(from + d);
  }

  /** Shape on one day. */
  rate(day: number): number {
    const x = yearFraction(day + 0.5) * SEASON_BINS - 0.5;
    const b = Math.floor(x);
    const low = this.shape[(b + SEASON_BINS) % SEASON_BINS]!;
    return low + (x - b) * (this.shape[(b + 1) % SEASON_BINS]! - low);
  }

  /** Season days from the start of the clock to a moment (whole days plus share of that day's work). */
  at(moment: number): number {
    const x = moment - this.from;
    if (x <= 0) return x;
    const last = this.#cumulative.length - 1;
    if (x >= last) return this.#cumulative[last]! + (x - last);
    const d = Math.floor(x);
    return this.#cumulative[d]! + (x - d) * (this.#cumulative[d + 1]! - this.#cumulative[d]!);
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
