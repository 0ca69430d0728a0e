/**
 * An exact choice: minimise Σ cost_j x_j over binary x with lower_i ≤ Σ_{j in row i} x_j ≤ upper_i.
 * Whoever calls the search brings the solver, since it lives outside pure code.
 */
export interface ChoiceProblem {
  readonly cost: Float64Array;
  /** Column j has ones in rows rows[start[j]] … rows[start[j + 1] − 1]. */
  readonly start: Int32Array;
  readonly rows: Int32Array;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  /** Only choices that cost less are of interest. */
  readonly below: number;
}

/** @returns the columns chosen, or null when nothing cheaper was found within the solver's own limits */
export type ChoiceSolver = (problem: ChoiceProblem) => readonly number[] | null;
