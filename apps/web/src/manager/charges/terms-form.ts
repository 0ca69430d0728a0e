import type { CustomerCharges } from '../../data/types.js';
import type { Settings } from './setting-fields.js';

export type Terms = CustomerCharges['terms'];
export const AREAS = ['labour', 'travel', 'parts', 'minimum', 'taxes'] as const;
export type Area = (typeof AREAS)[number];
type Priced = Pick<Settings, 'labour' | 'travel' | 'parts' | 'consumables' | 'minimumCharge' | 'taxes'>;
export type Buyer = Required<NonNullable<Terms['buyer']>>;

/** The form of a customer's terms: what holds for the customer, and in which areas it is not the shop's. */
export interface TermsForm extends Priced {
  readonly differs: Readonly<Record<Area, boolean>>;
  readonly buyer: Buyer;
}

const NO_BUYER: Buyer = {
  legalName: '',
  taxNumber: '',
  address: { street: '', city: '', postalCode: '', subdivision: '', country: 'US' },
  purchaseOrder: '',
  exemptionCertificate: '',
};

export function formOf(shop: Settings, terms: Terms): TermsForm {
  const { labour, travel, parts, consumables, minimumCharge, taxes } = shop;
  const isSome = (term: object | undefined) => Object.keys(term ?? {}).length > 0;
  return {
    labour: { ...labour, ...terms.labour },
    travel: terms.travel ?? travel,
    parts: { ...parts, ...terms.parts },
    consumables: terms.consumables ?? consumables,
    minimumCharge: terms.minimumCharge ?? minimumCharge,
    taxes: terms.taxes ?? taxes,
    differs: {
      labour: isSome(terms.labour),
      travel: terms.travel !== undefined,
      parts: isSome(terms.parts) || terms.consumables !== undefined,
      minimum: terms.minimumCharge !== undefined,
      taxes: terms.taxes !== undefined,
    },
    buyer: { ...NO_BUYER, ...terms.buyer },
  };
}

/**
 * What to send. Of rates and parts only the fields that are not the shop's, so that the others go on following the
 * shop's when these change; null takes back what stood.
 */
export function changesOf(form: TermsForm, shop: Settings) {
  const { differs, buyer } = form;
  return {
    labour: differs.labour ? different(form.labour, shop.labour) : null,
    travel: differs.travel ? form.travel : null,
    parts: differs.parts ? different(form.parts, shop.parts) : null,
    consumables: differs.parts && !isSame(form.consumables, shop.consumables) ? form.consumables : null,
    minimumCharge: differs.minimum ? form.minimumCharge : null,
    taxes: differs.taxes ? form.taxes : null,
    buyer: different(buyer, NO_BUYER),
  };
}

function different<T extends object>(own: T, shops: T): { [K in keyof T]: T[K] | null } {
  const fields = Object.entries(own) as [keyof T, T[keyof T]][];
  return Object.fromEntries(fields.map(([name, value]) => [name, isSame(value, shops[name]) ? null : value])) as {
    [K in keyof T]: T[K] | null;
  };
}

const isSame = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);
