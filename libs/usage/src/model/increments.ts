import type { LifetimeReading } from '../cleaning/clean-readings.js';

/** Wall clock between which machines work; the day's hours are spread evenly over it, as share of the day. */
const WORK_STARTS = 0.25;
const WORK_ENDS = 0.75;

/**
 * Hours run between neighbouring believed readings, all machines in one set of columns; readings within one day are
 * joined, so that a gap is never shorter than half a day.
 */
export interface Increments {
  readonly machine: Int32Array;
  /** Start and end on the working-time scale: whole days since 1970 plus the share of that day's work done. */
  readonly from: Float64Array;
  readonly to: Float64Array;
  /** Hours run. */
  readonly hours: Float64Array;
  /** Increments of machine m are those from `first[m]` up to but not including `first[m + 1]`, in time order. */
  readonly first: Int32Array;
}

/** Share of work done by a moment: day number plus 0 before 06:00, 1 after 18:00, even in between. */
export function workMoment(moment: number): number {
  const day = Math.floor(moment);
  return day + Math.min(1, Math.max(0, (moment - day - WORK_STARTS) / (WORK_ENDS - WORK_STARTS)));
}

export function incrementsOf(lines: readonly (readonly LifetimeReading[])[]): Increments {
  const machine: number[] = [];
  const from: number[] = [];
  const to: number[] = [];
  const hours: number[] = [];
  const first = new Int32Array(lines.length + 1);
  lines.forEach((line, m) => {
    first[m] = machine.length;
    let start = line[0];
    for (const reading of line) {
      if (start === undefined || workMoment(reading.moment) - workMoment(start.moment) < 0.5) continue;
      machine.push(m);
      from.push(workMoment(start.moment));
      to.push(workMoment(reading.moment));
      hours.push(Math.max(0, reading.lifetimeHours - start.lifetimeHours));
      start = reading;
    }
  });
  first[lines.length] = machine.length;
  return {
    machine: Int32Array.from(machine),
    from: Float64Array.from(from),
    to: Float64Array.from(to),
    hours: Float64Array.from(hours),
    first,
  };
}
