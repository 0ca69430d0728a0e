import { expect, test } from '@jest/globals';
import { IntlMessageFormat } from 'intl-messageformat';
import { en } from './en.js';
import { es } from './es.js';
import { formatsFor } from './formats.js';
import { addDays, minutesInto, mondayAfter } from './local-date.js';

test('every text can be read by the formatter, in both languages, with the same arguments', () => {
  expect(Object.keys(es).sort()).toEqual(Object.keys(en).sort());
  for (const [key, text] of Object.entries(en)) {
    const spanish = es[key as keyof typeof en];
    expect(() => new IntlMessageFormat(text, 'en-US')).not.toThrow();
    expect(() => new IntlMessageFormat(spanish, 'es-US')).not.toThrow();
    const namesOf = (message: string, locale: string) =>
      namesIn(new IntlMessageFormat(message, locale).getAst()).toSorted();
    expect([key, ...namesOf(spanish, 'es-US')]).toEqual([key, ...namesOf(text, 'en-US')]);
  }
});

/** Names of the arguments of a parsed message, however deep. */
function namesIn(parts: readonly unknown[]): string[] {
  const names = new Set<string>();
  const visit = (nodes: readonly unknown[]) => {
    for (const node of nodes as { type: number; value?: string; options?: Record<string, { value: unknown[] }> }[]) {
      if (node.type >= 1 && node.type <= 6 && typeof node.value === 'string') names.add(node.value);
      for (const option of Object.values(node.options ?? {})) visit(option.value);
    }
  };
  visit(parts);
  return [...names];
}

test('figures are written as the reader and the shop write them', () => {
  const us = formatsFor('en', { timeZone: 'America/Chicago', currency: 'USD', units: 'us' });
  const metric = formatsFor('es', { timeZone: 'America/Chicago', currency: 'JPY', units: 'metric' });
  expect(us.money(12_840)).toBe('$128.40');
  expect(metric.money(12_840)).toMatch(/12,?840/); // the yen has no minor unit (ISO 4217)
  expect(us.distance(84_921)).toBe('53\u00a0mi');
  expect(metric.distance(84_921)).toBe('85\u00a0km');
  expect(us.minutes(125)).toBe('2\u00a0h\u00a05\u00a0min');
  expect(us.day('2026-06-04')).toBe('Thu, Jun 4');
  expect(us.dayBeside('2026-05-01', '2026-06-04')).toBe('Fri, May 1');
  expect(us.dayBeside('2025-06-27', '2026-06-04')).toBe('Fri, Jun 27, 2025');
  expect(us.range('2026-06-08T12:19:00Z', '2026-06-08T13:41:00Z')).toBe('07:19–\u206008:41');
});

test('local dates keep their day across months and clock changes', () => {
  expect(addDays('2026-02-28', 1)).toBe('2026-03-01');
  expect(mondayAfter('2026-06-04')).toBe('2026-06-08');
  expect(mondayAfter('2026-06-08')).toBe('2026-06-15');
  expect(minutesInto('2026-06-08', '2026-06-08T12:19:00Z', 'America/Chicago')).toBe(439);
  expect(minutesInto('2026-06-08', '2026-06-09T05:30:00Z', 'America/Chicago')).toBe(1470);
});
