/**
 * How many iterations a run will make, told from its beginning: those made so far, and the rest of the budget at the
 * speed reached since about half of it. The mean speed would not do: while the engine still compiles the code, a run
 * makes a twentieth of the iterations that it makes later.
 */
export class RunLength {
  private markedAt = 0;
  private markedShare = 0;

  /**
   * @param iterations made so far
   * @param share      of the budget that is used up, 0 … 1; rising from call to call
   */
  forecast(iterations: number, share: number): number {
    if (share <= this.markedShare) return iterations;
    const perShare = (iterations - this.markedAt) / (share - this.markedShare);
    if (share >= 2 * this.markedShare) {
      this.markedAt = iterations;
      this.markedShare = share;
    }
    return Math.round(iterations + (1 - share) * perShare);
  }
}
