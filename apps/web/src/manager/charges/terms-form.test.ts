import { DEFAULT_CHARGES } from '@deckround/billing';
import { expect, test } from '@jest/globals';
import type { Settings } from './setting-fields.js';
import { changesOf, formOf, type Terms } from './terms-form.js';

const shop = DEFAULT_CHARGES as Settings;

test('a customer without terms of their own is charged as everybody, and saving that states nothing', () => {
  const form = formOf(shop, {});
  expect(form.labour).toEqual(shop.labour);
  expect(Object.values(form.differs)).toEqual([false, false, false, false, false]);
  const { buyer, ...others } = changesOf(form, shop);
  expect(new Set(Object.values(others))).toEqual(new Set([null]));
  expect(new Set(Object.values(buyer))).toEqual(new Set([null]));
});

test('only what is not the shop’s is stated, so that the rest follows the shop', () => {
  const terms: Terms = { labour: { ratePerHour: '120.00' }, minimumCharge: '80.00' };
  const form = formOf(shop, terms);
  expect(form.labour).toEqual({ ...shop.labour, ratePerHour: '120.00' });
  expect(form.differs).toMatchObject({ labour: true, minimum: true, travel: false });
  expect(changesOf(form, shop)).toMatchObject({
    labour: { ratePerHour: '120.00', overtimePercent: null, rounding: null },
    minimumCharge: '80.00',
    travel: null,
  });
});

test('an area given back to the shop takes its terms back, whatever was typed there', () => {
  const form = formOf(shop, { travel: { rule: 'none' }, taxes: [] });
  const back = { ...form, differs: { ...form.differs, travel: false } };
  expect(changesOf(back, shop)).toMatchObject({ travel: null, taxes: [] });
});
