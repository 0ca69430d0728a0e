import type { ChargeDocument } from './charge-document.js';
import type { ChargeSettings } from './charge-settings.js';
import { amount, Exact, sum } from './money.js';

/** One row of the journal. Amounts are decimal strings; either debit or credit is empty. */
export interface JournalRow {
  /** The document's id: a receiver that has it has the whole entry. */
  readonly entryId: string;
  readonly line: number;
  readonly date: string;
  readonly document: string;
  readonly account: string;
  readonly customer: string;
  readonly item: string;
  readonly quantity: string;
  readonly unit: string;
  readonly debit: string;
  readonly credit: string;
  readonly currency: string;
  readonly taxCode: string;
  readonly memo: string;
}

/** The entry of an issued document: the receivable against revenue and taxes, or the other way round for a credit. */
export function journalEntry(
  entryId: string,
  document: ChargeDocument,
  accounts: ChargeSettings['accounts'],
): JournalRow[] {
  const rows: JournalRow[] = [];
  const isCredit = document.kind === 'credit';
  const post = (account: string, side: 'debit' | 'credit', value: string, more: Partial<JournalRow>) => {
    if (new Exact(value).isZero() && rows.length > 0) return;
    const debited = (side === 'debit') !== isCredit;
    rows.push({
      entryId,
      line: rows.length + 1,
      date: document.issuedOn!,
      document: document.number!,
      account,
      customer: document.buyer.code,
      item: '',
      quantity: '',
      unit: '',
      debit: debited ? value : '',
      credit: debited ? '' : value,
      currency: document.currency,
      taxCode: '',
      memo: '',
      ...more,
    });
  };
  post(accounts.receivable, 'debit', document.totals.payable, { memo: `${document.kind} ${document.site.name}` });
  for (const line of document.lines) {
    post(accounts.revenue[line.kind], 'credit', line.net, {
      item: line.itemCode,
      quantity: line.quantity,
      unit: line.unitCode,
      taxCode: line.tax.rates.map((rate) => rate.jurisdiction).join('+') || line.tax.category,
      memo: line.name,
    });
  }
  for (const charge of document.charges) {
    post(accounts.revenue[charge.kind], 'credit', charge.amount, { memo: charge.reason });
  }
  for (const tax of document.taxes) {
    post(accounts.salesTax, 'credit', tax.tax, {
      taxCode: tax.rate?.jurisdiction ?? tax.category,
      memo: tax.rate ? `${tax.rate.percent} % of ${tax.base}` : '',
    });
  }
  return rows;
}

/** Debits less credits of an entry; anything but zero is a fault. */
export function imbalance(rows: readonly JournalRow[], currency: string): string {
  const of = (side: 'debit' | 'credit') => sum(rows.map((row) => row[side] || '0'));
  return amount(of('debit').minus(of('credit')), currency);
}
