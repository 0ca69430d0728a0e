import { dateOfDay, dayNumber } from '../calendar.js';
import { type Dispersion, statedProbability, usedProbability, varianceOf } from './dispersion.js';
import type { MachineUsage, UsageModel } from './fit-usage.js';
import { unitGammaProbability, unitGammaQuantile } from './gamma-table.js';
import { workMoment } from './increments.js';

/** Daily quantiles of lifetime hours, one entry per day from the day after the forecast origin. */
export interface UsageQuantiles {
  readonly p10: number[];
  readonly p25: number[];
  readonly p50: number[];
  readonly p75: number[];
  readonly p90: number[];
}

/** Predictive distribution of one machine's lifetime hours. */
export class MachineForecast {
  readonly machineId: string;
  /** Median lifetime hours at the end of the forecast origin's day. */
  readonly lifetimeHoursNow: number;
  /** Expected hours over the next 28 days, per week. */
  readonly hoursPerWeek: number;
  /** What the forecast rests on. */
  readonly basis: 'readings' | 'one-reading' | 'no-readings';

  constructor(
    readonly usage: MachineUsage,
    readonly originDay: number,
    readonly horizonDays: number,
    readonly dispersion: Dispersion,
  ) {
    this.machineId = usage.machine.id;
    this.basis = usage.line.length > 1 ? 'readings' : usage.line.length === 1 ? 'one-reading' : 'no-readings';
    this.lifetimeHoursNow = this.lifetimeHours(originDay, 0.5);
    const { clock, pace } = usage;
    this.hoursPerWeek = (pace.hoursPerSeasonDay * (clock.at(originDay + 29) - clock.at(originDay + 1))) / 4;
  }

