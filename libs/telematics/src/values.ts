const HOURS = /^\d{1,6}(\.\d{1,9})?$/;
/** No meter has come so far: it is more than a century. Rounded to cents of an hour, readings stay below a million. */
const MOST_HOURS = 999_999;
// ISO 8601 durations without years and months, whose length is not known.
const DURATION = /^P(?:(\d{1,6})D)?(?:T(?:(\d{1,8})H)?(?:(\d{1,9})M)?(?:(\d{1,10})(?:\.\d{1,9})?S)?)?$/;
// RFC 3339: an offset is needed, since a bare local time is no instant.
const INSTANT = /^(\d{4})-(\d\d)-(\d\d)[Tt](\d\d):(\d\d):(\d\d)(\.\d{1,9})?([Zz]|[+-]\d\d:\d\d)$/;
/** Older is a clock that was never set, or the sender's word for "unknown" (0001-01-01). */
const FIRST_YEAR = 1990;
const DECIMALS = 10_000n;

/** Decimal hours as they were told, or a duration as hours to four decimals; null = neither. */
export function hoursOf(told: string): string | null {
  if (HOURS.test(told)) return Number(told) < MOST_HOURS ? told : null;
  const match = DURATION.exec(told);
  if (!match || !/\d/.test(told) || told.endsWith('T')) return null;
  const [days, hours, minutes, seconds] = match.slice(1, 5).map((each) => BigInt(each ?? 0)) as [
    bigint,
    bigint,
    bigint,
    bigint,
  ];
  const total = ((days * 24n + hours) * 60n + minutes) * 60n + seconds;
  const parts = (total * DECIMALS * 2n + 3600n) / 7200n; // half up
  const fraction = String(parts % DECIMALS)
    .padStart(4, '0')
    .replace(/0+$/, '');
  const whole = String(parts / DECIMALS);
  if (Number(whole) >= MOST_HOURS) return null;
  return fraction === '' ? whole : `${whole}.${fraction}`;
}

/** The instant in UTC, or null when it is none, lies before 1990, or on a day that does not exist. */
export function instantOf(told: string): string | null {
  const match = INSTANT.exec(told);
  if (!match) return null;
  const [, year, month, day, hour, minute, second, fraction, zone] = match as unknown as string[];
  if (Number(year) < FIRST_YEAR) return null;
  if (Number(hour) > 23 || Number(minute) > 59 || Number(second) > 59) return null;
  const dayExists = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day))).toISOString().slice(0, 10);
  if (dayExists !== `${year}-${month}-${day}`) return null;
  const offset = zone!.toUpperCase() === 'Z' ? 0 : offsetMinutes(zone!);
  if (offset === null) return null;
  const milliseconds = Number((fraction ?? '.0').slice(0, 4)) * 1000;
  const local = Date.UTC(Number(year), Number(month) - 1, Number(day), Number(hour), Number(minute), Number(second));
  return new Date(local + Math.round(milliseconds) - offset * 60_000).toISOString();
}

function offsetMinutes(zone: string): number | null {
  const [hours, minutes] = zone.slice(1).split(':').map(Number) as [number, number];
  if (hours > 23 || minutes > 59) return null;
  return (zone.startsWith('-') ? -1 : 1) * (hours * 60 + minutes);
}
