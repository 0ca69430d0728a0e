import { knownSentences, type Sentence, TEXTS } from '@deckround/catalogue/spanish';
import { CONNECTIONS } from './connections-es.js';
import { LEARNED } from './learned-es.js';
import { RECORDS } from './records-es.js';
import { REFUSALS } from './refusals-es.js';

export const SENTENCES: readonly Sentence[] = [...TEXTS, ...CONNECTIONS, ...LEARNED, ...RECORDS, ...REFUSALS];

/** A sentence that the service keeps as English text, in Spanish; null for what a shop has typed itself. */
export const inSpanish = knownSentences(SENTENCES);
