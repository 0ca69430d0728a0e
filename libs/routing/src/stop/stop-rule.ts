/**
 * When to stop: the share of the budget that is used up after so many iterations, 0 … 1; at 1 the search ends.
 * The search cools by the same share.
 */
export type StopRule = (iterations: number) => number;
