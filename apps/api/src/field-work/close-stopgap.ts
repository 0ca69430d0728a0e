import type { StopgapClose } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { dateColumn, dateText, shopNow, todayOf } from '@deckround/register-store';
import type { Tx } from '@deckround/store';
import type { z } from 'zod';
import type { Actor } from '../access/actor.js';
import { audit } from '../audit/audit.js';
import { leaveVisits } from '../planning/leave-visits.js';
import { lockOpenStopgap } from './open-stopgap.js';
import { refuseFutureDay } from './refuse-future.js';

/** The return that a stopgap owes is owed no more: the repair was made in another way, or nobody needs it. */
export async function closeStopgap(
  tx: Tx,
  actor: Actor,
  id: string,
  body: z.infer<typeof StopgapClose>,
  now: Date,
): Promise<void> {
  // Visits first: that is the order in which a visit that makes it good takes them.
  await leaveVisits(tx, { stopgapId: id }, 'Its stopgap was closed, and it had no other work.', now);
  const { machineId, madeOn, description } = await lockOpenStopgap(tx, id);
  const { because, reason, closedOn = await todayOf(tx, now) } = body;
  await refuseFutureDay(tx, machineId, '/closedOn', closedOn, now);
  if (closedOn < dateText(madeOn))
    throw new DomainError('invalid-input', 'It cannot be closed before it was made.', [
      { pointer: '/closedOn', detail: 'it lies before the day on which the stopgap was made' },
    ]);
  const closed = { closedOn: dateColumn(closedOn), version: { increment: 1 } };
  await tx.stopgap.update({ where: { id }, data: closed });
  await tx.followUp.updateMany({ where: { stopgapId: id, closedOn: null }, data: closed });
  await tx.dueForecast.deleteMany({ where: { stopgapId: id } });
  const subject = { subjectKind: 'stopgap', subjectId: id, machineId };
  const detail = { what: description, because, reason, on: closedOn };
  await audit(tx, actor, { action: 'stopgap.closed', ...subject, detail }, await shopNow(tx, now));
}
