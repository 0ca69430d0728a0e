import { shopNow } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';
import type { Actor } from '../access/actor.js';
import { audit } from '../audit/audit.js';
import { followLateFacts } from '../charges/draft-charges.js';
import { lockVisit } from '../planning/lock-visit.js';
import { unsettleFindings } from './owed-work.js';

/**
 * Takes back a completion that was recorded by mistake: the work is due, and owed, as it was before, stands in its visit as
 * not done, and is in its draft no more; with the last of it the draft goes. An issued document stays, and is amended by a person.
 */
export async function takeBack(
  tx: Tx,
  actor: Actor,
  row: Prisma.CompletionGetPayload<{ include: { slot: true } }>,
  now: Date,
): Promise<void> {
  const { id, visitId, machineId, itemCode: code, doneOn } = row;
  const slot = row.slot?.name ?? null;
  if (visitId !== null) await lockVisit(tx, visitId);
  await tx.completion.delete({ where: { id } });
  await unsettleFindings(tx, { machineId, code, slot }, doneOn);
  const act = { action: 'completion.taken-back', subjectKind: 'completion', subjectId: id, machineId };
  await audit(
    tx,
    actor,
    { ...act, detail: { machineId, visitId, code, slot, doneOn: doneOn.toISOString().slice(0, 10) } },
    await shopNow(tx, now),
  );
  if (visitId === null) return;
  const { state } = await tx.visit.findUniqueOrThrow({ where: { id: visitId }, select: { state: true } });
  const work = { visitId, machineId, code, slot, state: 'done' };
  await tx.visitItem.deleteMany({ where: { ...work, role: 'found' } });
  await tx.visitItem.updateMany({ where: work, data: { state: state === 'done' ? 'skipped' : 'planned' } });
  if (state === 'done') await followLateFacts(tx, visitId);
}
