import { asKept, PART_UNITS, SKILLS } from '../../words/kept-terms.js';
import { minorUnits, typedMoney } from '../../words/typed-money.js';
import type { Words } from '../../words/words.js';
import type { Field, FieldKind } from './kinds.js';

/** A place on the ground needs no more: the sixth digit of a degree is a hand's breadth. */
const PLACES = 1e6;

/** A field that names any number of rows. */
export function isMany(kind: FieldKind): boolean {
  return typeof kind === 'object' && 'many' in kind;
}

/**
 * What stands in a form field for a value of the wire, and back. Money is typed as decimals and kept in minor units;
 * skills and units of parts are typed in either language.
 */
export function toTyped({ kind }: Field, value: unknown, words: Pick<Words, 'currencyDigits' | 'named'>): unknown {
  if (kind === 'money')
    return value === null || value === undefined ? '' : typedMoney(Number(value), words.currencyDigits);
  if (kind === 'skill') return value ? skillNames([String(value)], words) : '';
  if (kind === 'part-unit') return value ? words.named(`part-unit.${value}`, String(value)) : '';
  if (kind === 'skills') return Array.isArray(value) ? skillNames(value as string[], words) : '';
  if (kind === 'yes-no') return value === true;
  if (kind === 'decimal' && typeof value === 'number') return String(Math.round(value * PLACES) / PLACES);
  if (kind === 'windows' || kind === 'included-items' || isMany(kind)) return value ?? [];
  return value === null || value === undefined ? '' : String(value);
}

/** @param digits after the point of the shop's currency @returns undefined where nothing was typed and nothing is needed */
export function fromTyped({ kind, optional }: Field, typed: unknown, digits: number): unknown {
  if (kind === 'yes-no' || kind === 'windows' || kind === 'included-items' || isMany(kind)) return typed;
  const text = String(typed ?? '').trim();
  if (kind === 'skills')
    return text
      .split(/[\s,;]+/)
      .filter(Boolean)
      .map((skill) => asKept(SKILLS, skill));
  if (text === '') return optional ? null : kind === 'text' || kind === 'long' ? '' : undefined;
  if (kind === 'skill') return asKept(SKILLS, text);
  if (kind === 'part-unit') return asKept(PART_UNITS, text);
  if (kind === 'money') return minorUnits(text, digits);
  if (kind === 'whole' || kind === 'decimal') return Number(text.replace(',', '.'));
  if (kind === 'hours') return text.replace(',', '.');
  return text;
}

/** The value as text for a list. */
export function shownValue(
  field: Field,
  value: unknown,
  words: Words,
  labelOf: (field: Field, value: unknown) => string,
): string {
  const { kind } = field;
  if (value === null || value === undefined || value === '') return '–';
  if (kind === 'money') return words.money(Number(value));
  if (kind === 'date') return words.dayOfYear(String(value));
  if (kind === 'yes-no') return words.t(value === true ? 'yes' : 'no');
  if (kind === 'skills') return skillNames(value as string[], words) || '–';
  if (kind === 'whole' || kind === 'decimal') return words.number(Number(value), 5);
  if (typeof kind === 'object' && 'oneOf' in kind) return words.named(`${kind.words}.${value}`, String(value));
  if (isMany(kind)) return (value as unknown[]).map((each) => labelOf(field, each)).join(', ') || '–';
  if (typeof kind === 'object') return labelOf(field, value);
  return String(value);
}

function skillNames(skills: readonly string[], { named }: Pick<Words, 'named'>): string {
  return skills.map((skill) => named(`skill.${skill}`, skill)).join(', ');
}
