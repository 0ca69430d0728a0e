import { dayNumber, yearFraction } from '../calendar.js';
import type { WeatherDay } from '../snapshot.js';

/** Warmth of the last fortnight, rain of the last month, rain of the day: each against what is usual for the date. */
export const COVARIATES = 3;
const WARM_DAYS = 14;
const WET_DAYS = 30;
/** Days to each side that make up "usual for the date". */
const USUAL_HALF_WIDTH = 20;
/** With fewer observed days nothing can be told from them. */
const LEAST_DAYS = 180;

/**
 * Daily weather of one climate as three standardised anomalies: mean temperature of 14 days, log of 30 days' rain, and
 * whether it rained (2 mm or more). °C and mm. Own choice of covariates: grass grows by warmth and water, and nobody
 * mows in the rain.
 */
export class WeatherSeries {
  readonly from: number;
  readonly to: number;
  readonly #x: Float64Array;

  private constructor(from: number, to: number, x: Float64Array) {
    this.from = from;
    this.to = to;
    this.#x = x;
  }

  /** @returns null when there is too little of it to say what is usual */
  static of(days: readonly WeatherDay[]): WeatherSeries | null {
    const byDay = new Map<number, { warmth: number; rain: number; stations: number }>();
    for (const { date, lowC, highC, rainMm } of days) {
      const day = dayNumber(date);
      const sum = byDay.get(day) ?? { warmth: 0, rain: 0, stations: 0 };
      sum.warmth += (lowC + highC) / 2;
      sum.rain += rainMm;
      sum.stations += 1;
      byDay.set(day, sum);
    }
    if (byDay.size < LEAST_DAYS) return null;
    const from = Math.min(...byDay.keys());
    const to = Math.max(...byDay.keys());
    const count = to - from + 1;
    const warmth = new Float64Array(count);
    const rain = new Float64Array(count);
    // a day without a record is like the one before
    let last = byDay.get(from)!;
    for (let d = 0; d < count; d++) {
      last = byDay.get(from + d) ?? last;
      warmth[d] = last.warmth / last.stations;
      rain[d] = last.rain / last.stations;
    }
    const columns = [
      trailingMean(warmth, WARM_DAYS),
      trailingMean(rain, WET_DAYS).map((mean) => Math.log1p(mean * WET_DAYS)),
      rain.map((mm) => (mm >= 2 ? 1 : 0)),
    ];
    const x = new Float64Array(count * COVARIATES);
    columns.forEach((column, k) => {
      const anomaly = anomalies(column, from);
      for (let d = 0; d < count; d++) x[d * COVARIATES + k] = anomaly[d]!;
    });
    return new WeatherSeries(from, to, x);
  }

  /** Covariate k on a day; 0, as usual, where nothing is known. */
  value(day: number, k: number): number {
    return day < this.from || day > this.to ? 0 : this.#x[(day - this.from) * COVARIATES + k]!;
  }
}

function trailingMean(values: Float64Array, days: number): Float64Array {
  let sum = 0;
  return values.map((value, d) => {
    sum += value - (d >= days ? values[d - days]! : 0);
    return sum / Math.min(days, d + 1);
  });
}

/** (value − usual for the date)/standard deviation of that difference. */
function anomalies(values: Float64Array, from: number): Float64Array {
  const bins = 366;
  const sums = new Float64Array(bins);
  const counts = new Float64Array(bins);
  const binOf = (d: number) => Math.min(bins - 1, Math.floor(yearFraction(from + d) * bins));
  values.forEach((value, d) => {
    sums[binOf(d)]! += value;
    counts[binOf(d)]! += 1;
  });
  const usual = Float64Array.from({ length: bins }, (_, b) => {
    let sum = 0;
    let count = 0;
    for (let o = -USUAL_HALF_WIDTH; o <= USUAL_HALF_WIDTH; o++) {
      const near = (b + o + bins) % bins;
      sum += sums[near]!;
      count += counts[near]!;
    }
    return count > 0 ? sum / count : Number.NaN;
  });
  const off = values.map((value, d) => value - usual[binOf(d)]!);
  const deviation = Math.sqrt(off.reduce((sum, value) => sum + value * value, 0) / off.length);
  return deviation > 1e-9 ? off.map((value) => value / deviation) : off.map(() => 0);
}
