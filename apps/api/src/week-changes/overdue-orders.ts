import type { Alert } from '@deckround/contracts';
import { clause } from '@deckround/planning';
import { dateColumn, dateText } from '@deckround/register-store';
import type { Tx } from '@deckround/store';
import type { z } from 'zod';
import { partName } from '../register/part-name.js';

/** Orders of which something should have come before today: nothing counts on it until it is received, awaited for another day, or cancelled. */
export async function overdueOrders(tx: Tx, today: string): Promise<z.infer<typeof Alert>[]> {
  const rows = await tx.partOrder.findMany({
    where: { outstanding: { gt: 0 }, expectedOn: { lt: dateColumn(today) } },
    include: { part: true },
    orderBy: [{ expectedOn: 'asc' }, { id: 'asc' }],
  });
  return rows.map((row) => {
    const part = partName(row.part);
    const told = {
      part,
      quantity: Number(row.outstanding),
      orderedDate: dateText(row.orderedOn),
      expectedDate: dateText(row.expectedOn),
    };
    return {
      kind: 'order-overdue',
      siteId: null,
      siteName: null,
      machineId: null,
      machineCode: null,
      visitId: null,
      stopgapId: null,
      orderId: row.id,
      documentId: null,
      answerId: null,
      sentence: `${part}: ${told.quantity} ordered on ${told.orderedDate} should have come on ${told.expectedDate}, and nothing counts on them any more.`,
      choice: 'Ask the supplier, then change the date of the order, receive what has come, or cancel the rest.',
      clauses: { sentence: clause('order-overdue', told), choice: clause('ask-supplier') },
      move: null,
    };
  });
}
