import { endDowntime } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';
import type { Actor } from '../access/actor.js';
import { settleCall, settleFindings } from '../field-work/owed-work.js';
import { slotId } from '../field-work/require-machine.js';

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
  const { shopId } = actor;
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
  await settleFindings(tx, item, doneOn, visitId);
  await tx.completion.createMany({
    skipDuplicates: true,
    data: [
      {
        shopId,
        machineId: item.machineId,
        itemCode: item.code,
        slotId: await slotId(tx, shopId, item.machineId, item.slot),
        doneOn,
        meterHours,
        visitId,
        recordedBy: actor.kind === 'person' ? actor.id : null,
        note,
      },
    ],
  });
}
