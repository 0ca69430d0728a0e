import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { triangleGap } from './problem.js';

/** max of c[i][j] − c[i][k] − c[k][j] over all i, j, k, or 0. */
function byTrial(cost: Int32Array, n: number): number {
  let gap = 0;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      for (let k = 0; k < n; k++) gap = Math.max(gap, cost[i * n + j]! - cost[i * n + k]! - cost[k * n + j]!);
    }
  }
  return gap;
}

describe('by how much a detour is cheaper than the direct arc', () => {
  it('is what trying all triples finds, there and back alike or not', () => {
    const matrices = fc
      .integer({ min: 1, max: 9 })
      .chain((n) =>
        fc.tuple(
          fc.constant(n),
          fc.boolean(),
          fc.array(fc.integer({ min: 0, max: 50 }), { minLength: n * n, maxLength: n * n }),
        ),
      );
    fc.assert(
      fc.property(matrices, ([n, alike, cells]) => {
        const cost = Int32Array.from(cells, (cell, at) => {
          const [i, j] = [Math.floor(at / n), at % n];
          return i === j ? 0 : alike && i > j ? cells[j * n + i]! : cell;
        });
        expect(triangleGap(cost, n)).toBe(byTrial(cost, n));
      }),
      { seed: 20, numRuns: 500 },
    );
  });
});
