import type { Tx } from '../store.js';
import { documentsOf } from './document-rows.js';

export interface NewVisitItem {
  readonly visitId: string;
  readonly machineId: string;
  readonly serviceItemId: string | null;
  readonly stopgapId: string | null;
  readonly roadCallId: string | null;
  readonly slot: string | null;
  readonly code: string;
  readonly title: string;
  readonly role: string;
  readonly minutes: number;
  readonly sharedMinutes: number;
  readonly timingCents: number;
  readonly waitingCents: number;
  readonly reason: string;
}

/** Planned work of visits. */
export async function insertVisitItems(tx: Tx, shopId: string, items: readonly NewVisitItem[]): Promise<void> {
  for (const part of documentsOf(items)) {
    await tx.$executeRaw`
      insert into visit_item (shop_id, visit_id, machine_id, service_item_id, stopgap_id, road_call_id, slot, code, title,
        role, minutes, shared_minutes, timing_cents, waiting_cents, reason)
      select ${shopId}::uuid, "visitId", "machineId", "serviceItemId", "stopgapId", "roadCallId", slot, code, title,
        role, minutes, "sharedMinutes", "timingCents", "waitingCents", reason
      from jsonb_to_recordset(${part}::jsonb) as new (
        "visitId" uuid, "machineId" uuid, "serviceItemId" uuid, "stopgapId" uuid, "roadCallId" uuid, slot text, code text,
        title text, role text, minutes int, "sharedMinutes" int, "timingCents" int, "waitingCents" int, reason text)`;
  }
}
