import { expect, test } from '@jest/globals';
import type { Field } from './kinds.js';
import { fromTyped, toTyped } from './row-values.js';

const field = (kind: Field['kind'], optional = false) => ({ name: 'x', kind, optional }) as Field;

test('values go into a form and come back the same', () => {
  for (const [kind, value] of [
    ['money', 12_840],
    ['whole', 30],
    ['decimal', -93.6],
    ['hours', '412.6'],
    ['words', ['mechanical', 'hydraulic']],
    ['yes-no', false],
    ['date', '2026-06-04'],
    ['windows', [{ weekday: 1, from: '07:00', to: '15:30' }]],
  ] as const) {
    expect(fromTyped(field(kind), toTyped(field(kind), value, 2), 2)).toEqual(value);
  }
});

test('an empty optional field is null, an empty number that is needed is not sent', () => {
  expect(fromTyped(field('text', true), ' ', 2)).toBeNull();
  expect(fromTyped(field('whole'), '', 2)).toBeUndefined();
  expect(fromTyped(field('money'), '12,5', 2)).toBe(1250);
  expect(fromTyped(field('money'), '12,5', 3)).toBe(12_500);
  expect(toTyped(field('money'), 1250, 0)).toBe('1250');
});
