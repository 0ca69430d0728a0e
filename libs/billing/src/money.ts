import { Decimal } from 'decimal.js';

/** Sums and products of money stay exact far beyond any invoice; ties are rounded away from zero (half-up). */
export const Exact = Decimal.clone({ precision: 60, rounding: Decimal.ROUND_HALF_UP });
export type Numeric = Decimal.Value;

// ISO 4217, minor unit column; every other currency has 2. Intl.NumberFormat follows CLDR instead and differs.
const MINOR_UNITS: Readonly<Record<number, string>> = {
  0: 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF',
  3: 'BHD IQD JOD KWD LYD OMR TND',
  4: 'CLF UYW',
};

/** Decimal places of a currency's amounts. */
export function minorUnits(currency: string): number {
  for (const places of [0, 3, 4]) if (MINOR_UNITS[places]!.split(' ').includes(currency)) return places;
  return 2;
}

export function roundTo(value: Numeric, places: number): Decimal {
  return new Exact(value).toDecimalPlaces(places, Decimal.ROUND_HALF_UP);
}

/** An amount of money as the documents hold it: rounded half-up to the currency's places, written out. */
export function amount(value: Numeric, currency: string): string {
  return new Exact(value).toFixed(minorUnits(currency), Decimal.ROUND_HALF_UP);
}

export function sum(values: Iterable<Numeric>): Decimal {
  let total = new Exact(0);
  for (const value of values) total = total.plus(value);
  return total;
}

/** Whole minor units of an amount, as the database keeps it. */
export function toMinor(value: Numeric, currency: string): number {
  return roundTo(new Exact(value).times(new Exact(10).pow(minorUnits(currency))), 0).toNumber();
}

export function fromMinor(minor: Numeric, currency: string): string {
  return amount(new Exact(minor).div(new Exact(10).pow(minorUnits(currency))), currency);
}
