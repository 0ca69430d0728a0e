import type { ChargeDocument, TaxMark } from './charge-document.js';
import { minorUnits } from './money.js';

export interface DocumentFault {
  /** JSON pointer into the document. */
  readonly pointer: string;
  readonly detail: string;
}

/**
 * Whether a document adds up to the cent. Shares no arithmetic with the pricing: whole numbers only, no library. The
 * published rules accept a tax that is wrong by up to one whole unit (BR-CO-17); this does not.
 */
export function checkDocument(document: ChargeDocument): DocumentFault[] {
  const faults: DocumentFault[] = [];
  const places = minorUnits(document.currency);
  const fault = (pointer: string, detail: string) => faults.push({ pointer, detail });
  const cents = (text: string, pointer: string): bigint => {
    const read = parse(text);
    if (read === null || (text.split('.')[1]?.length ?? 0) !== places)
      fault(pointer, `"${text}" is no amount with ${places} decimals`);
    return read === null ? 0n : halfUp(read.digits * 10n ** BigInt(places), 10n ** BigInt(read.places));
  };
  const expect = (pointer: string, found: string, wanted: bigint) => {
    if (cents(found, pointer) !== wanted) fault(pointer, `is ${found}, must be ${written(wanted, places)}`);
  };

  const bases = new Map<string, bigint>();
  const addBase = (mark: TaxMark, net: bigint) => {
    for (const rate of mark.category === 'S' ? mark.rates : [null]) {
      const key = groupKey(mark.category, rate, mark.reason);
      bases.set(key, (bases.get(key) ?? 0n) + net);
    }
  };
  let ofLines = 0n;
  for (const [index, line] of document.lines.entries()) {
    const [price, base, quantity] = [line.unitPrice, line.priceBase, line.quantity].map(parse);
    if (!price || !base || !quantity || base.digits <= 0n) {
      fault(`/lines/${index}`, 'price, base and quantity must be decimal numbers');
      continue;
    }
    const net = halfUp(
      price.digits * quantity.digits * 10n ** BigInt(base.places + places),
      base.digits * 10n ** BigInt(price.places + quantity.places),
    );
    expect(`/lines/${index}/net`, line.net, net);
    if (line.coverage && net !== 0n) fault(`/lines/${index}/coverage`, 'covered work costs nothing');
    ofLines += cents(line.net, `/lines/${index}/net`);
    addBase(line.tax, cents(line.net, `/lines/${index}/net`));
  }
  let ofCharges = 0n;
  for (const [index, charge] of document.charges.entries()) {
    if (charge.reason === '') fault(`/charges/${index}/reason`, 'a charge says what it is for');
    ofCharges += cents(charge.amount, `/charges/${index}/amount`);
    addBase(charge.tax, cents(charge.amount, `/charges/${index}/amount`));
  }
  let tax = 0n;
  for (const [index, subtotal] of document.taxes.entries()) {
    const key = groupKey(subtotal.category, subtotal.rate, subtotal.reason);
    const base = bases.get(key);
    if (base === undefined) fault(`/taxes/${index}`, 'no line is taxed so, or it stands here twice');
    else {
      expect(`/taxes/${index}/base`, subtotal.base, base);
      const percent = parse(subtotal.rate?.percent ?? '0');
      if (!percent) fault(`/taxes/${index}/rate/percent`, 'must be a decimal number');
      else
        expect(
          `/taxes/${index}/tax`,
          subtotal.tax,
          halfUp(base * percent.digits, 100n * 10n ** BigInt(percent.places)),
        );
    }
    bases.delete(key);
    tax += cents(subtotal.tax, `/taxes/${index}/tax`);
  }
  if (bases.size > 0) fault('/taxes', 'some lines have no tax subtotal');
  const { totals } = document;
  expect('/totals/lines', totals.lines, ofLines);
  expect('/totals/charges', totals.charges, ofCharges);
  expect('/totals/beforeTax', totals.beforeTax, ofLines + ofCharges);
  expect('/totals/tax', totals.tax, tax);
  expect('/totals/withTax', totals.withTax, ofLines + ofCharges + tax);
  expect('/totals/payable', totals.payable, ofLines + ofCharges + tax);
  return faults;
}

/** What keeps a draft from being issued, beside its sums. */
export function checkIssuable(document: ChargeDocument): DocumentFault[] {
  const faults: DocumentFault[] = [];
  const need = (isThere: boolean, pointer: string, detail: string) => {
    if (!isThere) faults.push({ pointer, detail });
  };
  need(document.seller.legalName !== '', '/seller/legalName', 'the charge settings need the shop’s legal name');
  need(document.buyer.legalName !== '', '/buyer/legalName', 'the customer needs a name');
  need(document.lines.length > 0, '/lines', 'there is nothing on it');
  if (document.form === 'en16931') {
    for (const party of ['seller', 'buyer'] as const) {
      need(
        /^[A-Z]{2}$/.test(document[party].address.country),
        `/${party}/address/country`,
        'the EN form needs a country',
      );
    }
    const marks = [...document.lines, ...document.charges].map((each) => each.tax);
    need(
      marks.every((mark) => mark.category === 'O') || document.seller.taxNumber !== '',
      '/seller/taxNumber',
      'the EN form needs the shop’s VAT number as soon as any tax exists',
    );
    need(
      marks.every((mark) => mark.rates.length <= 1),
      '/taxes',
      'the EN form knows one tax per line: set one rate, or use the sales tax form',
    );
    // Two decimals at most everywhere in the EN form (BR-DEC).
    need(minorUnits(document.currency) <= 2, '/currency', 'the EN form holds currencies with two decimals at most');
  }
  return faults;
}

interface Decimals {
  readonly digits: bigint;
  readonly places: number;
}

function parse(text: string): Decimals | null {
  const match = /^(-?)(\d{1,30})(?:\.(\d{1,20}))?$/.exec(text);
  if (!match) return null;
  const [, sign, whole, fraction = ''] = match;
  const digits = BigInt(whole! + fraction);
  return { digits: sign === '-' ? -digits : digits, places: fraction.length };
}

function halfUp(numerator: bigint, denominator: bigint): bigint {
  const magnitude = numerator < 0n ? -numerator : numerator;
  const rounded = (2n * magnitude + denominator) / (2n * denominator);
  return numerator < 0n ? -rounded : rounded;
}

function written(minor: bigint, places: number): string {
  const digits = (minor < 0n ? -minor : minor).toString().padStart(places + 1, '0');
  const whole = digits.slice(0, digits.length - places);
  return `${minor < 0n ? '-' : ''}${whole}${places === 0 ? '' : `.${digits.slice(-places)}`}`;
}

function groupKey(
  category: string,
  rate: { jurisdiction: string; level: string; percent: string } | null,
  reason: string | null,
) {
  return [category, rate?.jurisdiction, rate?.level, rate?.percent, reason].join('\u0000');
}
