import { dayNumber, yearFraction } from '../calendar.js';
import type { WeatherDay } from '../snapshot.js';
import type { Increments } from './increments.js';
import type { SeasonClock } from './season-clock.js';

/** Warmth of the last fortnight, rain of the last month, rain of the day: each against what is usual for the date. */
const COVARIATES = 3;
const WARM_DAYS = 14;
const WET_DAYS = 30;
/** Days to each side that make up "usual for the date". */
const USUAL_HALF_WIDTH = 20;
/** With fewer observed days nothing can be told from them. */
const LEAST_DAYS = 180;
/** Days after which what is special about the present growth has faded to 1/e. Own choice. */
const FADES_DAYS = 15;
/** Standard deviation of a coefficient before any data: one standard deviation of weather moves hours by a quarter. */
const PRIOR_SD = 0.25;
const STRONGEST = 1.2;
const ROUNDS = 6;

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

/** How the hours of a climate answer to its weather: factor on the season's rate, 1 when the weather is as usual. */
export class WeatherEffect {
  constructor(
    readonly series: WeatherSeries,
    readonly coefficients: readonly number[],
  ) {}

  /** exp(Σ β_k x_k) on an observed day. */
  factor(day: number): number {
    return Math.exp(this.#strength(day));
  }

  /**
   * Factor foreseen for a day when the weather is known up to `knownUntil` only: what is special fades,
   * exp(Σ β_k x_k · e^(−days since/15)); rain on the day itself cannot be foreseen.
   */
  foreseen(day: number, knownUntil: number): number {
    const known = Math.min(knownUntil, this.series.to);
    if (day <= known) return this.factor(day);
    const fade = Math.exp(-(day - known) / FADES_DAYS);
    return Math.exp(fade * this.#strength(known, COVARIATES - 1));
  }

  #strength(day: number, count = COVARIATES): number {
    let sum = 0;
    for (let k = 0; k < count; k++) sum += this.coefficients[k]! * this.series.value(day, k);
    return Math.min(STRONGEST, Math.max(-STRONGEST, sum));
  }
}

/**
 * Fits β to the hours between readings, μ_i = ℓ_m Σ_d s_d exp(β·x_d), by penalised quasi-likelihood: Newton steps on
 *   Σ_i (y_i/μ_i − 1) ∂μ_i/φ − β/σ²,
 * where the information of a calendar month counts as one observation per site-like bundle of machines, since all of them
 * stood under the same sky: the score's variance is taken between months.
 *
 * @returns null when there is no weather, or nothing to learn from
 * @source quasi-likelihood with cluster-robust variance (McCullagh & Nelder; Liang & Zeger 1986), from memory
 */
export function learnWeather(
  series: WeatherSeries | null,
  increments: Increments,
  members: readonly number[],
  clock: SeasonClock,
): WeatherEffect | null {
  if (series === null) return null;
  const rows = rowsOf(series, increments, members, clock);
  if (rows.length < 50) return null;
  const beta = new Array<number>(COVARIATES).fill(0);
  for (let round = 0; round < ROUNDS; round++) {
    const { gradient, information, between } = scores(rows, series, clock, beta);
    // spread of the score between months against what independent gaps would give
    const inflation = COVARIATES_INDEX.map((k) =>
      Math.max(1, between[k * COVARIATES + k]! / information[k * COVARIATES + k]!),
    );
    const matrix = Array.from({ length: COVARIATES }, (_, a) =>
      COVARIATES_INDEX.map(
        (b) =>
          information[a * COVARIATES + b]! / Math.sqrt(inflation[a]! * inflation[b]!) +
          (a === b ? 1 / PRIOR_SD ** 2 : 0),
      ),
    );
    const step = solved(
      matrix,
      gradient.map((g, k) => g / inflation[k]! - beta[k]! / PRIOR_SD ** 2),
    );
    for (let k = 0; k < COVARIATES; k++) beta[k] = Math.min(1, Math.max(-1, beta[k]! + step[k]!));
  }
  return new WeatherEffect(series, beta);
}

const COVARIATES_INDEX = [0, 1, 2] as const;

interface Row {
  from: number;
  to: number;
  hours: number;
  level: number;
  month: number;
}

/** Gaps of at most five weeks under observed weather, in the growing season, each with its machine's mean level. */
function rowsOf(series: WeatherSeries, increments: Increments, members: readonly number[], clock: SeasonClock): Row[] {
  const rows: Row[] = [];
  for (const m of members) {
    let hours = 0;
    let days = 0;
    for (let i = increments.first[m]!; i < increments.first[m + 1]!; i++) {
      hours += increments.hours[i]!;
      days += clock.at(increments.to[i]!) - clock.at(increments.from[i]!);
    }
    if (hours <= 0 || days <= 10) continue;
    const level = hours / days;
    for (let i = increments.first[m]!; i < increments.first[m + 1]!; i++) {
      const from = increments.from[i]!;
      const to = increments.to[i]!;
      if (to - from > 35 || from < series.from || to > series.to + 1) continue;
      const expected = level * (clock.at(to) - clock.at(from));
      if (expected < 0.5) continue;
      rows.push({ from, to, hours: increments.hours[i]!, level, month: Math.floor(to / 30) });
    }
  }
  return rows;
}

function scores(rows: readonly Row[], series: WeatherSeries, clock: SeasonClock, beta: readonly number[]) {
  const gradient = new Array<number>(COVARIATES).fill(0);
  const information = new Float64Array(COVARIATES * COVARIATES);
  const months = new Map<number, number[]>();
  let pearson = 0;
  const slopes = rows.map(() => new Float64Array(COVARIATES));
  const means = rows.map((row, r) => {
    let mean = 0;
    const slope = slopes[r]!;
    for (let day = Math.floor(row.from); day < row.to; day++) {
      const share = Math.min(row.to, day + 1) - Math.max(row.from, day);
      let strength = 0;
      for (let k = 0; k < COVARIATES; k++) strength += beta[k]! * series.value(day, k);
      const part = row.level * clock.rate(day) * share * Math.exp(Math.min(STRONGEST, Math.max(-STRONGEST, strength)));
      mean += part;
      for (let k = 0; k < COVARIATES; k++) slope[k]! += part * series.value(day, k);
    }
    return Math.max(0.05, mean);
  });
  rows.forEach((row, r) => {
    pearson += Math.min(9 * means[r]!, (row.hours - means[r]!) ** 2 / means[r]!);
  });
  const phi = Math.max(0.2, pearson / rows.length);
  rows.forEach((row, r) => {
    const residual = (row.hours / means[r]! - 1) / phi;
    const month = months.get(row.month) ?? new Array<number>(COVARIATES).fill(0);
    months.set(row.month, month);
    for (let a = 0; a < COVARIATES; a++) {
      const score = residual * slopes[r]![a]!;
      gradient[a]! += score;
      month[a]! += score;
      for (let b = 0; b < COVARIATES; b++)
        information[a * COVARIATES + b]! += (slopes[r]![a]! * slopes[r]![b]!) / (means[r]! * phi);
    }
  });
  const between = new Float64Array(COVARIATES * COVARIATES);
  for (const month of months.values()) {
    for (let a = 0; a < COVARIATES; a++) between[a * COVARIATES + a]! += (month[a]! - gradient[a]! / months.size) ** 2;
  }
  return { gradient, information, between };
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

/** Solves a small symmetric positive definite system by elimination. */
function solved(matrix: number[][], right: number[]): number[] {
  const n = right.length;
  const a = matrix.map((row, k) => [...row, right[k]!]);
  for (let k = 0; k < n; k++) {
    for (let r = k + 1; r < n; r++) {
      const share = a[r]![k]! / a[k]![k]!;
      for (let c = k; c <= n; c++) a[r]![c]! -= share * a[k]![c]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let k = n - 1; k >= 0; k--) {
    let sum = a[k]![n]!;
    for (let c = k + 1; c < n; c++) sum -= a[k]![c]! * x[c]!;
    x[k] = sum / a[k]![k]!;
  }
  return x;
}