  /** End of a day, as far from the last believed reading as work gets until then. */
  #worked(day: number): number {
    const { knownAt, week } = this.usage;
    return week === null ? day + 1 : week.even(knownAt, day + 1);
  }

  /** Hours expected from the last believed reading to the end of a day. */
  #expected(day: number): number {
    const { clock, knownAt, pace } = this.usage;
    if (day + 1 <= knownAt) return 0;
    return pace.hoursPerSeasonDay * Math.max(0, clock.at(this.#worked(day)) - clock.at(knownAt));
  }

  /** Shape of the gamma law, k = μ²/V. */
  #shape(expected: number, day: number): number {
    const { clock, knownAt, pace } = this.usage;
    const seasonHours = pace.hoursPerSeasonDay * Math.max(0, clock.doubtBetween(knownAt, this.#worked(day)));
    return expected ** 2 / varianceOf(expected, pace.evidenceHours, seasonHours, this.dispersion);
  }

  /**
   * Lifetime hours that are exceeded by the end of a day (day number, not before the last reading) with chance 1 − p.
   * Mean μ and variance V(μ) of a gamma law: k = μ²/V; rises with p and, since both k and V/μ rise with μ, with the day.
   * Never more than 24 h a day.
   */
  lifetimeHours(day: number, p: number): number {
    const grown = this.#grown(day, p);
    return this.usage.knownHours + Math.min(grown, 24 * Math.max(0, day + 1 - this.usage.knownAt));
  }

  #grown(day: number, p: number): number {
    const expected = this.#expected(day);
    if (expected <= 1e-9) return 0;
    const u = usedProbability(p, expected, this.dispersion);
    return expected * unitGammaQuantile(this.#shape(expected, day), u);
  }

  /** First passage: chance that `hours` of lifetime have been reached by the end of a day. */
  probabilityReached(hours: number, day: number): number {
    const wanted = hours - this.usage.knownHours;
    if (wanted <= 0) return 1;
    if (wanted > 24 * (day + 1 - this.usage.knownAt)) return 0;
    const expected = this.#expected(day);
    if (expected <= 1e-9) return 0;
    const below = unitGammaProbability(this.#shape(expected, day), wanted / expected);
    return 1 - statedProbability(below, expected, this.dispersion);
  }

  /**
   * First passage: day number by whose end `hours` of lifetime are reached with chance p; null when not within two
   * years of the forecast origin. Marks already passed give the day of the last reading or, if known, when they were.
   */
  dayReaching(hours: number, p: number): number | null {
    const { usage } = this;
    if (hours <= usage.knownHours) return Math.min(this.originDay, dayWhenPassed(usage, hours));
    const last = this.originDay + 730;
    const reached = (day: number) =>
      usage.knownHours + Math.min(this.#grown(day, 1 - p), 24 * (day + 1 - usage.knownAt)) >= hours;
    if (!reached(last)) return null;
    let low = Math.floor(usage.knownAt);
    let high = last;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (reached(middle)) high = middle;
      else low = middle + 1;
    }
    return low;
  }

  /** Same as `dayReaching`, as dates, for P10, P50 and P90. */
  datesReaching(hours: number): { p10: string | null; p50: string | null; p90: string | null } {
    const date = (p: number) => {
      const day = this.dayReaching(hours, p);
      return day === null ? null : dateOfDay(day);
    };
    return { p10: date(0.1), p50: date(0.5), p90: date(0.9) };
  }

  quantiles(): UsageQuantiles {
    const along = (p: number) => {
      const path: number[] = new Array(this.horizonDays);
      let floor = this.usage.knownHours;
      for (let d = 0; d < this.horizonDays; d++) {
        const day = this.originDay + 1 + d;
        const grown = this.#grown(day, p);
        floor = Math.max(
          floor,
          this.usage.knownHours + Math.min(grown, 24 * Math.max(0, day + 1 - this.usage.knownAt)),
        );
        path[d] = floor;
      }
      return path;
    };
    return { p10: along(0.1), p25: along(0.25), p50: along(0.5), p75: along(0.75), p90: along(0.9) };
  }

  /** Best estimate of lifetime hours at the end of a day: between readings along the season, ahead the median. */
  lifetimeHoursAt(day: number): number {
    const { line, clock } = this.usage;
    const first = line[0];
    if (first === undefined || day + 1 > this.usage.knownAt) return this.lifetimeHours(day, 0.5);
    const at = day + 1;
    if (at <= workMoment(first.moment)) {
      const back = this.usage.pace.hoursPerSeasonDay * (clock.at(workMoment(first.moment)) - clock.at(at));
      return Math.max(0, first.lifetimeHours - back);
    }
    let low = 0;
    let high = line.length - 1;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (workMoment(line[middle]!.moment) <= at) low = middle;
      else high = middle;
    }
    const a = line[low]!;
    const b = line[high]!;
    const from = clock.at(workMoment(a.moment));
    const width = clock.at(workMoment(b.moment)) - from;
    const share = width > 1e-9 ? Math.min(1, Math.max(0, (clock.at(at) - from) / width)) : 1;
    return a.lifetimeHours + share * (b.lifetimeHours - a.lifetimeHours);
  }
}

function dayWhenPassed(usage: MachineUsage, hours: number): number {
  const { line } = usage;
  let low = 0;
  let high = line.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (line[middle]!.lifetimeHours >= hours) high = middle;
    else low = middle + 1;
  }
  return Math.floor(line[low]?.moment ?? usage.knownAt);
}

export interface UsageForecast {
  readonly model: UsageModel;
  readonly machines: ReadonlyMap<string, MachineForecast>;
}

/** The predictive distribution of every machine in the model; distributions are closed forms, nothing is sampled. */
export function forecastUsage(model: UsageModel): UsageForecast {
  const machines = new Map<string, MachineForecast>();
  for (const [id, usage] of model.machines) {
    machines.set(id, new MachineForecast(usage, model.originDay, model.horizonDays, model.dispersion));
  }
  return { model, machines };
}

/** Best estimate of a machine's lifetime hours at the end of a local date, past or ahead; null for an unknown machine. */
export function lifetimeHoursAt(forecast: UsageForecast, machineId: string, date: string): number | null {
  return forecast.machines.get(machineId)?.lifetimeHoursAt(dayNumber(date)) ?? null;
}
