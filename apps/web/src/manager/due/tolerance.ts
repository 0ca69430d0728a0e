import type { DueItem, ServiceItem } from '../../data/types.js';
import { daysBetween } from '../../words/local-date.js';

/** How many days before and after its middle date an item may be done. */
export interface Tolerance {
  readonly before: number;
  readonly after: number;
}

const MOST_DAYS = 366;

/**
 * Hours become days by the machine's pace. Of a mark that is passed already, what is left of the hours after it counts
 * from the hours of now: the day it was passed is known only from reading to reading.
 *
 * @param asOf day of the forecast
 */
export function toleranceDays(items: readonly ServiceItem[], asOf: string): (due: DueItem) => Tolerance | null {
  const itemOf = new Map(items.map((item) => [`${item.machineClass}/${item.code}`, item]));
  return (due) => {
    const item = itemOf.get(`${due.machineClass}/${due.code}`);
    if (item === undefined) return null;
    const { decidedBy, hoursPerWeekNow, dueAtHours, lifetimeHoursNow } = (due.why ?? {}) as {
      readonly decidedBy?: string;
      readonly hoursPerWeekNow?: number;
      readonly dueAtHours?: number | null;
      readonly lifetimeHoursNow?: number;
    };
    if (decidedBy === 'days') return { before: item.toleranceDays, after: item.toleranceDays };
    const pace = Number(hoursPerWeekNow ?? 0) / 7;
    if (pace <= 0) return null;
    const hours = Number(item.toleranceHours);
    const before = Math.min(MOST_DAYS, hours / pace);
    const isPassed = due.p50 !== null && due.p50 <= asOf && dueAtHours != null && lifetimeHoursNow !== undefined;
    if (!isPassed) return { before, after: before };
    const left = (dueAtHours + hours - lifetimeHoursNow) / pace;
    return { before, after: Math.min(MOST_DAYS, Math.max(0, daysBetween(due.p50!, asOf) + left)) };
  };
}
