import { reopenCalls } from '@deckround/register-store';
import { emitEvent, type Tx } from '@deckround/store';
import type { VisitRow } from './visit-view.js';

/** Takes a visit out of the plan: its calls wait for a decision again, and whom it was promised is told. */
export async function cancelVisit(
  tx: Tx,
  { id, shopId, siteId, state }: Pick<VisitRow, 'id' | 'shopId' | 'siteId' | 'state'>,
  now: Date,
  reason?: string,
): Promise<void> {
  if (state === 'confirmed') await emitEvent(tx, shopId, 'visit.cancelled', { visitId: id, siteId }, now);
  await tx.visit.update({
    where: { id },
    data: {
      ...{ state: 'cancelled', pinned: false, promisedFrom: null, promisedTo: null, version: { increment: 1 } },
      ...(reason !== undefined && { reason }),
    },
  });
  await reopenCalls(tx, { id });
}
