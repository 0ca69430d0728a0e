import { DateTime } from 'luxon';
import { SnapshotInconsistent } from './errors.js';

/**
 * Turns wall clocks into elapsed minutes from one instant (the shop's midnight at the first date) and back, so that
 * a changeover day simply has 23 or 25 hours.
 */
export class WallClock {
  private readonly origin: number;
  /** Shifts and access repeat the same clocks: each is looked up once a day and zone. */
  private readonly known = new Map<string, number>();

  constructor(zone: string, firstDate: string) {
    this.origin = instantOf(zone, firstDate, '00:00').toMillis();
  }

  /** Elapsed minutes at `date`, `clock` in `zone`; 24:00 = midnight after. */
  minutes(zone: string, date: string, clock: string): number {
    const key = `${zone}|${date}|${clock}`;
    let minutes = this.known.get(key);
    if (minutes === undefined) {
      minutes = Math.round((instantOf(zone, date, clock).toMillis() - this.origin) / 60_000);
      this.known.set(key, minutes);
    }
    return minutes;
  }

  /** RFC 3339 with the zone's offset. */
  instant(minutes: number, zone: string): string {
    return DateTime.fromMillis(this.origin + minutes * 60_000, { zone }).toISO({ suppressMilliseconds: true })!;
  }
}

/** Dates of the horizon. */
export function datesFrom(firstDate: string, days: number): string[] {
  const first = DateTime.fromISO(firstDate, { zone: 'utc' });
  return Array.from({ length: days }, (_, d) => first.plus({ days: d }).toISODate()!);
}

/** A clock that occurs twice means its first occurrence; one that is skipped means the same time after the gap. */
function instantOf(zone: string, date: string, clock: string): DateTime {
  const midnight = clock === '24:00';
  const local = DateTime.fromISO(`${date}T${midnight ? '00:00' : clock}`, { zone });
  if (!local.isValid) throw new SnapshotInconsistent(`no such time: ${date} ${clock} in ${zone}`);
  const first = local.getPossibleOffsets().reduce((a, b) => (b.toMillis() < a.toMillis() ? b : a), local);
  return midnight ? first.plus({ days: 1 }) : first;
}
