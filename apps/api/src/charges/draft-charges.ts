import { type ChargeDocument, checkDocument, draftDocument, priceVisit, toMinor } from '@deckround/billing';
import { dateColumn } from '@deckround/register-store';
import type { Tx } from '@deckround/store';
import { buildRecord } from './build-record.js';
import { type ChargedVisit, type Facts, factsOf, findChargedVisit, latestInvoice, workDone } from './charged-visit.js';
import { buyerOf, exemptionOf, termsOf } from './settings.js';
import { settleStock } from './settle-stock.js';
import { requireDone, standingFacts, withStated } from './stated-facts.js';

/** What a visit costs a customer by the settings of today. */
async function priceOf(
  tx: Tx,
  visit: ChargedVisit,
  customerId: string,
  facts: Facts,
  replaces: ChargeDocument['refersTo'],
) {
  const customer = await tx.customer.findUniqueOrThrow({ where: { id: customerId } });
  const { settings, buyer } = await termsOf(tx, customerId);
  const standing = standingFacts(facts, workDone(visit));
  const payer = { customerId, exemption: exemptionOf(customer, buyer) };
  const record = await buildRecord(tx, visit, settings, standing, payer);
  const document = draftDocument(priceVisit(record, settings), record, settings, {
    seller: { code: visit.shop.name, ...settings.seller },
    buyer: buyerOf(customer, buyer),
    purchaseOrder: facts.purchaseOrder ?? buyer.purchaseOrder ?? '',
    note: facts.note ?? '',
    replaces,
  });
  const faults = checkDocument(document);
  if (faults.length > 0) throw new Error(`The document does not add up: ${JSON.stringify(faults)}`);
  const travel = document.charges.find((charge) => charge.kind === 'travel')?.amount ?? '0';
  return {
    currency: document.currency,
    totalMinor: toMinor(document.totals.payable, document.currency),
    travelMinor: toMinor(travel, document.currency),
    servicedOn: dateColumn(document.servicedOn),
    record: { facts, record } as object,
    document: document as object,
  };
}

/** A document that was credited, and that a new draft stands for. */
interface Replaced {
  readonly id: string;
  readonly customerId: string;
  readonly refersTo: ChargeDocument['refersTo'];
  /** What was stated for it. */
  readonly facts: Facts;
}

/**
 * Drafts the document of a visit that was just finished; a visit on which nothing was done has none. Whoever the site
 * belongs to then pays: later drafts of the visit keep to that customer, though the site may be another's by then. What was
 * stated before, on a credited document or on a draft that went, stands unless something else is stated now.
 */
export async function draftCharges(
  tx: Tx,
  visitId: string,
  stated: Facts,
  replaces: Replaced | null = null,
): Promise<string | null> {
  const visit = await findChargedVisit(tx, visitId);
  const done = workDone(visit);
  requireDone(stated, done);
  const facts = withStated(replaces?.facts ?? (visit.statedCharges as Facts | null) ?? {}, stated);
  if (done.length === 0) {
    if (Object.keys(facts).length > 0) await keepStated(tx, visitId, facts);
    await settleStock(tx, visitId);
    return null;
  }
  const customerId = replaces?.customerId ?? visit.site.customerId;
  const row = await tx.chargeDocument.create({
    data: {
      shopId: visit.shopId,
      visitId,
      siteId: visit.siteId,
      customerId,
      kind: 'invoice',
      replacesId: replaces?.id ?? null,
      ...(await priceOf(tx, visit, customerId, facts, replaces?.refersTo ?? null)),
    },
  });
  await settleStock(tx, visitId);
  return row.id;
}

/**
 * What came to light of a closed visit goes into its draft; an issued document stays, and is amended by a person. Where no
 * work is left, the draft goes, as a visit on which nothing was done has none; but not one in place of a credited document,
 * which would stand for nothing then. Stock follows what was used either way.
 */
export async function followLateFacts(tx: Tx, visitId: string): Promise<void> {
  const latest = await latestInvoice(tx, visitId);
  if (latest === null) await draftCharges(tx, visitId, {});
  else if (latest.state !== 'draft') await settleStock(tx, visitId);
  else if (latest.replacesId !== null || (await isAnythingDone(tx, visitId))) await redraftCharges(tx, latest);
  else {
    await keepStated(tx, visitId, factsOf(latest));
    await tx.chargeDocument.delete({ where: { id: latest.id } });
    await settleStock(tx, visitId);
  }
}

/** For the next draft of a visit that has none. */
async function keepStated(tx: Tx, visitId: string, statedCharges: Facts): Promise<void> {
  await tx.visit.update({ where: { id: visitId }, data: { statedCharges } });
}

async function isAnythingDone(tx: Tx, visitId: string): Promise<boolean> {
  return (await tx.visitItem.count({ where: { visitId, state: 'done' } })) > 0;
}

/** Computes a draft anew, by the settings and the work of today, with what is stated now over what was stated before. */
export async function redraftCharges(
  tx: Tx,
  draft: { id: string; visitId: string; customerId: string; document: unknown; record: unknown },
  stated: Facts = {},
): Promise<void> {
  const visit = await findChargedVisit(tx, draft.visitId);
  requireDone(stated, workDone(visit));
  const { refersTo } = draft.document as ChargeDocument;
  await tx.chargeDocument.update({
    where: { id: draft.id },
    data: {
      ...(await priceOf(tx, visit, draft.customerId, withStated(factsOf(draft), stated), refersTo)),
      version: { increment: 1 },
    },
  });
  await settleStock(tx, draft.visitId);
}
