const DAY_MS = 86_400_000;

/** Days later (or earlier) than a local date `YYYY-MM-DD`. */
export function addDays(date: string, days: number): string {
  return new Date(Date.parse(`${date}T00:00:00Z`) + days * DAY_MS).toISOString().slice(0, 10);
}

export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS);
}

/** 1 = Monday … 7 = Sunday (ISO 8601). */
export function weekdayOf(date: string): number {
  return new Date(`${date}T00:00:00Z`).getUTCDay() || 7;
}

export function mondayAfter(date: string): string {
  return addDays(date, 8 - weekdayOf(date));
}

/** Minutes since midnight of an instant on the wall clock of a zone, counted from the start of `date` there. */
export function minutesInto(date: string, instant: string, timeZone: string): number {
  return (wallClockMs(Date.parse(instant), timeZone) - Date.parse(`${date}T00:00:00Z`)) / 60_000;
}

/**
 * Days later (or earlier) at the same time on the wall clock of a zone, whatever summer time does in between. A time
 * that the clock leaves out on that day is taken as so many times 24 hours later.
 */
export function sameTimeAfter(instant: Date, days: number, timeZone: string): Date {
  const later = instant.getTime() + days * DAY_MS;
  const wanted = wallClockMs(instant.getTime(), timeZone) + days * DAY_MS;
  const corrected = later + wanted - wallClockMs(later, timeZone);
  return new Date(wallClockMs(corrected, timeZone) === wanted ? corrected : later);
}

/** What the wall clock of a zone shows, to the second, as if it were UTC. */
function wallClockMs(instant: number, timeZone: string): number {
  const parts = wallClock(timeZone).formatToParts(instant);
  const part = (type: string) => Number(parts.find((each) => each.type === type)!.value);
  return Date.UTC(part('year'), part('month') - 1, part('day'), part('hour'), part('minute'), part('second'));
}

const wallClocks = new Map<string, Intl.DateTimeFormat>();

/** Making one takes a hundred times as long as asking it, and a week asks hundreds of times. */
function wallClock(timeZone: string): Intl.DateTimeFormat {
  const found = wallClocks.get(timeZone);
  if (found) return found;
  const made = new Intl.DateTimeFormat('en-US', {
    timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    second: '2-digit',
    hourCycle: 'h23',
  });
  wallClocks.set(timeZone, made);
  return made;
}
