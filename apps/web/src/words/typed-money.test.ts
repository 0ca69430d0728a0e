import { expect, test } from '@jest/globals';
import { formatsFor } from './formats.js';
import { minorUnits, moneyPattern, typedMoney } from './typed-money.js';

/** Digits after the point: ISO 4217, list one. */
test.each([
  ['JPY', 0, '12840', 12_840],
  ['USD', 2, '128.40', 12_840],
  ['BHD', 3, '12.840', 12_840],
])('an amount in %s is typed with its own %d digits and comes back the same', (currency, digits, typed, minor) => {
  const { currencyDigits } = formatsFor('en', { timeZone: 'UTC', currency, units: 'us' });
  expect(currencyDigits).toBe(digits);
  expect(typedMoney(minor, currencyDigits)).toBe(typed);
  expect(minorUnits(typed, currencyDigits)).toBe(minor);
  expect(typed).toMatch(new RegExp(`^(${moneyPattern(currencyDigits)})$`));
  expect('1.2345').not.toMatch(new RegExp(`^(${moneyPattern(currencyDigits)})$`));
});

test('a comma is a point, and no hundredth is lost to binary fractions', () => {
  expect(minorUnits(' 12,5', 2)).toBe(1250);
  for (let cents = 0; cents < 2000; cents += 1) expect(minorUnits(typedMoney(cents, 2), 2)).toBe(cents);
});
