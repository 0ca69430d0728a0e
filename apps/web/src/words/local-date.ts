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
  const parts = wallClock(timeZone).formatToParts(new Date(instant));
  const part = (type: string) => Number(parts.find((each) => each.type === type)!.value);
  const day = `${part('year')}-${String(part('month')).padStart(2, '0')}-${String(part('day')).padStart(2, '0')}`;
  return daysBetween(date, day) * 1440 + part('hour') * 60 + part('minute') + part('second') / 60;
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
