import type { Prisma, Tx } from '@deckround/store';
import { followLateFacts } from '../charges/draft-charges.js';
import { lockVisit } from '../planning/lock-visit.js';

/**
 * Takes back a completion that was recorded by mistake: the work is due as it was before, stands in its visit as not done,
 * and is in its draft no more. An issued document stays, and is amended by a person.
 */
export async function takeBack(tx: Tx, row: Prisma.CompletionGetPayload<{ include: { slot: true } }>): Promise<void> {
  const { visitId, machineId, itemCode, slot } = row;
  if (visitId !== null) await lockVisit(tx, visitId);
  await tx.completion.delete({ where: { id: row.id } });
  if (visitId === null) return;
  const { state } = await tx.visit.findUniqueOrThrow({ where: { id: visitId }, select: { state: true } });
  const work = { visitId, machineId, code: itemCode, state: 'done' };
  await tx.visitItem.deleteMany({ where: { ...work, role: 'found' } });
  await tx.visitItem.updateMany({
    where: { ...work, slot: slot?.name ?? null },
    data: { state: state === 'done' ? 'skipped' : 'planned' },
  });
  if (state === 'done') await followLateFacts(tx, visitId);
}
