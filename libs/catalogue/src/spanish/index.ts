export { knownSentences, type Sentence } from './known-sentences.js';
export { TEXTS } from './texts.js';
export { SYMPTOM_TITLES, TITLES } from './titles.js';
