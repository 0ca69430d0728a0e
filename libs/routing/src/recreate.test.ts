import { describe, expect, it } from '@jest/globals';
import { nearestStops } from './neighbours.js';
import { triangleGap } from './problem.js';
import { Random } from './random.js';
import { GreedyRecreate } from './recreate.js';
import { DEFAULT_PARAMETERS } from './search-parameters.js';
import { randomProblem } from './test-support/random-problem.js';
import { WorkingPlan } from './working-plan.js';

describe('GreedyRecreate', () => {
  it('gives up early only where going on would not have got below the threshold', () => {
    let gaveUp = 0;
    for (let seed = 1; seed <= 400; seed++) {
      const problem = randomProblem({
        seed: 1 + (seed % 40),
        stops: 18,
        vehicles: 5,
        lunch: seed % 2 === 0,
        overtime: seed % 3 === 0,
        options: 1 + (seed % 2),
        asymmetric: seed % 5 === 0,
        nonMetric: seed % 4 === 0,
      });
      const dip = triangleGap(problem.arcCost[0]!, problem.places);
      const every = Int32Array.from({ length: 18 }, (_, s) => s);
      const attempt = (earlyAbort: boolean, threshold: number) => {
        const plan = new WorkingPlan(problem);
        const near = nearestStops(problem, 18);
        const recreate = new GreedyRecreate(
          plan,
          new Random(seed),
          { ...DEFAULT_PARAMETERS, earlyAbort },
          dip,
          near,
          18,
        );
        return { finished: recreate.apply(every, every.length, threshold, 0), cost: plan.cost };
      };
      const { cost } = attempt(false, Infinity);
      for (const threshold of [cost - 2000, cost - 1, cost, cost + 1, cost + 2000]) {
        const { finished } = attempt(true, threshold);
        if (!finished) gaveUp++;
        if (cost < threshold) expect(finished).toBe(true);
      }
    }
    expect(gaveUp).toBeGreaterThan(100);
  });
});
