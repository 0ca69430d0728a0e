import { type Address, type ChargeSettings, DEFAULT_CHARGES, type Party } from '@deckround/billing';
import type { Tx } from '@deckround/store';

/** What the charge settings of a customer may say of the one who pays. */
export interface BuyerTerms {
  readonly legalName?: string;
  readonly taxNumber?: string;
  readonly address?: Address;
  readonly purchaseOrder?: string;
  readonly exemptionCertificate?: string;
}

export interface Terms {
  readonly settings: ChargeSettings;
  readonly buyer: BuyerTerms;
}

/** The shop's settings over the starting values; version 0 = never changed. */
export async function shopCharges(tx: Tx): Promise<{ version: number; settings: ChargeSettings }> {
  const row = await tx.chargeSettings.findFirst({ where: { customerId: null } });
  return { version: row?.version ?? 0, settings: merged(DEFAULT_CHARGES, row?.settings ?? {}) };
}

/** The settings as they hold for a customer. */
export async function termsOf(tx: Tx, customerId: string): Promise<Terms> {
  const { settings } = await shopCharges(tx);
  const row = await tx.chargeSettings.findFirst({ where: { customerId } });
  const { buyer = {}, ...own } = (row?.settings ?? {}) as Partial<ChargeSettings> & { buyer?: BuyerTerms };
  return { settings: merged(settings, own), buyer };
}

/** Objects are merged field by field; lists and rules replace what stands. */
export function merged<T extends object>(base: T, changes: unknown): T {
  const result = { ...base } as Record<string, unknown>;
  for (const [key, value] of Object.entries(changes as Record<string, unknown>)) {
    const before = result[key];
    result[key] = isPlain(before) && isPlain(value) && !('rule' in value) ? merged(before, value) : value;
  }
  return result as T;
}

/** A field set to null is one that no longer differs. Lists keep theirs: there null has a meaning. */
export function withoutNulls(settings: object): object {
  return Object.fromEntries(
    Object.entries(settings)
      .filter(([, value]) => value !== null)
      .map(([key, value]) => [key, isPlain(value) ? withoutNulls(value) : value]),
  );
}

function isPlain(value: unknown): value is object {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

const NO_ADDRESS: Address = { street: '', city: '', postalCode: '', subdivision: '', country: 'US' };

export function buyerOf(customer: { code: string; name: string }, terms: BuyerTerms): Party {
  return {
    code: customer.code,
    legalName: terms.legalName || customer.name,
    taxNumber: terms.taxNumber ?? '',
    address: terms.address ?? NO_ADDRESS,
  };
}

export function exemptionOf(customer: { taxExempt: boolean }, terms: BuyerTerms): string | null {
  if (!customer.taxExempt) return null;
  return terms.exemptionCertificate ? `Exempt: certificate ${terms.exemptionCertificate}` : 'Exempt customer';
}
