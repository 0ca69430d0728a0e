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

type VisitItem = Prisma.VisitItemGetPayload<object>;

/** One item of a visit is done: a stopgap made good, a road call closed, or a completion that starts the next interval. */
export async function completeItem(
  tx: Tx,
  actor: Actor,
  visitId: string,
  item: VisitItem,
  { doneOn, meterHours, note }: Done,
): Promise<void> {
  await tx.visitItem.update({ where: { id: item.id }, data: { state: 'done' } });
  if (item.stopgapId !== null || item.roadCallId !== null) return settleOwed(tx, item, doneOn, visitId);
  const { machineId, code, slot } = item;
  await recordCompletion(tx, actor, visitId, { machineId, code, slot, doneOn, meterHours, note });
}

/** What a stopgap or a call owed was done; one that was closed before stays as it was closed. */
export async function settleOwed(
  tx: Tx,
  { machineId, stopgapId, roadCallId }: Pick<VisitItem, 'machineId' | 'stopgapId' | 'roadCallId'>,
  doneOn: Date,
  visitId: string | null,
): Promise<void> {
  const isOpen = { closedOn: null };
  if (stopgapId !== null) {
    const closed = { closedOn: doneOn, version: { increment: 1 } };
    await tx.stopgap.updateMany({ where: { id: stopgapId, ...isOpen }, data: closed });
    await tx.followUp.updateMany({ where: { stopgapId, ...isOpen }, data: { ...closed, visitId } });
  }
  if (roadCallId !== null) {
    await tx.roadCall.updateMany({
      where: { id: roadCallId, ...isOpen },
      data: { state: 'closed', closedOn: doneOn, visitId, version: { increment: 1 } },
    });
    await endDowntime(tx, machineId);
    await settleCall(tx, roadCallId, doneOn, visitId);
  }
}
