import type { DocumentCharge, Priced, TaxMark, TaxSubtotal } from './charge-document.js';
import type { ChargeSettings, LineKind } from './charge-settings.js';
import { amount, Exact, sum } from './money.js';

/** How lines of a kind are taxed at a site. */
export function taxMark(settings: ChargeSettings, kind: LineKind, siteCode: string, exemption: string | null): TaxMark {
  const here = settings.taxes.filter((tax) => tax.siteCodes === null || tax.siteCodes.includes(siteCode));
  // EN 16931 allows no other category beside "outside the scope" (BR-O-11): it is taken where no tax exists at all.
  if (here.length === 0) return { category: 'O', rates: [], reason: 'Not subject to tax' };
  if (exemption !== null) return { category: 'E', rates: [], reason: exemption };
  const rates = here
    .filter((tax) => tax.on.includes(kind))
    .map(({ jurisdiction, level, percent }) => ({ jurisdiction, level, percent }));
  return rates.length === 0 ? { category: 'Z', rates: [], reason: null } : { category: 'S', rates, reason: null };
}

interface Taxed {
  readonly net: string;
  readonly tax: TaxMark;
}

/** One subtotal per category and rate of a jurisdiction: rounded once on the sum, never per line. */
export function taxSubtotals(taxed: readonly Taxed[], currency: string): TaxSubtotal[] {
  const groups = new Map<string, Omit<TaxSubtotal, 'base' | 'tax'> & { nets: string[] }>();
  for (const { net, tax } of taxed) {
    for (const rate of tax.category === 'S' ? tax.rates : [null]) {
      const key = JSON.stringify([tax.category, rate, tax.reason]);
      const group = groups.get(key) ?? { category: tax.category, rate, reason: tax.reason, nets: [] };
      group.nets.push(net);
      groups.set(key, group);
    }
  }
  return [...groups.values()].map(({ nets, ...group }) => {
    const base = sum(nets);
    const tax = base.times(group.rate?.percent ?? 0).div(100);
    return { ...group, base: amount(base, currency), tax: amount(tax, currency) };
  });
}

/** Taxes and totals of lines and charges that are rounded already: sums of rounded amounts, not rounded again. */
export function withTotals(currency: string, lines: Priced['lines'], charges: readonly DocumentCharge[]): Priced {
  const taxes = taxSubtotals([...lines, ...charges.map(({ amount: net, tax }) => ({ net, tax }))], currency);
  const ofLines = sum(lines.map((line) => line.net));
  const ofCharges = sum(charges.map((charge) => charge.amount));
  const beforeTax = ofLines.plus(ofCharges);
  const tax = sum(taxes.map((each) => each.tax));
  const withTax = amount(beforeTax.plus(tax), currency);
  return {
    currency,
    lines,
    charges,
    taxes,
    totals: {
      lines: amount(ofLines, currency),
      charges: amount(ofCharges, currency),
      beforeTax: amount(beforeTax, currency),
      tax: amount(tax, currency),
      withTax,
      payable: withTax,
    },
  };
}

/** The net amount of a line: price by quantity, rounded to the cent. */
export function lineNet(price: string, priceBase: string, quantity: string, currency: string): string {
  return amount(new Exact(price).times(quantity).div(priceBase), currency);
}
