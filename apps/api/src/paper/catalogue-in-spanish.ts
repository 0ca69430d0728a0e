import { SERVICE_ITEMS } from '@deckround/catalogue';
import { knownSentences, type Sentence, TEXTS, TITLES } from '@deckround/catalogue/spanish';

const WORK = SERVICE_ITEMS.map(({ code, title }): Sentence => [title, TITLES[code as keyof typeof TITLES]]);

/** What the starter catalogue says on paper, in Spanish; null for what a shop has written itself. */
export const catalogueInSpanish = knownSentences([
  ...TEXTS,
  ...WORK,
  ['{work}, spindle {n}', '{work}, husillo {n}'],
  ['Make good: {what}', 'Reparar del todo: {what}'],
]);
