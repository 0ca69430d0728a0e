import type { PartTakenBack } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { wallClockOf } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';
import type { z } from 'zod';
import type { Actor } from '../access/actor.js';
import { audit } from '../audit/audit.js';
import { followLateFacts } from '../charges/draft-charges.js';
import { settleStock } from '../charges/settle-stock.js';
import { lockVisit } from '../planning/lock-visit.js';
import type { Fact } from './fact.js';

/**
 * Takes back a used part that was recorded by mistake: it lies in stock again, and is in its visit's draft no more. An
 * issued document stays, and is amended by a person.
 */
export async function takeBackPart(
  tx: Tx,
  actor: Actor,
  { id, visitId, machineId, partId, name, quantity, usedAt, fromShelf }: Prisma.PartUseGetPayload<object>,
  why: z.infer<typeof PartTakenBack>,
  now: Date,
): Promise<void> {
  if (visitId !== null) await lockVisit(tx, visitId);
  // Somebody else may have been quicker.
  const { count } = await tx.partUse.deleteMany({ where: { id } });
  if (count === 0) return;
  const { site } = await tx.machine.findUniqueOrThrow({ where: { id: machineId }, select: { site: true } });
  const on = wallClockOf(usedAt, site.timeZone).slice(0, 10);
  const act = { action: 'part-use.taken-back', subjectKind: 'part-use', subjectId: id, machineId };
  const detail = { visitId, what: name, quantity: String(quantity), on, ...why };
  await audit(tx, actor, { ...act, detail }, now);
  if (visitId === null) {
    const onHand = { increment: fromShelf ?? quantity };
    if (partId !== null) await tx.stock.updateMany({ where: { partId, technicianId: null }, data: { onHand } });
    return;
  }
  const { state } = await tx.visit.findUniqueOrThrow({ where: { id: visitId }, select: { state: true } });
  if (state === 'done') await followLateFacts(tx, visitId);
  else await settleStock(tx, visitId);
}

/**
 * A used part that still waits for the shop's decision is withdrawn by whoever recorded it: nobody has to decide any more.
 *
 * @returns whether it waited
 */
export async function withdrawWaiting(tx: Tx, actor: Actor, useId: string, now: Date): Promise<boolean> {
  const { count } = await tx.fieldRecord.updateMany({
    where: { id: useId, kind: 'part-used', state: 'review', recordedBy: actor.id },
    data: { state: 'dismissed', decidedBy: actor.id, decidedAt: now, version: { increment: 1 } },
  });
  return count > 0;
}

/**
 * Who recorded a used part in the field takes it back there; so does the shop, when it lets a late record count.
 *
 * @throws DomainError invalid-input where nobody recorded it, not-allowed where somebody else did
 */
export async function takeBackRecorded(
  tx: Tx,
  actor: Actor,
  { useId, because }: Extract<Fact, { kind: 'part-taken-back' }>,
  now: Date,
): Promise<void> {
  const record = await tx.fieldRecord.findFirst({ where: { id: useId, kind: 'part-used' } });
  if (record === null)
    throw new DomainError('invalid-input', 'There is no such used part to take back.', [
      { pointer: '/fact/useId', detail: 'no such record of a used part' },
    ]);
  if (actor.role === 'technician' && record.recordedBy !== actor.id)
    throw new DomainError('not-allowed', 'Somebody else recorded this: the shop can take it back.');
  // Taken back before, or it never counted.
  const row = await tx.partUse.findUnique({ where: { id: useId } });
  if (row !== null) await takeBackPart(tx, actor, row, { because, reason: '' }, now);
}
