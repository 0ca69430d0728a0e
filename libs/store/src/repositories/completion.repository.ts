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
