import { type ChoiceProblem, Random } from '@deckround/routing';
import { describe, expect, it } from '@jest/globals';
import { choose, loadChoiceSolver } from './choice-solver.js';

/** A small made-up choice: up to 12 columns over 6 rows, some of which must be covered. */
function invented(seed: number): ChoiceProblem {
  const random = new Random(seed);
  const columns = 6 + random.below(7);
  const start = [0];
  const rows: number[] = [];
  const cost: number[] = [];
  for (let j = 0; j < columns; j++) {
    for (let i = 0; i < 6; i++) if (random.chance(0.35)) rows.push(i);
    start.push(rows.length);
    cost.push(random.below(200) - 120);
  }
  return {
    cost: Float64Array.from(cost),
    start: Int32Array.from(start),
    rows: Int32Array.from(rows),
    lower: Float64Array.from({ length: 6 }, (_, i) => (i < 2 && random.chance(0.5) ? 1 : 0)),
    upper: new Float64Array(6).fill(1),
    below: 1e6,
  };
}

function cheapest({ cost, start, rows, lower, upper }: ChoiceProblem): number {
  let best = Infinity;
  for (let mask = 0; mask < 1 << cost.length; mask++) {
    const sums = new Float64Array(lower.length);
    let total = 0;
    for (let j = 0; j < cost.length; j++) {
      if ((mask & (1 << j)) === 0) continue;
      total += cost[j]!;
      for (let p = start[j]!; p < start[j + 1]!; p++) sums[rows[p]!]! += 1;
    }
    if (sums.every((sum, i) => sum >= lower[i]! && sum <= upper[i]!)) best = Math.min(best, total);
  }
  return best;
}

describe('the choice solver', () => {
  it('finds the cheapest choice of 200 small problems, or says that there is none', async () => {
    const solve = await loadChoiceSolver();
    for (let seed = 1; seed <= 200; seed++) {
      const problem = invented(seed);
      const chosen = solve(problem);
      const total = chosen?.reduce((sum, j) => sum + problem.cost[j]!, 0) ?? Infinity;
      expect(total).toBe(cheapest(problem));
    }
  });

  it('gives nothing when nothing is cheaper than what is in hand', async () => {
    const solve = await loadChoiceSolver();
    const problem = invented(3);
    expect(solve({ ...problem, below: cheapest(problem) })).toBeNull();
  });

  it('gives nothing when the solver gives up, and lets go of its memory', () => {
    let disposed = 0;
    const model = {
      options: { set: () => {} },
      run: () => {
        throw new Error('run failed with HiGHS status -1');
      },
      dispose: () => disposed++,
    };
    const highs = { createModel: () => model, constants: {} } as unknown as Parameters<typeof choose>[0];
    expect(choose(highs, invented(3))).toBeNull();
    expect(disposed).toBe(1);
  });
});
