import type { Clause } from '../data/types.js';
import { en, type WordKey } from './en.js';
import type { Words } from './words-of.js';

/**
 * A sentence of the service in the reader's language, from its key and values; the service's own words where the key is
 * not known here or was not kept.
 */
export function said(clause: Clause | undefined, fallback: string, words: Words, prefix = 'said'): string {
  const key = `${prefix}.${clause?.key}`;
  if (clause === undefined || !Object.hasOwn(en, key)) return fallback;
  const { workCode, workTitle, workSlot, ...others } = clause.values;
  const values = Object.fromEntries(
    Object.entries(others).map(([name, value]) => [name, written(name, value, words)] as const),
  );
  const work: Readonly<Record<string, string>> =
    workCode === undefined
      ? {}
      : { work: words.work({ code: String(workCode), title: String(workTitle), slot: String(workSlot) || null }) };
  return words.t(key as WordKey, { ...values, ...work });
}

/** What is wrong with one field of a form, or one cell of a file. */
export function faultSaid(
  fault: { readonly detail: string; readonly clause?: Clause | undefined },
  words: Words,
): string {
  return said(fault.clause, words.sentence(fault.detail), words, 'fault');
}

function written(name: string, value: string | number, { day, minutes, money, named, anyOf, sentence }: Words): string {
  if (name.endsWith('Cents')) return money(Number(value));
  if (name.endsWith('Minutes')) return minutes(Number(value));
  if (name.endsWith('Date')) return day(String(value));
  if (name.endsWith('Dates')) return anyOf(String(value).split(' ').filter(Boolean).map(day));
  if (name === 'part') return sentence(String(value));
  return name === 'skill' ? named(`skill.${value}`, String(value)) : String(value);
}
