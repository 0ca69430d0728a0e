import { endDowntime } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';
import type { Actor } from '../access/actor.js';
import { settleCall } from '../field-work/owed-work.js';
import { recordCompletion } from '../field-work/record-completion.js';

interface Done {
  readonly doneOn: Date;
  readonly meterHours: string | null;
  readonly note: string;
}

/** One item of a visit is done: a stopgap made good, a road call closed, or a completion that starts the next interval. */
export async function completeItem(
  tx: Tx,
  actor: Actor,
  visitId: string,
  item: Prisma.VisitItemGetPayload<object>,
  { doneOn, meterHours, note }: Done,
): Promise<void> {
  await tx.visitItem.update({ where: { id: item.id }, data: { state: 'done' } });
  if (item.stopgapId !== null) {
    await tx.stopgap.update({ where: { id: item.stopgapId }, data: { closedOn: doneOn, version: { increment: 1 } } });
    await tx.followUp.updateMany({
      where: { stopgapId: item.stopgapId },
      data: { closedOn: doneOn, visitId, version: { increment: 1 } },
    });
    return;
  }
  if (item.roadCallId !== null) {
    await tx.roadCall.update({
      where: { id: item.roadCallId },
      data: { state: 'closed', closedOn: doneOn, visitId, version: { increment: 1 } },
    });
    await endDowntime(tx, item.machineId);
    await settleCall(tx, item.roadCallId, doneOn, visitId);
    return;
  }
  const { machineId, code, slot } = item;
  await recordCompletion(tx, actor, visitId, { machineId, code, slot, doneOn, meterHours, note });
}
