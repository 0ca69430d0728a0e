import type { Tx } from '../store.js';

export interface NewCompletion {
  readonly machineId: string;
  readonly itemCode: string;
  readonly slotId: string | null;
  /** Day, YYYY-MM-DD. */
  readonly doneOn: string;
  readonly meterHours: number | null;
  readonly outcome: string;
  readonly partId: string | null;
}

/** A shop's history goes in in one statement. @returns how many were not there yet */
export async function insertCompletions(
  tx: Tx,
  shopId: string,
  completions: readonly NewCompletion[],
): Promise<number> {
  return tx.$executeRaw`
    insert into completion (shop_id, machine_id, item_code, slot_id, done_on, meter_hours, outcome, part_id)
    select ${shopId}::uuid, new.*
    from unnest(
      ${completions.map((each) => each.machineId)}::uuid[],
      ${completions.map((each) => each.itemCode)}::text[],
      ${completions.map((each) => each.slotId)}::uuid[],
      ${completions.map((each) => each.doneOn)}::date[],
      ${completions.map((each) => each.meterHours)}::numeric[],
      ${completions.map((each) => each.outcome)}::text[],
      ${completions.map((each) => each.partId)}::uuid[]
    ) as new
    on conflict do nothing`;
}

export interface CompletionRow {
  readonly machineId: string;
  readonly itemCode: string;
  /** Name of the slot. */
  readonly slot: string | null;
  /** Day, YYYY-MM-DD. */
  readonly doneOn: string;
  readonly meterHours: number | null;
  readonly outcome: 'done' | 'failed';
  /** Code of the part put in. */
  readonly part: string | null;
}

/**
 * All completions with their slots and parts, in one statement: rows looked up one by one by the client would be named
 * in it, and it takes a limited number of values.
 */
export async function readCompletions(tx: Tx): Promise<CompletionRow[]> {
  return tx.$queryRaw<CompletionRow[]>`
    select completion.machine_id as "machineId", completion.item_code as "itemCode", slot.name as slot,
      to_char(completion.done_on, 'YYYY-MM-DD') as "doneOn", completion.meter_hours::float8 as "meterHours",
      completion.outcome, part.code as part
    from completion
      left join component_slot slot on slot.id = completion.slot_id
      left join part on part.id = completion.part_id
    order by completion.machine_id, completion.done_on, completion.id`;
}
