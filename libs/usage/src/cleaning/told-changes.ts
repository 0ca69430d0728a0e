import { dayNumber, momentOf } from '../calendar.js';
import type { MeterChange, Reading } from '../snapshot.js';

/** A reading put in its place on the time line. */
export interface PlacedReading {
  readonly reading: Reading;
  /** Fractional days since 1970. */
  readonly moment: number;
  readonly hours: number;
  /** How many told meter changes came before it. */
  readonly meter: number;
}

/** Days by which a told change may be dated wrong, when the reading itself shows which meter it came from. */
const DATE_SLACK_DAYS = 3;

/**
 * Sorts a machine's readings by wall clock (then hours, then id, so that arrival order cannot matter) and says from
 * which of its meters each one came.
 */
export function placeReadings(readings: readonly Reading[], changes: readonly MeterChange[]): PlacedReading[] {
  return readings
    .map((reading) => {
      const moment = momentOf(reading.readAt);
      return { reading, moment, hours: reading.hours, meter: meterOf(moment, reading.hours, changes) };
    })
    .sort((a, b) => a.moment - b.moment || a.hours - b.hours || (a.reading.id < b.reading.id ? -1 : 1))
    .map((each, index, all) => {
      const earlier = all[index - 1];
      return earlier && earlier.meter > each.meter ? { ...each, meter: earlier.meter } : each;
    });
}

function meterOf(moment: number, hours: number, changes: readonly MeterChange[]): number {
  let meter = 0;
  for (const change of changes) {
    const late = moment - dayNumber(change.changedAt);
    const looksNew = Math.abs(hours - change.newHours) < Math.abs(hours - change.oldHours);
    const near = late > -DATE_SLACK_DAYS && late < 1 + DATE_SLACK_DAYS;
    if (near ? looksNew : late > 0) meter++;
    else break;
  }
  return meter;
}

/**
 * Hours run between two readings, across the told changes between them:
 * (O₁ − h_from)⁺ + Σ (O_{k+1} − N_k)⁺ + h_to − N_last,  O = last of an old meter, N = first of its successor.
 * Negative when the later reading is the smaller one.
 */
export function hoursBetween(from: PlacedReading, to: PlacedReading, changes: readonly MeterChange[]): number {
  if (from.meter === to.meter) return to.hours - from.hours;
  let total = 0;
  let shown = from.hours;
  for (let k = from.meter; k < to.meter; k++) {
    const change = changes[k]!;
    total += Math.max(0, change.oldHours - shown);
    shown = change.newHours;
  }
  return total + to.hours - shown;
}

/** Lifetime hours at the first reading: what its meter shows plus what earlier meters had counted. */
export function hoursAtFirst(first: PlacedReading, changes: readonly MeterChange[]): number {
  let before = 0;
  for (const change of changes.slice(0, first.meter)) before += change.oldHours - change.newHours;
  return Math.max(0, before + first.hours);
}
