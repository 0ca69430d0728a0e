import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from '@jest/globals';
import { en } from './en.js';
import { es } from './es.js';
import { formatsFor } from './formats.js';
import { said } from './said.js';
import { wordsOf } from './words-of.js';

const ROOTS = ['../../../../libs/planning/src/', '../../../../apps/api/src/week-changes/'];

test('every clause that the service can say has words, and so has every rule that may give way', () => {
  const texts = ROOTS.flatMap((root) => {
    const folder = new URL(root, import.meta.url);
    return readdirSync(folder)
      .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'))
      .map((name) => readFileSync(new URL(name, folder), 'utf8'));
  }).join('\n');
  const calls = [...texts.matchAll(/clause\(([^;]*?)[,)]/gs)].flatMap(([, first]) => [
    ...first!.matchAll(/'([a-z-]+)'/g),
  ]);
  const keys = [...new Set(calls.map(([, key]) => key!))].filter((key) => key !== 'visit');
  expect(keys.length).toBeGreaterThan(18);
  expect(keys.filter((key) => !Object.hasOwn(en, `said.${key}`))).toEqual([]);
  const rules = [...texts.matchAll(/(?:offer\(\s*|\brule: )'([a-z-]+)'/g)].map(([, rule]) => rule!);
  expect(rules.length).toBeGreaterThan(12);
  expect(rules.filter((rule) => !Object.hasOwn(en, `fix.${rule}`))).toEqual([]);
});

test('every fault of a file or a field has words', () => {
  const read = (path: string) => readFileSync(new URL(`../../../../${path}`, import.meta.url), 'utf8');
  const files = ['columns', 'read-register', 'read-table'].map((name) => read(`libs/register/src/csv/${name}.ts`));
  const texts = [...files, read('apps/api/src/problems/fault-clause.ts')].join('\n');
  const plain = [...texts.matchAll(/'((?:cell|row|file|header|quote|no|low|days|form)-[a-z-]+)'/g)].map(
    ([, key]) => key!,
  );
  const kindsOf = (path: string, start: string) =>
    [...new RegExp(`${start}([^;,]*)`).exec(read(path))![1]!.matchAll(/'([a-z0-9-]+)'/g)].map(([, kind]) => kind!);
  const keys = [
    ...plain.filter((key) => key !== 'no-thousands'),
    ...kindsOf('libs/register/src/weekly-windows.ts', 'readonly kind: ').map((kind) => `windows-${kind}`),
    ...kindsOf('libs/register/src/csv/utf8-lines.ts', 'readonly kind: ').map((kind) => `file-${kind}`),
    ...['string', 'array'].flatMap((origin) => [`form-few-${origin}`, `form-many-${origin}`]),
  ];
  expect(keys.length).toBeGreaterThan(55);
  expect(keys.filter((key) => !Object.hasOwn(en, `fault.${key}`))).toEqual([]);
});

test('values are written by their names; what has no words keeps those of the service', () => {
  const words = wordsOf('es', es, formatsFor('es', { timeZone: 'UTC', currency: 'USD', units: 'us' }));
  const dearer = { key: 'dearer-alone', values: { extraCents: 1250, moreCents: 300 } };
  expect(said(dearer, 'English.', words)).toBe(
    'Una visita para esto costaría $12.50 además de su propio trabajo, $3.00 más que esperar.',
  );
  const wish = { site: 'South School', visitDate: '2026-06-08', wishDates: '2026-06-09 2026-06-10', reason: 'fair' };
  expect(said({ key: 'asks-to-move-to', values: wish }, 'English.', words)).toBe(
    'South School pide pasar la visita del lun, 8 de jun a: mar, 9 de jun o mié, 10 de jun. fair',
  );
  const work = { workCode: 'change-engine-oil', workTitle: 'Change engine oil and filter', workSlot: '' };
  const late = { part: 'Filter', machine: 'M1', comesDate: '2026-06-09', visitDate: '2026-06-08', ...work };
  expect(said({ key: 'part-after-visit', values: late }, 'English.', words)).toMatch(/^Filter para [^{]+ en M1 llega/);
  const shift = { key: 'shift', values: { shiftMinutes: 95 } };
  expect(said(shift, 'English.', words, 'fix')).toBe('un turno pudiera acabar 1\u00a0h\u00a035\u00a0min más tarde');
  expect(said({ key: 'unheard-of', values: {} }, 'English.', words)).toBe('English.');
  expect(said(undefined, 'English.', words)).toBe('English.');
});

test('a part of the starter catalogue is told by its name in the reader’s language, a shop’s own as it stands', () => {
  const formats = formatsFor('es', { timeZone: 'America/Chicago', currency: 'USD', units: 'us' });
  const known = (text: string) => (text === 'idler bracket, welded' ? 'soporte de tensor, soldado' : null);
  const spanish = wordsOf('es', es, formats, known);
  const order = { quantity: 1, orderedDate: '2026-05-20', expectedDate: '2026-06-01' };
  const late = (part: string) => said({ key: 'order-overdue', values: { ...order, part } }, 'fallback', spanish);
  expect(late('idler bracket, welded')).toContain('soporte de tensor, soldado');
  expect(late('bracket of our own')).toContain('bracket of our own');
});
