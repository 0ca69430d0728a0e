const DAY_MS = 86_400_000;

/** Days since 1970-01-01 of a local date 'YYYY-MM-DD' (or the date part of a longer text); no time zone is involved. */
export function dayNumber(date: string): number {
  return Math.round(Date.UTC(+date.slice(0, 4), +date.slice(5, 7) - 1, +date.slice(8, 10)) / DAY_MS);
}

/** The local date 'YYYY-MM-DD' of a day number; inverse of `dayNumber`. */
export function dateOfDay(day: number): string {
  return new Date(Math.floor(day) * DAY_MS).toISOString().slice(0, 10);
}

/** Wall clock as fractional days since 1970-01-01. */
export function momentOf(readAt: string): number {
  const clock =
    readAt.length >= 16
      ? (+readAt.slice(11, 13) + +readAt.slice(14, 16) / 60 + (+readAt.slice(17, 19) || 0) / 3600) / 24
      : 0.5;
  return dayNumber(readAt) + clock;
}

/** 0 = Monday … 6 = Sunday; 1970-01-01 was a Thursday. */
export function weekdayOf(day: number): number {
  return (((day + 3) % 7) + 7) % 7;
}

/** Position in the year, 0 ≤ x < 1, with leap days absorbed by a mean year of 365.2425 days. */
export function yearFraction(day: number): number {
  const x = day / 365.2425;
  return x - Math.floor(x);
}
