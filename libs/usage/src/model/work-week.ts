import { weekdayOf } from '../calendar.js';
import type { Increments } from './increments.js';

/** Increments of a day or so that a machine needs before its weekdays are told apart. Own choice. */
const LEAST_DAYS = 60;
const SHORTEST = 0.7;
const LONGEST = 1.3;
/** Hours of a machine's own that weigh as much as the week of its climate's daily read machines, and of those against even days. */
const CLIMATE_HOURS = 60;
const EVEN_HOURS = 40;

/**
 * On which weekdays a machine works, for machines read daily: whole weeks pass as they are, days within a week by their share.
 * A moment's worked time is W(t) = Σ of the weights of the days gone by, mean 1 a day; it rises with t, so that nothing forecast
 * along it falls.
 */
export class WorkWeek {
  readonly #before: Float64Array;

  /** @param weights Monday to Sunday, none negative, sum 7 */
  constructor(readonly weights: readonly number[]) {
    this.#before = new Float64Array(8);
    weights.forEach((weight, k) => {
      this.#before[k + 1] = this.#before[k]! + weight;
    });
  }

  /** The moment as far past `from` as work gets from there to `to`, on a calendar of even days. */
  even(from: number, to: number): number {
    return from + this.#worked(to) - this.#worked(from);
  }

  #worked(moment: number): number {
    const day = Math.floor(moment);
    const weekday = weekdayOf(day);
    return day - weekday + this.#before[weekday]! + (moment - day) * this.weights[weekday]!;
  }
}

/**
 * Weights of each machine's weekdays from hours run between readings about a day apart, shared out over the days that they
 * touch: w = 7·(own hours + K·climate's share)/(all own hours + K).
 *
 * @returns one entry per machine; null where readings are not daily
 */
export function workWeeks(increments: Increments, groupOf: Int32Array): (WorkWeek | null)[] {
  const machines = increments.first.length - 1;
  const own = Array.from({ length: machines }, (_, m) => hoursByWeekday(increments, m));
  const climates = new Map<number, Float64Array<ArrayBuffer>>();
  own.forEach((hours, m) => {
    if (hours === null) return;
    const sum = climates.get(groupOf[m]!) ?? new Float64Array(7).fill(EVEN_HOURS / 7);
    climates.set(groupOf[m]!, addTo(sum, hours));
  });
  return own.map((hours, m) => {
    if (hours === null) return null;
    const climate = climates.get(groupOf[m]!)!;
    const all = total(climate);
    const mixed = hours.map((each, k) => each + (CLIMATE_HOURS * climate[k]!) / all);
    const scale = 7 / total(mixed);
    return new WorkWeek(Array.from(mixed, (each) => each * scale));
  });
}

function hoursByWeekday(increments: Increments, m: number): Float64Array | null {
  const hours = new Float64Array(7);
  let seen = 0;
  for (let i = increments.first[m]!; i < increments.first[m + 1]!; i++) {
    const from = increments.from[i]!;
    const to = increments.to[i]!;
    if (to - from < SHORTEST || to - from > LONGEST) continue;
    seen++;
    for (let day = Math.floor(from); day < to; day++) {
      const share = (Math.min(to, day + 1) - Math.max(from, day)) / (to - from);
      const k = weekdayOf(day);
      hours[k] = hours[k]! + share * increments.hours[i]!;
    }
  }
  return seen < LEAST_DAYS || 2 * seen < increments.first[m + 1]! - increments.first[m]! ? null : hours;
}

function addTo(sum: Float64Array<ArrayBuffer>, more: Float64Array): Float64Array<ArrayBuffer> {
  return sum.map((each, k) => each + more[k]!);
}

function total(values: Float64Array): number {
  return values.reduce((sum, each) => sum + each, 0);
}
