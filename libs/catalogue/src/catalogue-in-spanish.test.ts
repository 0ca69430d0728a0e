import { expect, it } from '@jest/globals';
import { catalogueInSpanish } from './catalogue-in-spanish.js';

it('names the work of a visit, and leaves in it what people have typed', () => {
  expect(catalogueInSpanish('Grease spindles')).toBe('Engrasar husillos');
  expect(catalogueInSpanish('Replace spindle bearings, spindle 2')).toBe('Cambiar rodamientos de husillo, husillo 2');
  expect(catalogueInSpanish('Make good: spliced bracket')).toBe('Reparar del todo: spliced bracket');
  expect(catalogueInSpanish('Road call: howls under load')).toBe('Llamada: howls under load');
  expect(catalogueInSpanish('Road call: The deck shakes')).toBe('Llamada: La plataforma vibra');
  expect(catalogueInSpanish('Wash it')).toBeNull();
});
