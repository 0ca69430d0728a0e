import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from '@jest/globals';
import { en } from './en.js';
import { formatsFor } from './formats.js';
import { said } from './said.js';
import type { Words } from './words.js';

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
  const rules = [...texts.matchAll(/offer\(\s*'([a-z-]+)'/g)].map(([, rule]) => rule!);
  expect(rules.length).toBeGreaterThan(9);
  expect(rules.filter((rule) => !Object.hasOwn(en, `fix.${rule}`))).toEqual([]);
});

test('values are written by their names; what has no words keeps those of the service', () => {
  const told: unknown[] = [];
  const words = {
    ...formatsFor('es', { timeZone: 'UTC', currency: 'USD', units: 'us' }),
    named: (key: string, fallback: string) => (key.endsWith('.known') ? key : fallback),
    t: (key: string, values: object) => told.push({ key, ...values }) && 'worded',
    work: ({ title, slot }: { title: string; slot: string | null }) => `${title}/${slot}`,
  } as unknown as Words;
  const values = { byDate: '2026-06-08', wishDates: '2026-06-09 2026-06-10', extraCents: 1250, visitMinutes: 95 };
  const work = { workCode: 'belts', workTitle: 'Belts', workSlot: '' };
  expect(said({ key: 'known', values: { ...values, ...work, site: 'S1' } }, 'English.', words)).toBe('worded');
  expect(told).toEqual([
    {
      key: 'said.known',
      byDate: 'lun, 8 de jun',
      wishDates: 'mar, 9 de jun, mié, 10 de jun',
      extraCents: '$12.50',
      visitMinutes: '1 h 35 min',
      site: 'S1',
      work: 'Belts/null',
    },
  ]);
  expect(said({ key: 'unheard-of', values: {} }, 'English.', words)).toBe('English.');
  expect(said(undefined, 'English.', words)).toBe('English.');
});
