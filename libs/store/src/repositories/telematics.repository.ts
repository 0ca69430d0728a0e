import type { Tx } from '../store.js';

/** A machine as it was heard; `identity` tells it from others of the shop. */
export interface HeardRow {
  readonly identity: string;
  readonly maker: string | null;
  readonly model: string | null;
  readonly serial: string | null;
  readonly pin: string | null;
  readonly equipmentId: string | null;
  readonly hours: string | null;
  readonly hoursAt: string | null;
  readonly fault: string | null;
}

export interface KnownUnit {
  readonly id: string;
  readonly identity: string;
  readonly machineId: string | null;
  readonly matchedBy: 'serial' | 'label' | 'hand' | null;
}

/** Writes down what was heard, one row a machine; older hours do not take the place of newer ones. */
export function keepUnits(tx: Tx, shopId: string, rows: readonly HeardRow[], now: Date): Promise<KnownUnit[]> {
  return tx.$queryRaw`
    insert into telematics_unit as unit (shop_id, identity, maker, model, serial, pin, equipment_id, first_heard_at,
      last_heard_at, last_hours, last_hours_at, last_fault)
    select ${shopId}::uuid, new.identity, new.maker, new.model, new.serial, new.pin, new.equipment_id, ${now}, ${now},
      new.hours, new.hours_at, new.fault
    from unnest(
      ${rows.map((each) => each.identity)}::text[],
      ${rows.map((each) => each.maker)}::text[],
      ${rows.map((each) => each.model)}::text[],
      ${rows.map((each) => each.serial)}::text[],
      ${rows.map((each) => each.pin)}::text[],
      ${rows.map((each) => each.equipmentId)}::text[],
      ${rows.map((each) => each.hours)}::numeric[],
      ${rows.map((each) => each.hoursAt)}::timestamptz[],
      ${rows.map((each) => each.fault)}::text[]
    ) as new (identity, maker, model, serial, pin, equipment_id, hours, hours_at, fault)
    order by new.identity
    on conflict (shop_id, identity) do update set
      maker = excluded.maker, model = excluded.model, serial = excluded.serial, pin = excluded.pin,
      equipment_id = excluded.equipment_id, last_heard_at = excluded.last_heard_at, last_fault = excluded.last_fault,
      last_hours = case when excluded.last_hours_at >= coalesce(unit.last_hours_at, '-infinity')
        then excluded.last_hours else unit.last_hours end,
      last_hours_at = greatest(unit.last_hours_at, excluded.last_hours_at)
    returning id, identity, machine_id as "machineId", matched_by as "matchedBy"`;
}

export interface MachineNames {
  readonly id: string;
  readonly code: string;
  readonly maker: string | null;
  readonly serial: string | null;
}

/**
 * Machines that bear one of these serial numbers or codes, whatever the case of their letters, and that are in service on
 * the day that it is now at their site.
 */
export function machinesNamed(
  tx: Tx,
  serials: readonly string[],
  codes: readonly string[],
  now: Date,
): Promise<MachineNames[]> {
  return tx.$queryRaw`
    select machine.id, machine.code, machine.maker, machine.serial from machine join site on site.id = machine.site_id
    where (machine.retired_on is null or machine.retired_on > (${now}::timestamptz at time zone site.time_zone)::date)
      and (lower(trim(machine.serial)) = any(${[...serials]}::text[]) or lower(machine.code) = any(${[...codes]}::text[]))`;
}

/** Sources whose time has come, across shops. */
export function findDueSources(tx: Tx): Promise<{ id: string; shopId: string }[]> {
  return tx.$queryRaw`
    select id, shop_id as "shopId" from telematics_source where state = 'active' and next_poll_at <= now()`;
}

export interface ClaimedSource {
  readonly id: string;
  readonly url: string;
  readonly authorizationHeader: string | null;
  readonly everySeconds: number;
  readonly failures: number;
  readonly nextPage: string | null;
}

/** Takes a due source on for `leaseSeconds`; null = somebody else has it, or it is not due. */
export async function claimSource(tx: Tx, id: string, leaseSeconds: number): Promise<ClaimedSource | null> {
  const [row] = await tx.$queryRaw<ClaimedSource[]>`
    update telematics_source set next_poll_at = now() + make_interval(secs => ${leaseSeconds})
    where id = ${id}::uuid and state = 'active' and next_poll_at <= now()
    returning id, url, authorization_header as "authorizationHeader", every_seconds as "everySeconds", failures,
      next_page as "nextPage"`;
  return row ?? null;
}

/** A page is done: the look goes on there if it is broken off, and the source is kept for `leaseSeconds` more. */
export async function keepPage(tx: Tx, id: string, nextPage: string | null, leaseSeconds: number): Promise<void> {
  await tx.$executeRaw`
    update telematics_source set next_page = ${nextPage}, next_poll_at = now() + make_interval(secs => ${leaseSeconds})
    where id = ${id}::uuid`;
}

export interface PollEnd {
  /** null = all went well. */
  readonly error: string | null;
  readonly nextPage: string | null;
  /** Until the next look. */
  readonly pauseSeconds: number;
}

export async function endPoll(
  tx: Tx,
  id: string,
  { error, nextPage, pauseSeconds }: PollEnd,
  now: Date,
): Promise<void> {
  await tx.$executeRaw`
    update telematics_source set last_poll_at = ${now}, last_error = ${error}, next_page = ${nextPage},
      failures = case when ${error}::text is null then 0 else failures + 1 end,
      next_poll_at = now() + make_interval(secs => ${pauseSeconds})
    where id = ${id}::uuid`;
}
