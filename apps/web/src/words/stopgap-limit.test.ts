import { expect, test } from '@jest/globals';
import { en } from './en.js';
import { es } from './es.js';
import { formatsFor } from './formats.js';
import { stopgapLimit } from './stopgap-limit.js';
import { wordsOf } from './words-of.js';

const SHOP = { timeZone: 'America/Chicago', currency: 'USD', units: 'us' } as const;
const english = wordsOf('en', en, formatsFor('en', SHOP));
const spanish = wordsOf('es', es, formatsFor('es', SHOP));
const said = (words: typeof english, limitHours: string | null, limitOn: string | null) =>
  stopgapLimit({ limitHours, countedFrom: '2026-06-03', limitOn }, words, words.day).replaceAll('\u00a0', ' ');

test('the limit of a stopgap says from when its hours count, and which of two limits ends it', () => {
  expect(said(english, '25', null)).toBe('holds for 25.0 h from Wed, Jun 3 on');
  expect(said(english, null, '2026-06-15')).toBe('holds until Mon, Jun 15');
  expect(said(english, '25', '2026-06-15')).toBe(
    'holds for 25.0 h from Wed, Jun 3 on, or until Mon, Jun 15, whichever comes first',
  );
  expect(said(spanish, '25', '2026-06-15')).toBe(
    'aguanta 25.0 h desde el mié, 3 de jun, o hasta el lun, 15 de jun, lo que ocurra primero',
  );
  expect(said(english, null, null)).toBe('');
});
