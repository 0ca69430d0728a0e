import type { FieldFact } from '../data/types.js';

/** Records a fact about the machine at hand. */
export type Recorder = (fact: FieldFact, about: string) => Promise<void>;
