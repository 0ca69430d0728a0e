import { addDays, dayNumber } from '../local-date.js';

interface Limit {
  readonly limitOn: string | null;
  readonly limitHours: number | null;
}

/** A machine's lifetime hours at the end of each day after `asOf`, as quantiles. */
export interface HoursAhead {
  readonly asOf: string;
  readonly lifetimeHoursNow: number;
  readonly p10: readonly number[];
  readonly p50: readonly number[];
  readonly p90: readonly number[];
}

/** Until when a stopgap is good: the date told, or the early end of when its hours run out, whichever comes first. */
export function stopgapLimit({ limitOn, limitHours }: Limit, dueP10: string | null): string | null {
  const byHours = limitHours === null ? null : dueP10;
  return limitOn === null || (byHours !== null && byHours < limitOn) ? byHours : limitOn;
}

/**
 * When a limit set on a day is reached: the early end, the middle and the late end.
 *
 * @param usage null = nothing is forecast of the machine
 * @returns null = not within what is forecast
 */
export function limitAhead(limit: Limit, setOn: string, usage: HoursAhead | null) {
  const from = usage === null ? null : hoursAt(usage, setOn);
  const hours = from === null || limit.limitHours === null ? null : from + limit.limitHours;
  const end = (curve: readonly number[] = []) => {
    const day = hours === null ? -1 : curve.findIndex((reached) => reached >= hours);
    return stopgapLimit(limit, day < 0 ? null : addDays(usage!.asOf, day + 1));
  };
  // What is reached early is reached on the course of most hours.
  return { p10: end(usage?.p90), p50: end(usage?.p50), p90: end(usage?.p10) };
}

/** Most likely lifetime hours at the end of a day that is not before the forecast; null = it does not reach so far. */
function hoursAt({ asOf, lifetimeHoursNow, p50 }: HoursAhead, date: string): number | null {
  const ahead = dayNumber(date) - dayNumber(asOf);
  if (ahead === 0) return lifetimeHoursNow;
  return p50[ahead - 1] ?? null;
}
