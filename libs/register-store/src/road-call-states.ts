import type { Prisma, Tx } from '@deckround/store';

/** Calls that such visits were to answer and have not wait for a decision again. */
export async function reopenCalls(tx: Tx, visit: Prisma.VisitWhereInput): Promise<void> {
  await tx.roadCall.updateMany({
    where: { state: 'planned', visit },
    data: { state: 'open', visitId: null, version: { increment: 1 } },
  });
}

/** To be called when a call was closed: its machine works again, unless another call says that it does not. */
export async function endDowntime(tx: Tx, machineId: string): Promise<void> {
  const isDown = await tx.roadCall.count({ where: { machineId, usable: false, state: { not: 'closed' } } });
  if (isDown > 0) return;
  await tx.machine.updateMany({
    where: { id: machineId, condition: 'down' },
    data: { condition: 'working', version: { increment: 1 } },
  });
}
