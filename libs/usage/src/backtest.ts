import { BASELINES, type Baselines, baselinesOf } from './baselines.js';
import { dateOfDay, dayNumber } from './calendar.js';
import { fitUsage } from './model/fit-usage.js';
import { forecastUsage, type MachineForecast } from './model/forecast-usage.js';
import { workMoment } from './model/increments.js';
import { pinballLoss } from './scores/pinball.js';
import type { UsageSnapshot } from './snapshot.js';

/** How good the forecasts were, for one distance ahead. */
export interface BacktestRow {
  readonly daysAhead: number;
  /** Outcomes judged; 0 leaves the other figures null. */
  readonly judged: number;
  /** Share of outcomes inside the 50, 80 and 95 % intervals. */
  readonly coverage50: number | null;
  readonly coverage80: number | null;
  readonly coverage95: number | null;
  /** Mean pinball loss over P10, P25, P50, P75, P90; hours. */
  readonly pinballHours: number | null;
  /** The same loss of three rules of thumb on the same outcomes; hours. */
  readonly baselinePinballHours: Baselines | null;
  /** Mean of outcome minus P50; hours. */
  readonly biasHours: number | null;
}

export interface BacktestOptions {
  readonly daysAhead?: readonly number[];
  /** Forecast origins, evenly spaced back from `asOf`. */
  readonly origins?: number;
  readonly daysBetweenOrigins?: number;
  /** Machines judged at most: whole sites, evenly spread over the list of sites. */
  readonly machines?: number;
}

const PROBABILITIES = [0.1, 0.25, 0.5, 0.75, 0.9];
/** A reading so near to the day asked about stands for it, as share of the distance. */
const NEAR = 0.25;
/** Meters show tenths of an hour: an outcome so little outside an interval is inside. */
const HALF_A_TENTH = 0.05;
/** Intervals narrower than this say no more than "it stands still": nothing is judged there. Hours. */
const STANDS_STILL = 0.2;

/**
 * Rolling-origin back-test on the readings themselves: at each past origin the model is fitted on what had been read by
 * then and judged against later believed readings, each at its own day. No truth is needed.
 * Readings are believed or not on all readings up to `asOf`; only the forecast is blind to what came later. Forecasts
 * of a machine in its dormant season, whose 80 % interval is narrower than 0.2 h, are not counted as successes.
 */
export function backtest(snapshot: UsageSnapshot, options: BacktestOptions = {}): BacktestRow[] {
  const { daysAhead = [7, 14, 30, 60], origins = 6, daysBetweenOrigins = 28, machines = 1500 } = options;
  const asOf = dayNumber(snapshot.asOf);
  const sample = wholeSites(snapshot, machines);
  const now = fitUsage(sample);
  const tallies = daysAhead.map((ahead) => new Tally(ahead));
  for (let o = 1; o <= origins; o++) {
    const origin = asOf - o * daysBetweenOrigins;
    const date = dateOfDay(origin);
    const readings = sample.readings.filter((each) => each.readAt.slice(0, 10) <= date);
    if (readings.length === 0) break;
    const meterChanges = sample.meterChanges.filter((each) => each.changedAt <= date);
    const weather = sample.weather?.filter((each) => each.date <= date);
    const then = forecastUsage(
      fitUsage({ ...sample, asOf: date, readings, meterChanges, ...(weather && { weather }) }),
    );
    for (const [id, forecast] of then.machines) {
      const known = forecast.usage.line.at(-1);
      const line = now.machines.get(id)!.line;
      const sameNow = line.find((each) => each.readingId === known?.readingId);
      if (known === undefined || sameNow === undefined) continue;
      for (const tally of tallies) {
        let outcome: (typeof line)[number] | null = null;
        for (const each of line) {
          const off = Math.abs(each.moment - origin - 1 - tally.ahead);
          if (each.moment < origin + 1 || off > NEAR * tally.ahead) continue;
          if (outcome === null || off < Math.abs(outcome.moment - origin - 1 - tally.ahead)) outcome = each;
        }
        if (outcome === null) continue;
        const hours = known.lifetimeHours + outcome.lifetimeHours - sameNow.lifetimeHours;
        tally.judge(forecast, Math.ceil(workMoment(outcome.moment)) - 1, hours);
      }
    }
  }
  return tallies.map((tally) => tally.row());
}

/** Whole sites, evenly spread, until about so many machines are reached: machines learn from their site. */
function wholeSites(snapshot: UsageSnapshot, most: number): UsageSnapshot {
  if (snapshot.machines.length <= most) return snapshot;
  const sites = [...new Set(snapshot.machines.map((each) => each.siteId))].sort();
  const kept = Math.max(1, Math.floor((sites.length * most) / snapshot.machines.length));
  const chosen = new Set(Array.from({ length: kept }, (_, k) => sites[Math.floor((k * sites.length) / kept)]!));
  const machines = snapshot.machines.filter((each) => chosen.has(each.siteId));
  const ids = new Set(machines.map((each) => each.id));
  return {
    ...snapshot,
    machines,
    readings: snapshot.readings.filter((each) => ids.has(each.machineId)),
    meterChanges: snapshot.meterChanges.filter((each) => ids.has(each.machineId)),
  };
}

class Tally {
  #judged = 0;
  readonly #inside = { 50: 0, 80: 0, 95: 0 };
  #pinball = 0;
  readonly #baselines = { lastTwo: 0, wholeLife: 0, lastYear: 0 };
  #bias = 0;

  constructor(readonly ahead: number) {}

  judge(forecast: MachineForecast, day: number, hours: number): void {
    const q = PROBABILITIES.map((p) => forecast.lifetimeHours(day, p));
    if (q[4]! - q[0]! < STANDS_STILL) return;
    this.#judged++;
    const isIn = (low: number, high: number) => hours >= low - HALF_A_TENTH && hours <= high + HALF_A_TENTH;
    if (isIn(q[1]!, q[3]!)) this.#inside[50]++;
    if (isIn(q[0]!, q[4]!)) this.#inside[80]++;
    if (isIn(forecast.lifetimeHours(day, 0.025), forecast.lifetimeHours(day, 0.975))) this.#inside[95]++;
    this.#bias += hours - q[2]!;
    const loss = (quantile: (k: number) => number) =>
      PROBABILITIES.reduce((sum, p, k) => sum + pinballLoss(hours, quantile(k), p), 0) / PROBABILITIES.length;
    this.#pinball += loss((k) => q[k]!);
    const rules = baselinesOf(forecast, day)!;
    for (const name of BASELINES) this.#baselines[name] += loss(() => rules[name]);
  }

  row(): BacktestRow {
    const mean = (sum: number) => (this.#judged === 0 ? null : sum / this.#judged);
    const { lastTwo, wholeLife, lastYear } = this.#baselines;
    const share = 1 / this.#judged;
    return {
      daysAhead: this.ahead,
      judged: this.#judged,
      coverage50: mean(this.#inside[50]),
      coverage80: mean(this.#inside[80]),
      coverage95: mean(this.#inside[95]),
      pinballHours: mean(this.#pinball),
      baselinePinballHours:
        this.#judged === 0
          ? null
          : { lastTwo: lastTwo * share, wholeLife: wholeLife * share, lastYear: lastYear * share },
      biasHours: mean(this.#bias),
    };
  }
}
