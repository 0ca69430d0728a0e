import { describe, expect, it } from '@jest/globals';
import { amount, fromMinor, minorUnits, roundTo, toMinor } from './money.js';
import { lineNet, taxSubtotals } from './taxes.js';

// Arithmetic checked with decimal.js 10.6.0; where toFixed of a binary number goes wrong stands beside it.
describe('money', () => {
  it.each([
    ['2.345', '2.35'],
    ['2.355', '2.36'], // toFixed: 2.35
    ['1.005', '1.01'], // toFixed: 1.00
    ['-2.345', '-2.35'],
    ['0.125', '0.13'],
  ])('rounds %s half-up to %s', (value, rounded) => {
    expect(roundTo(value, 2).toFixed(2)).toBe(rounded);
  });

  it('taxes the sum once, not every line', () => {
    const tax = {
      category: 'S',
      rates: [{ jurisdiction: 'X', level: 'state', percent: '8.25' }],
      reason: null,
    } as const;
    const lines = ['10.33', '10.33', '10.33'].map((net) => ({ net, tax }));
    expect(taxSubtotals(lines, 'USD')).toMatchObject([{ base: '30.99', tax: '2.56' }]); // per line: 2.55
  });

  // ISO 4217, minor unit column.
  it.each([
    ['USD', 2],
    ['JPY', 0],
    ['KWD', 3],
    ['CLF', 4],
    ['MGA', 2], // CLDR says 0
  ])('knows that %s has %d decimals', (currency, places) => {
    expect(minorUnits(currency)).toBe(places);
    expect(amount('12.34567', currency)).toBe(roundTo('12.34567', places).toFixed(places));
    expect(fromMinor(toMinor('12.34567', currency), currency)).toBe(amount('12.34567', currency));
  });

  it('rounds a line once, price by quantity', () => {
    expect(lineNet('8.3450', '1', '2.5', 'USD')).toBe('20.86');
    expect(lineNet('95.00', '60', '20', 'USD')).toBe('31.67');
  });
});
