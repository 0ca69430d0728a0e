import type { Increments } from './increments.js';
import type { SeasonClock } from './season-clock.js';
import { strengthOn, WeatherEffect } from './weather-effect.js';
import { COVARIATES, type WeatherSeries } from './weather-series.js';

/** Standard deviation of a coefficient before any data: one standard deviation of weather moves hours by a quarter. */
const PRIOR_SD = 0.25;
const ROUNDS = 6;

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
      const part = row.level * clock.rate(day) * share * Math.exp(strengthOn(series, beta, day));
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
