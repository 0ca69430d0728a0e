import { expect, test } from '@jest/globals';
import { en } from '../../words/en.js';
import { es } from '../../words/es.js';
import { formatsFor } from '../../words/formats.js';
import { wordsOf } from '../../words/words-of.js';
import type { Field } from './kinds.js';
import { fromTyped, toTyped } from './row-values.js';

const field = (kind: Field['kind'], optional = false) => ({ name: 'x', kind, optional }) as Field;

const shown = { timeZone: 'UTC', currency: 'USD', units: 'us' } as const;
const english = wordsOf('en', en, formatsFor('en', shown));
const spanish = wordsOf('es', es, formatsFor('es', shown));

test('values go into a form and come back the same', () => {
  for (const [kind, value] of [
    ['money', 12_840],
    ['whole', 30],
    ['decimal', -93.6],
    ['hours', '412.6'],
    ['skills', ['mechanical', 'hydraulic', 'welding']],
    ['skill', 'electrical'],
    ['part-unit', 'each'],
    ['part-unit', 'tube'],
    ['yes-no', false],
    ['date', '2026-06-04'],
    ['windows', [{ weekday: 1, from: '07:00', to: '15:30' }]],
  ] as const) {
    for (const words of [english, spanish])
      expect(fromTyped(field(kind), toTyped(field(kind), value, words), 2)).toEqual(value);
  }
});

test('an empty optional field is null, an empty number that is needed is not sent', () => {
  expect(fromTyped(field('text', true), ' ', 2)).toBeNull();
  expect(fromTyped(field('whole'), '', 2)).toBeUndefined();
  expect(fromTyped(field('money'), '12,5', 2)).toBe(1250);
  expect(fromTyped(field('money'), '12,5', 3)).toBe(12_500);
  const yen = wordsOf('en', en, formatsFor('en', { ...shown, currency: 'JPY' }));
  expect(toTyped(field('money'), 1250, yen)).toBe('1250');
});

test('a unit that the program knows is written in the language of the reader and kept in one', () => {
  expect(toTyped(field('part-unit'), 'each', spanish)).toBe('pieza');
  expect(fromTyped(field('part-unit'), 'Juego', 2)).toBe('set');
});

test('skills are written in the language of the reader and kept in one', () => {
  expect(toTyped(field('skills'), ['mechanical', 'welding'], spanish)).toBe('mecánica, welding');
  expect(fromTyped(field('skills'), 'Mecánica, hydraulic', 2)).toEqual(['mechanical', 'hydraulic']);
  expect(fromTyped(field('skill', true), '', 2)).toBeNull();
});
