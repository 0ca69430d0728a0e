/**
 * Minutes since 1970 of a wall clock in a zone, by asking the platform what the clock shows at candidate instants.
 * A clock shown twice means the first time; a skipped one is read with the offset before the gap.
 */
export function localToMinutes(zone: string, date: string, clock: string): number {
  const key = `${zone}|${date}|${clock}`;
  let minutes = known.get(key);
  if (minutes === undefined) {
    minutes = askPlatform(zone, date, clock);
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(key, minutes);
  }
  return minutes;
}

/** Shifts and access repeat the same clocks, and asking takes long: the answers are kept. */
const known = new Map<string, number>();
const MOST_KNOWN = 10_000;

function askPlatform(zone: string, date: string, clock: string): number {
  const [year, month, day] = date.split('-').map(Number) as [number, number, number];
  const [hour, minute] = clock.split(':').map(Number) as [number, number];
  const asUtc = Date.UTC(year, month - 1, day, hour, minute) / 60_000;
  const before = asUtc - offsetAt(zone, asUtc - 1440);
  const after = asUtc - offsetAt(zone, asUtc + 1440);
  const valid = [before, after].filter((candidate) => candidate + offsetAt(zone, candidate) === asUtc);
  return valid.length > 0 ? Math.min(...valid) : before;
}

/** Minutes since 1970 of an RFC 3339 instant. */
export function instantToMinutes(instant: string): number {
  return Date.parse(instant) / 60_000;
}

/** Whether an RFC 3339 instant is written with the offset that the zone has then. */
export function hasOffsetOf(zone: string, instant: string): boolean {
  const written = /(?:Z|([+-])(\d\d):(\d\d))$/.exec(instant);
  if (!written) return false;
  const minutes = written[1] ? Number(`${written[1]}1`) * (Number(written[2]) * 60 + Number(written[3])) : 0;
  return minutes === offsetAt(zone, instantToMinutes(instant));
}

const formats = new Map<string, Intl.DateTimeFormat>();

/** Minutes east of Greenwich. */
function offsetAt(zone: string, minutes: number): number {
  let format = formats.get(zone);
  if (!format) {
    format = new Intl.DateTimeFormat('en-US', {
      timeZone: zone,
      hourCycle: 'h23',
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
      hour: 'numeric',
      minute: 'numeric',
    });
    formats.set(zone, format);
  }
  const part = new Map(format.formatToParts(minutes * 60_000).map(({ type, value }) => [type, Number(value)]));
  const shown = Date.UTC(
    part.get('year')!,
    part.get('month')! - 1,
    part.get('day')!,
    part.get('hour')!,
    part.get('minute')!,
  );
  return shown / 60_000 - Math.floor(minutes);
}
