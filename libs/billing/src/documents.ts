import type { ChargeDocument, Party, Priced } from './charge-document.js';
import type { ChargeSettings } from './charge-settings.js';
import type { VisitRecord } from './visit-record.js';

export interface DocumentFacts {
  readonly seller: Party;
  readonly buyer: Party;
  readonly purchaseOrder: string;
  readonly note: string;
  readonly replaces: ChargeDocument['refersTo'];
}

/** A draft: everything but its number and days. */
export function draftDocument(
  priced: Priced,
  record: VisitRecord,
  settings: ChargeSettings,
  facts: DocumentFacts,
): ChargeDocument {
  const { replaces, ...rest } = facts;
  return {
    ...priced,
    ...rest,
    kind: 'invoice',
    form: settings.form,
    number: null,
    issuedOn: null,
    dueOn: null,
    servicedOn: record.servicedOn,
    site: { code: record.siteCode, name: record.siteName },
    refersTo: replaces,
  };
}

export function issueDocument(
  draft: ChargeDocument,
  { number, issuedOn, termsDays }: { number: string; issuedOn: string; termsDays: number },
): ChargeDocument {
  const due = new Date(Date.parse(`${issuedOn}T00:00:00Z`) + termsDays * 86_400_000);
  return { ...draft, number, issuedOn, dueOn: due.toISOString().slice(0, 10) };
}

/** Takes a whole document back. The same amounts, so that both together are nothing to the cent. */
export function creditOf(
  issued: ChargeDocument,
  { number, issuedOn, note }: { number: string; issuedOn: string; note: string },
): ChargeDocument {
  return {
    ...issued,
    kind: 'credit',
    number,
    issuedOn,
    dueOn: null,
    note,
    refersTo: { number: issued.number!, issuedOn: issued.issuedOn! },
  };
}
