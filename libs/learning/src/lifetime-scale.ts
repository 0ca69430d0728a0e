import type { Register } from '@deckround/register';
import { cleanReadings, dayNumber, type LifetimeReading } from '@deckround/usage';

/** Lifetime hours of one machine over time, from its believed readings. */
export class LifetimeScale {
  #last: { readonly day: number; readonly hours: number } | null;

  constructor(private readonly line: readonly LifetimeReading[]) {
    const last = line.at(-1);
    this.#last = last ? { day: Math.floor(last.moment), hours: last.lifetimeHours } : null;
  }

  /** First and last moment at which hours are known; null without a reading. */
  get first(): { readonly day: number; readonly hours: number } | null {
    const first = this.line[0];
    return first ? { day: Math.floor(first.moment), hours: first.lifetimeHours } : null;
  }

  get last(): { readonly day: number; readonly hours: number } | null {
    return this.#last;
  }

  /** Work done at known hours after the last reading shows that the machine ran on. */
  extendTo(date: string, hours: number): void {
    if (this.#last && hours > this.#last.hours) this.#last = { day: dayNumber(date), hours };
  }

  /**
   * Lifetime hours when work was done: what the meter showed then, moved onto the lifetime scale by the nearest reading
   * (across meter changes), if that is near what the readings say of that day; else what they say.
   */
  at(date: string, meterHours: number | null): number | null {
    const day = dayNumber(date);
    const estimate = this.interpolated(day + 0.5);
    if (estimate === null) return meterHours;
    if (meterHours === null) return estimate;
    let best = estimate;
    let miss = 100 + 0.1 * estimate;
    const after = this.#firstAfter(day + 0.5);
    for (const near of [this.line[after - 1], this.line[after]]) {
      if (!near) continue;
      const stated = meterHours + near.lifetimeHours - near.meterHours;
      if (Math.abs(stated - estimate) < miss) {
        best = stated;
        miss = Math.abs(stated - estimate);
      }
    }
    return Math.max(0, best);
  }

  /** Straight between readings, level outside them. */
  interpolated(moment: number): number | null {
    const after = this.#firstAfter(moment);
    const [a, b] = [this.line[after - 1], this.line[after]];
    if (!a || !b) return (a ?? b)?.lifetimeHours ?? null;
    const share = (moment - a.moment) / Math.max(1e-9, b.moment - a.moment);
    return a.lifetimeHours + share * (b.lifetimeHours - a.lifetimeHours);
  }

  #firstAfter(moment: number): number {
    let [low, high] = [0, this.line.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.line[middle]!.moment < moment) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

/** One scale per machine; readings after the end of `asOf` are not used. */
export function lifetimeScales(register: Register, asOf: string): Map<string, LifetimeScale> {
  const { believed } = cleanReadings(register.readings, register.meterChanges, { asOf, machines: register.machines });
  const scales = new Map(
    register.machines.map((machine) => [machine.id, new LifetimeScale(believed.get(machine.id) ?? [])]),
  );
  for (const { machineId, doneOn, meterHours } of register.completions) {
    if (doneOn > asOf || meterHours === null) continue;
    const scale = scales.get(machineId);
    const hours = scale?.at(doneOn, meterHours) ?? null;
    if (hours !== null) scale!.extendTo(doneOn, hours);
  }
  return scales;
}
