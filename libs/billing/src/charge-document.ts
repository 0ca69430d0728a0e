import type { Address, DocumentForm, LineKind } from './charge-settings.js';
import type { Coverage, MachineMark } from './visit-record.js';

/** UNCL 5305: standard rate, exempt, zero rated, outside the scope of tax. */
export type TaxCategory = 'S' | 'E' | 'Z' | 'O';

export interface TaxRate {
  readonly jurisdiction: string;
  readonly level: 'state' | 'local';
  readonly percent: string;
}

export interface TaxMark {
  readonly category: TaxCategory;
  /** One in the EN form, any number elsewhere; none unless the category is S. */
  readonly rates: readonly TaxRate[];
  /** Of an exemption, or of being outside the scope. */
  readonly reason: string | null;
}

export interface ChargeLine {
  readonly id: string;
  readonly kind: LineKind;
  readonly name: string;
  /** The shop's own code of the work or part. */
  readonly itemCode: string;
  readonly quantity: string;
  /** UN/ECE Recommendation 20. */
  readonly unitCode: string;
  readonly unitPrice: string;
  /** The price is for so many units: 60 when minutes are charged by the hour. */
  readonly priceBase: string;
  readonly net: string;
  readonly tax: TaxMark;
  readonly machine: MachineMark | null;
  readonly coverage: Coverage | null;
}

/** A charge on the whole document: travel, or what is missing to the minimum. */
export interface DocumentCharge {
  readonly kind: LineKind;
  readonly reason: string;
  readonly amount: string;
  readonly tax: TaxMark;
}

export interface TaxSubtotal {
  readonly category: TaxCategory;
  /** null unless the category is S. */
  readonly rate: TaxRate | null;
  readonly reason: string | null;
  readonly base: string;
  readonly tax: string;
}

export interface Totals {
  readonly lines: string;
  readonly charges: string;
  readonly beforeTax: string;
  readonly tax: string;
  readonly withTax: string;
  readonly payable: string;
}

/** The money of a document; who and when come with it once it is issued. */
export interface Priced {
  readonly currency: string;
  readonly lines: readonly ChargeLine[];
  readonly charges: readonly DocumentCharge[];
  readonly taxes: readonly TaxSubtotal[];
  readonly totals: Totals;
}

export interface Party {
  /** The shop's own word for it. */
  readonly code: string;
  readonly legalName: string;
  readonly taxNumber: string;
  readonly address: Address;
}

/** What accounting receives. */
export interface ChargeDocument extends Priced {
  readonly kind: 'invoice' | 'credit';
  readonly form: DocumentForm;
  /** null until it is issued. */
  readonly number: string | null;
  readonly issuedOn: string | null;
  readonly dueOn: string | null;
  readonly servicedOn: string;
  readonly site: { readonly code: string; readonly name: string };
  readonly purchaseOrder: string;
  readonly seller: Party;
  readonly buyer: Party;
  /** The document that a credit takes back, or that this one replaces. */
  readonly refersTo: { readonly number: string; readonly issuedOn: string } | null;
  readonly note: string;
}
