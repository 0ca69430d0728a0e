import type { Tx } from '@deckround/store';

/** Lets whatever else is being recorded of the visit come to its end first: each then sees what the other has done. */
export async function lockVisit(tx: Tx, id: string): Promise<void> {
  await tx.$queryRaw`select id from visit where id = ${id}::uuid for update`;
}
