import { DateTime } from 'luxon';

/** An instant on a site's wall clock, `2014-06-16T07:45:00`. */
export function wallClockOf(instant: Date, zone: string): string {
  return DateTime.fromJSDate(instant, { zone }).toFormat("yyyy-MM-dd'T'HH:mm:ss");
}

/** A `date` column as `YYYY-MM-DD`; Prisma hands it out as midnight UTC. */
export function dateText(date: Date): string {
  return date.toISOString().slice(0, 10);
}

export function dateColumn(date: string): Date {
  return new Date(`${date}T00:00:00Z`);
}
