const DAY_MS = 86_400_000;

/** Days since 1970-01-01 of a local date `YYYY-MM-DD`. */
export function dayNumber(date: string): number {
  return Math.round(Date.parse(`${date}T00:00:00Z`) / DAY_MS);
}

export function dateOfDay(day: number): string {
  return new Date(day * DAY_MS).toISOString().slice(0, 10);
}

export function addDays(date: string, days: number): string {
  return dateOfDay(dayNumber(date) + days);
}

/** ISO 8601: 1 = Monday … 7 = Sunday. */
export function weekdayOf(date: string): number {
  return ((((dayNumber(date) + 3) % 7) + 7) % 7) + 1;
}

/** Whether `YYYY-MM-DD` names a day that exists. */
export function isLocalDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const time = Date.parse(`${text}T00:00:00Z`);
  return !Number.isNaN(time) && new Date(time).toISOString().startsWith(text);
}

/** Minute 450 of `07:30`. */
export function minuteOf(clock: string): number {
  const [hour, minute] = clock.split(':').map(Number) as [number, number];
  return hour * 60 + minute;
}

/** `07:30` of minute 450. */
export function clockOf(minute: number): string {
  return `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
}
