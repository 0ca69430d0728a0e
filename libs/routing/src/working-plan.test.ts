import { describe, expect, it } from '@jest/globals';
import { InsertionScan } from './insertion-scan.js';
import { Random } from './random.js';
import { planCost } from './test-support/brute-force.js';
import { randomProblem } from './test-support/random-problem.js';
import { WorkingPlan } from './working-plan.js';

describe('WorkingPlan', () => {
  it('keeps the cost of a full evaluation through 10,000 random removals, insertions, commits and rollbacks', () => {
    const random = new Random(77);
    const problem = randomProblem({
      seed: 5,
      stops: 24,
      vehicles: 6,
      days: 3,
      lunch: true,
      overtime: true,
      windowsPerDay: 2,
      options: 3,
      asymmetric: true,
    });
    const plan = new WorkingPlan(problem);
    const scan = new InsertionScan(plan);
    let accepted = planCost(problem, plan.routes());
    for (let move = 0; move < 10_000; move++) {
      const v = random.below(problem.vehicles.count);
      if (plan.length[v]! > 0 && random.chance(0.45)) {
        const position = 1 + random.below(plan.length[v]!);
        plan.removeRun(v, position, 1 + random.below(plan.length[v]! - position + 1));
        plan.refresh(v);
      } else {
        const stop = random.below(problem.stops.count);
        const slot = plan.freeSlot(stop);
        if (slot >= 0 && plan.admits(stop, v)) {
          scan.scan(stop, v);
          if (scan.position1 >= 0) plan.insert(slot, v, scan.position1, scan.option1);
        }
      }
      if (random.chance(0.3)) {
        if (random.chance(0.5)) {
          plan.commit();
          accepted = planCost(problem, plan.routes());
        } else {
          plan.rollback();
          expect(planCost(problem, plan.routes())).toBe(accepted);
        }
      }
      expect(plan.cost).toBe(planCost(problem, plan.routes()));
    }
  });
});
