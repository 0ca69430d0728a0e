import type { Tx } from '@deckround/store';

export type DocumentChange = 'issued' | 'credited' | 'acknowledged' | 'refused' | 'paid';

/**
 * The next number of the shop's accounting changes. Its row stays locked until the transaction ends: numbers come in the
 * order of commit and none is left out, so a reader may keep the last one as its cursor.
 */
export async function nextChange(tx: Tx, shopId: string): Promise<number> {
  const [row] = await tx.$queryRaw<{ value: number }[]>`
    insert into shop_sequence (shop_id, name, value) values (${shopId}::uuid, 'accounting-change', 1)
    on conflict (shop_id, name) do update set value = shop_sequence.value + 1
    returning value`;
  return row!.value;
}

export async function recordChange(
  tx: Tx,
  shopId: string,
  sequence: number,
  documentId: string,
  what: DocumentChange,
  at: Date,
): Promise<void> {
  await tx.accountingChange.create({ data: { shopId, sequence, documentId, what, at } });
}
