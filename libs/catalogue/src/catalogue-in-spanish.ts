import { SERVICE_ITEMS } from './service-items.js';
import { knownSentences, type Sentence, TEXTS, TITLES } from './spanish/index.js';

const WORK = SERVICE_ITEMS.map(({ code, title }): Sentence => [title, TITLES[code as keyof typeof TITLES]]);

/** What the starter catalogue says, and the work that it names, in Spanish; null for what a shop has written itself. */
export const catalogueInSpanish = knownSentences([
  ...TEXTS,
  ...WORK,
  ['{work}, spindle {n}', '{work}, husillo {n}'],
  ['Make good: {what}', 'Reparar del todo: {what}'],
  ['Road call: {what}', 'Llamada: {what}'],
]);
