import { describe, expect, it } from '@jest/globals';
import { InsertionScan } from './insertion-scan.js';
import { SingleOptionMenus } from './menu.js';
import type { RoutingProblem } from './problem.js';
import { Random } from './random.js';
import { planCost } from './test-support/brute-force.js';
import { fillPlan } from './test-support/fill-plan.js';
import { randomMove } from './test-support/random-moves.js';
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
      randomMove(plan, scan, random);
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
  it('accepts no change where every visit ends as it was', () => {
    const problem = randomProblem({ seed: 8, stops: 16, vehicles: 3, options: 2 });
    const plan = new WorkingPlan(problem);
    const scan = new InsertionScan(plan);
    fillPlan(plan, scan, new Random(2), 200);
    const v = plan.length.findIndex((length) => length >= 3);
    const { changeCount } = plan;
    const before = plan.routes();
    const [slot, option] = [plan.slotAt[v * plan.stride + 2]!, plan.tokenOf[plan.slotAt[v * plan.stride + 2]!]!];
    const takeOut = () => {
      plan.removeRun(v, 2, 1);
      plan.refresh(v, 2, 1);
    };
    takeOut();
    plan.insert(slot, v, 1, option);
    expect(plan.commit()).toBe(false);
    expect([plan.changeCount, plan.touchedRouteCount, plan.routes()]).toEqual([changeCount, 0, before]);
    takeOut();
    plan.insert(slot, v, 1, 1 - option);
    expect(plan.commit()).toBe(true);
    expect(plan.changeCount).toBe(changeCount + 1);
    plan.rollback();
    expect(plan.tokenOf[slot]).toBe(1 - option);
    takeOut();
    expect(plan.commit()).toBe(true);
  });

  it('has room for as many visits as fill the longest shift, and no more', () => {
    const plain = randomProblem({ seed: 1, stops: 40, vehicles: 2, lunch: true });
    const hours = { ...plain.vehicles, shiftStart: Int32Array.of(0, 100), latestReturn: Int32Array.of(300, 700) };
    const menus = new SingleOptionMenus(new Int32Array(40).fill(50), new Float64Array(40));
    const stride = (problem: RoutingProblem) => new WorkingPlan(problem).stride;
    expect(stride({ ...plain, vehicles: hours, menus })).toBe(12 + 2);
    expect(stride({ ...plain, menus: new SingleOptionMenus(new Int32Array(40), new Float64Array(40)) })).toBe(40 + 2);
  });
});
