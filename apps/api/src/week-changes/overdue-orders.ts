import type { Alert } from '@deckround/contracts';
import { clause } from '@deckround/planning';
import { dateColumn, dateText } from '@deckround/register-store';
import type { Tx } from '@deckround/store';
import type { z } from 'zod';
import { partName } from '../register/part-name.js';

/** Orders that should have come before today: nothing counts on them until their date is changed or they are received. */
export async function overdueOrders(tx: Tx, today: string): Promise<z.infer<typeof Alert>[]> {
  const rows = await tx.partOrder.findMany({
    where: { receivedOn: null, expectedOn: { lt: dateColumn(today) } },
    include: { part: true },
    orderBy: [{ expectedOn: 'asc' }, { id: 'asc' }],
  });
  return rows.map((row) => {
    const part = partName(row.part);
    const told = {
      part,
      quantity: Number(row.quantity),
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
      answerId: null,
      sentence: `${part}: ${told.quantity} ordered on ${told.orderedDate} should have come on ${told.expectedDate}, and nothing counts on them any more.`,
      choice: 'Ask the supplier, then change the date of the order, or mark it as received.',
      clauses: { sentence: clause('order-overdue', told), choice: clause('ask-supplier') },
      move: null,
    };
  });
}
