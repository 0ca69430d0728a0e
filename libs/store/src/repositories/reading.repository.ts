import { Prisma } from '../generated/client.js';
import type { Tx } from '../store.js';

export interface NewReading {
  readonly machineId: string;
  /** Wall clock of the machine's site. */
  readonly readAt: string;
  readonly hours: number;
  readonly source: string;
}

export interface ReadingRow extends NewReading {
  readonly id: string;
  readonly status: 'accepted' | 'set-aside';
  readonly reasonCode: string | null;
  readonly decided: boolean;
}

/**
 * Readings by the tens of thousands go in and out in one statement, on the clock of their site. The clocks come first:
 * joined to new tables, all readings would be gone through once for every site.
 */
export async function insertReadings(tx: Tx, shopId: string, readings: readonly NewReading[]): Promise<number> {
  return tx.$executeRaw`
    with clock as materialized (
      select machine.id, site.time_zone from machine join site on site.id = machine.site_id
    )
    insert into reading (shop_id, machine_id, read_at, hours, source)
    select ${shopId}::uuid, new.machine_id, new.read_at at time zone clock.time_zone, new.hours, new.source
    from unnest(
      ${readings.map((each) => each.machineId)}::uuid[],
      ${readings.map((each) => each.readAt)}::timestamp[],
      ${readings.map((each) => each.hours)}::numeric[],
      ${readings.map((each) => each.source)}::text[]
    ) as new (machine_id, read_at, hours, source) join clock on clock.id = new.machine_id
    on conflict do nothing`;
}

/** Readings of some machines, or of all, by machine and time. */
export async function readReadings(tx: Tx, machineIds: readonly string[] | 'all'): Promise<ReadingRow[]> {
  const those = machineIds === 'all' ? Prisma.sql`true` : Prisma.sql`machine.id = any(${[...machineIds]}::uuid[])`;
  return tx.$queryRaw<ReadingRow[]>`
    select reading.id, reading.machine_id as "machineId",
      to_char(reading.read_at at time zone site.time_zone, 'YYYY-MM-DD"T"HH24:MI:SS') as "readAt",
      reading.hours::float8 as hours, reading.source, reading.status, reading.reason_code as "reasonCode",
      reading.decided_at is not null as decided
    from reading join machine on machine.id = reading.machine_id join site on site.id = machine.site_id
    where ${those}
    order by reading.machine_id, reading.read_at, reading.id`;
}

export interface LastReading {
  readonly machineId: string;
  readonly readAt: Date;
  readonly hours: number;
}

/** The newest accepted reading of each machine that has one; until a time, if told. */
export async function lastReadings(
  tx: Tx,
  machineIds: readonly string[],
  until: Date | null = null,
): Promise<Map<string, LastReading>> {
  const rows = await tx.$queryRaw<LastReading[]>`
    select wanted.machine_id as "machineId", last.read_at as "readAt", last.hours::float8 as hours
    from unnest(${[...machineIds]}::uuid[]) as wanted (machine_id) cross join lateral (
      select read_at, hours from reading
      where reading.machine_id = wanted.machine_id and status = 'accepted'
        and (${until}::timestamptz is null or read_at <= ${until}::timestamptz)
      order by read_at desc, id limit 1
    ) as last`;
  return new Map(rows.map((row) => [row.machineId, row]));
}

export interface ReadingVerdict {
  readonly readingId: string;
  /** null = accepted. */
  readonly code: string | null;
  readonly reason: string | null;
  readonly suggestedHours: number | null;
}

export async function writeVerdicts(tx: Tx, verdicts: readonly ReadingVerdict[]): Promise<void> {
  await tx.$executeRaw`
    update reading set
      status = case when new.code is null then 'accepted' else 'set-aside' end,
      reason_code = new.code, reason = new.reason, suggested_hours = new.suggested, version = reading.version + 1
    from unnest(
      ${verdicts.map((each) => each.readingId)}::uuid[],
      ${verdicts.map((each) => each.code)}::text[],
      ${verdicts.map((each) => each.reason)}::text[],
      ${verdicts.map((each) => each.suggestedHours)}::numeric[]
    ) as new (id, code, reason, suggested)
    where reading.id = new.id`;
}
