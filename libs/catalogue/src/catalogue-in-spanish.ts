import { SERVICE_ITEMS } from './service-items.js';
import { knownSentences, type Sentence, SYMPTOM_TITLES, TEXTS, TITLES } from './spanish/index.js';
import { SYMPTOMS } from './symptoms.js';

const WORK = SERVICE_ITEMS.map(({ code, title }): Sentence => [title, TITLES[code as keyof typeof TITLES]]);

const REPORTS = SYMPTOMS.map(
  ({ code, title }): Sentence => [title, SYMPTOM_TITLES[code as keyof typeof SYMPTOM_TITLES]],
);

/** What the starter catalogue says, and the work that it names, in Spanish; null for what a shop has written itself. */
export const catalogueInSpanish = knownSentences([
  ...TEXTS,
  ...WORK,
  ...REPORTS,
  ['{work}, spindle {n}', '{work}, husillo {n}'],
  ['Make good: {what}', 'Reparar del todo: {what}'],
  ['Road call: {what}', 'Llamada: {what}'],
]);
