import { knownSentences, type Sentence, SYMPTOM_TITLES, TEXTS } from '@deckround/catalogue/spanish';
import { en, type WordKey } from '../en.js';
import { CONNECTIONS } from './connections-es.js';
import { LEARNED } from './learned-es.js';
import { RECORDS } from './records-es.js';
import { REFUSALS } from './refusals-es.js';

/** A call is named by what the caller said, in the words of the list or in the caller's own. */
const REPORTS = Object.entries(SYMPTOM_TITLES).map(
  ([code, spanish]): Sentence => [en[`symptom.${code}` as WordKey], spanish],
);

export const SENTENCES: readonly Sentence[] = [
  ...TEXTS,
  ...REPORTS,
  ...CONNECTIONS,
  ...LEARNED,
  ...RECORDS,
  ...REFUSALS,
];

/** A sentence that the service keeps as English text, in Spanish; null for what a shop has typed itself. */
export const inSpanish = knownSentences(SENTENCES);
