export { knownSentences, type Sentence } from './known-sentences.js';
export { TEXTS } from './texts.js';
export { TITLES } from './titles.js';
