import type { Alert, ChargesSince } from '@deckround/contracts';
import { clause } from '@deckround/planning';
import { addDays } from '@deckround/register';
import { dateColumn } from '@deckround/register-store';
import type { Tx } from '@deckround/store';
import type { z } from 'zod';
import { latestInvoice } from '../charges/charged-visit.js';
import { chargesSince } from '../charges/left-as-it-is.js';

type View = z.infer<typeof Alert>;
type Line = z.infer<typeof ChargesSince>['missing'][number];

/** What came to light longer ago is told no more, whether or not somebody has decided about it. Own choice. */
const TOLD_DAYS = 365;

/** Issued documents of visits of which something came to light, or was taken back, that they do not know, and that nobody has left as they are. */
export async function documentsBehind(tx: Tx, today: string): Promise<View[]> {
  const alerts: View[] = [];
  for (const visitId of await visitsPutRight(tx, dateColumn(addDays(today, -TOLD_DAYS)))) {
    const invoice = await latestInvoice(tx, visitId);
    if (invoice?.state !== 'issued' || (await tx.chargeDocument.count({ where: { creditsId: invoice.id } })) > 0)
      continue;
    const { missing, surplus, left } = await chargesSince(tx, invoice);
    if (left !== null) continue;
    const told = missing.length > 0 ? missing : surplus;
    if (told.length === 0) continue;
    const site = await tx.site.findUniqueOrThrow({ where: { id: invoice.siteId } });
    const what = told.map(named).join(', ');
    const values = { number: String(invoice.number), what };
    alerts.push({
      kind: 'document-behind',
      ...{ siteId: site.id, siteName: site.name, machineId: null, machineCode: null, visitId, stopgapId: null },
      ...{ orderId: null, documentId: invoice.id, answerId: null },
      ...(told === missing
        ? {
            sentence: `Invoice ${invoice.number} does not charge what came to light after it was issued: ${what}.`,
            choice: 'Amend the document: what is on record by then is charged. Or leave it as it is.',
            clauses: { sentence: clause('document-lacks', values), choice: clause('amend-or-leave') },
          }
        : {
            sentence: `Invoice ${invoice.number} charges what was taken back after it was issued: ${what}.`,
            choice: 'Amend the document: what is on record by then is charged. Or leave it as it is.',
            clauses: { sentence: clause('document-beyond', values), choice: clause('amend-or-leave') },
          }),
      move: null,
    });
  }
  return alerts;
}

const named = ({ kind, name, machineCode, quantity }: Line) =>
  kind === 'part' ? `${quantity} × ${name}` : `${machineCode}: ${name}`;

/** Closed visits of which a late record counts, or work or parts were taken back, since a day. */
async function visitsPutRight(tx: Tx, since: Date): Promise<string[]> {
  const late = await tx.fieldRecord.findMany({
    where: { state: 'accepted', visitId: { not: null }, decidedAt: { gte: since } },
    select: { visitId: true },
  });
  const takenBack = await tx.auditEntry.findMany({
    where: { action: { in: ['completion.taken-back', 'part-use.taken-back'] }, at: { gte: since } },
    select: { detail: true },
  });
  const ids = [...late, ...takenBack.map(({ detail }) => detail as { visitId?: string | null })];
  return [...new Set(ids.flatMap(({ visitId }) => visitId ?? []))].sort();
}
