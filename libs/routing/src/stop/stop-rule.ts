/**
 * When to stop: the share of the budget that is used up after so many iterations, 0 … 1; at 1 the search ends.
 * The search cools by the same share. It asks every 256 iterations and at `limit`.
 */
export interface StopRule {
  share(iterations: number): number;
  /** Iterations at which the rule ends the search, where it knows; Infinity otherwise. */
  readonly limit: number;
}
