import { DomainError } from '@deckround/platform';
import { wallClockOf } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';
import type { Actor } from '../access/actor.js';
import { audit } from '../audit/audit.js';
import { followLateFacts } from '../charges/draft-charges.js';
import { settleStock } from '../charges/settle-stock.js';
import { lockVisit } from '../planning/lock-visit.js';

/**
 * Takes back a used part that was recorded by mistake: it lies in stock again, and is in its visit's draft no more. An
 * issued document stays, and is amended by a person. Technicians take back what they recorded themselves, until their
 * visit is closed.
 *
 * @throws DomainError not-allowed
 */
export async function takeBackPart(
  tx: Tx,
  actor: Actor,
  row: Prisma.PartUseGetPayload<object>,
  now: Date,
): Promise<void> {
  const { id, visitId, machineId, partId, name, quantity, usedAt } = row;
  if (visitId !== null) await lockVisit(tx, visitId);
  const visit = visitId === null ? null : await tx.visit.findUniqueOrThrow({ where: { id: visitId } });
  const isClosed = visit !== null && ['done', 'cancelled'].includes(visit.state);
  if (actor.role === 'technician') {
    const record = await tx.fieldRecord.findUnique({ where: { id } });
    if (record?.recordedBy !== actor.id || isClosed)
      throw new DomainError(
        'not-allowed',
        'The visit is closed, or somebody else recorded it: the shop can take it back.',
      );
  }
  // Somebody else may have been quicker.
  const { count } = await tx.partUse.deleteMany({ where: { id } });
  if (count === 0) return;
  const { site } = await tx.machine.findUniqueOrThrow({ where: { id: machineId }, select: { site: true } });
  const on = wallClockOf(usedAt, site.timeZone).slice(0, 10);
  const act = { action: 'part-use.taken-back', subjectKind: 'part-use', subjectId: id, machineId };
  await audit(tx, actor, { ...act, detail: { visitId, what: name, quantity: String(quantity), on } }, now);
  if (visitId === null) {
    const shelf = { partId: partId!, technicianId: null };
    if (partId !== null) await tx.stock.updateMany({ where: shelf, data: { onHand: { increment: quantity } } });
  } else if (visit?.state === 'done') await followLateFacts(tx, visitId);
  else await settleStock(tx, visitId);
}
