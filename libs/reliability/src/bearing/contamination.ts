/**
 * How far dirt and poor grease cut rated life, as a range and never as one figure: the factor aISO of ISO 281 needs the
 * oil film and the size of particles, which nobody measures on a mower deck.
 *
 * @source ranges are own readings of the usual grading of cleanliness (high, normal, slight, typical, severe), from memory:
 * stated, not measured. The shop's own failures replace them as soon as there are any.
 */
export const CONTAMINATION = {
  clean: { low: 0.8, high: 2, words: 'sealed, well greased, dry turf' },
  normal: { low: 0.3, high: 0.8, words: 'shielded, dust and damp clippings' },
  dirty: { low: 0.1, high: 0.3, words: 'sand, washing with water, a seal that has worn' },
  severe: { low: 0.02, high: 0.1, words: 'debris cup missing, wire or twine in the seal, standing water' },
} as const;
export type Contamination = keyof typeof CONTAMINATION;
