import { type ChargeDocument, checkDocument, checkIssuable, creditOf, issueDocument } from '@deckround/billing';
import { DomainError } from '@deckround/platform';
import { dateColumn, wallClockOf } from '@deckround/register-store';
import { emitEvent, type Tx } from '@deckround/store';
import type { Actor } from '../access/actor.js';
import { nextChange, recordChange } from '../accounting/changes.js';
import { audit } from '../audit/audit.js';
import type { DocumentRow } from './document-view.js';
import { termsOf } from './settings.js';

/** Gives a draft its number. The same transaction tells accounting, so that neither can happen without the other. */
export async function issueDraft(tx: Tx, actor: Actor, row: DocumentRow, now: Date): Promise<void> {
  if (row.state !== 'draft')
    throw new DomainError('document-issued', `It was issued before, as number ${row.number}: read it again.`);
  const draft = row.document as unknown as ChargeDocument;
  const faults = [...checkIssuable(draft), ...checkDocument(draft)];
  if (faults.length > 0) {
    throw new DomainError(
      'document-incomplete',
      'Something is missing: complete the charge settings, then work the draft out again.',
      faults,
    );
  }
  const customer = await tx.customer.findUniqueOrThrow({ where: { id: row.customerId } });
  const change = await nextChange(tx, actor.shopId);
  const { number, issuedOn } = await nextNumber(tx, actor.shopId, now);
  const document = issueDocument(draft, { number: String(number), issuedOn, termsDays: customer.termsDays });
  await tx.chargeDocument.update({
    where: { id: row.id },
    data: {
      ...{ state: 'issued', number, issuedAt: now },
      issuedOn: dateColumn(issuedOn),
      dueOn: dateColumn(document.dueOn!),
      document: document as object,
      // The accounts of that day: a journal made again later is the same.
      record: { ...(row.record as object), accounts: (await termsOf(tx, row.customerId)).settings.accounts },
      version: { increment: 1 },
    },
  });
  await tx.accountingState.create({ data: { shopId: actor.shopId, documentId: row.id } });
  await recordChange(tx, actor.shopId, change, row.id, 'issued', now);
  await audit(tx, actor, { action: 'document.issued', ...subject(row.id), detail: { number } }, now);
  await emitEvent(
    tx,
    actor.shopId,
    'document.issued',
    { documentId: row.id, number: String(number), sequence: change },
    now,
  );
}

/** Takes an issued document back by another. @returns the credit's id */
export async function creditDocument(
  tx: Tx,
  actor: Actor,
  row: DocumentRow,
  reason: string,
  now: Date,
): Promise<string> {
  if (row.state !== 'issued') throw new DomainError('conflict', 'It is a draft still: change it instead.');
  if (row.kind !== 'invoice') throw new DomainError('conflict', 'A credit cannot be credited: bill the visit again.');
  const change = await nextChange(tx, actor.shopId);
  if (await tx.chargeDocument.findFirst({ where: { creditsId: row.id } }))
    throw new DomainError('conflict', 'It was credited before: read it again.');
  const { number, issuedOn } = await nextNumber(tx, actor.shopId, now);
  const issued = row.document as unknown as ChargeDocument;
  const document = creditOf(issued, { number: String(number), issuedOn, note: reason });
  const credit = await tx.chargeDocument.create({
    data: {
      ...{ shopId: actor.shopId, visitId: row.visitId, customerId: row.customerId, siteId: row.siteId },
      ...{ kind: 'credit', state: 'issued', number, currency: row.currency, totalMinor: row.totalMinor },
      ...{ servicedOn: row.servicedOn, issuedOn: dateColumn(issuedOn), issuedAt: now, creditsId: row.id },
      record: { reason, accounts: (row.record as { accounts: object }).accounts },
      document: document as object,
    },
  });
  await tx.accountingState.create({ data: { shopId: actor.shopId, documentId: credit.id } });
  await recordChange(tx, actor.shopId, change, credit.id, 'credited', now);
  await audit(tx, actor, { action: 'document.credited', ...subject(row.id), detail: { number, reason } }, now);
  const told = { documentId: credit.id, creditsId: row.id, number: String(number), sequence: change };
  await emitEvent(tx, actor.shopId, 'document.credited', told, now);
  return credit.id;
}

/** The caller holds the shop's sequence row, so that no two issues take one number. */
async function nextNumber(tx: Tx, shopId: string, now: Date): Promise<{ number: number; issuedOn: string }> {
  const shop = await tx.shop.findUniqueOrThrow({ where: { id: shopId } });
  const { _max } = await tx.chargeDocument.aggregate({ _max: { number: true } });
  return { number: (_max.number ?? 0) + 1, issuedOn: wallClockOf(now, shop.timeZone).slice(0, 10) };
}

function subject(subjectId: string) {
  return { subjectKind: 'charge-document', subjectId };
}
