import { DomainError } from '@deckround/platform';
import type { Tx } from '@deckround/store';
import type { StopgapRow } from './stopgaps.js';

/**
 * A stopgap about which something is decided now: whoever else decides about it waits.
 * @throws DomainError not-found; conflict where it has been closed
 */
export async function lockOpenStopgap(tx: Tx, id: string): Promise<StopgapRow> {
  await tx.$queryRaw`select id from stopgap where id = ${id}::uuid for update`;
  const row = await tx.stopgap.findUnique({ where: { id } });
  if (!row) throw new DomainError('not-found', 'There is no such stopgap.');
  if (row.closedOn !== null)
    throw new DomainError('conflict', 'The stopgap has been closed: nothing is owed for it any more.');
  return row;
}
