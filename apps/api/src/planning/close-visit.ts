import { reopenCalls } from '@deckround/register-store';
import { emitEvent, type Tx } from '@deckround/store';
import type { Facts } from '../charges/charged-visit.js';
import { draftCharges } from '../charges/draft-charges.js';
import type { VisitRow } from './visit-view.js';

/**
 * The visit is over, however that was told: what was not done by now is skipped and stays due, calls not answered wait for
 * a decision again, what it costs is drafted, and whoever listens is told.
 */
export async function closeVisit(
  tx: Tx,
  { id, shopId, siteId }: VisitRow,
  finishedAt: Date,
  facts: Facts,
  now: Date,
): Promise<void> {
  await tx.visitItem.updateMany({ where: { visitId: id, state: 'planned' }, data: { state: 'skipped' } });
  await reopenCalls(tx, { id });
  await tx.visit.update({ where: { id }, data: { state: 'done', finishedAt, version: { increment: 1 } } });
  await draftCharges(tx, id, facts);
  await emitEvent(tx, shopId, 'visit.done', { visitId: id, siteId, finishedAt: finishedAt.toISOString() }, now);
}
