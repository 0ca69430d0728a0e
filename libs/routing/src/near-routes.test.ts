import { describe, expect, it } from '@jest/globals';
import { InsertionScan } from './insertion-scan.js';
import { NearRoutes } from './near-routes.js';
import { nearestStops } from './neighbours.js';
import { Random } from './random.js';
import { fillPlan } from './test-support/fill-plan.js';
import { randomProblem } from './test-support/random-problem.js';
import { WorkingPlan } from './working-plan.js';

describe('NearRoutes', () => {
  const problem = randomProblem({ seed: 12, stops: 40, vehicles: 12 });
  const { count } = problem.vehicles;
  const neighbours = nearestStops(problem, 40);

  it('lists eight routes that could serve a stop, nearest first, each once', () => {
    const plan = new WorkingPlan(problem);
    fillPlan(plan, new InsertionScan(plan), new Random(1), 800);
    const near = new NearRoutes(plan, neighbours, 40);
    for (let stop = 0; stop < 40; stop++) {
      const expected = new Set<number>();
      for (const other of neighbours.slice(stop * 40, stop * 40 + 40)) {
        for (let x = plan.firstSlot[other]!; x < plan.firstSlot[other + 1]!; x++) {
          const v = plan.routeOf[x]!;
          if (v >= 0 && problem.windowList[stop * count + v]! >= 0) expected.add(v);
        }
      }
      const first = near.first(stop);
      const listed = near.routes.slice(first, first + near.count(stop));
      expect([...listed]).toEqual([...expected].slice(0, 8));
    }
  });

  it('looks again at once where it has found none', () => {
    const plan = new WorkingPlan(problem);
    const near = new NearRoutes(plan, neighbours, 40);
    expect(near.count(0)).toBe(0);
    fillPlan(plan, new InsertionScan(plan), new Random(1), 800);
    expect(near.count(0)).toBeGreaterThan(0);
  });
});
