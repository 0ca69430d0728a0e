import { describe, expect, it } from '@jest/globals';
import { EndSwap } from './end-swap.js';
import { InsertionScan } from './insertion-scan.js';
import { SingleOptionMenus } from './menu.js';
import { nearestStops } from './neighbours.js';
import { Offers } from './offers.js';
import type { RoutingProblem } from './problem.js';
import { Random } from './random.js';
import { Survey } from './survey.js';
import { planCost } from './test-support/brute-force.js';
import { fillPlan } from './test-support/fill-plan.js';
import { randomProblem } from './test-support/random-problem.js';
import { WorkingPlan } from './working-plan.js';

function filledPlan(pinnedShare = 0) {
  const problem = randomProblem({
    ...{ seed: 5, stops: 24, vehicles: 6, days: 3, lunch: true, overtime: true, windowsPerDay: 2, options: 3 },
  });
  const plan = new WorkingPlan(problem);
  const scan = new InsertionScan(plan);
  const random = new Random(41);
  fillPlan(plan, scan, random, 400);
  const pinned = new Uint8Array(plan.slotCount).map((_, x) =>
    plan.routeOf[x]! >= 0 && random.chance(pinnedShare) ? 1 : 0,
  );
  const survey = new Survey(plan, pinned);
  survey.take();
  const offers = new Offers(problem.stops.count);
  const reach = problem.stops.count;
  const swap = new EndSwap(plan, random, scan, survey, offers, nearestStops(problem, reach), reach);
  return { problem, plan, random, pinned, survey, offers, swap };
}

const stopsOf = (plan: WorkingPlan) => plan.routes().map((route) => route.map((visit) => visit.stop));

describe('EndSwap', () => {
  it('puts every visit of both ends into the other route or offers it, at the cost of a full evaluation', () => {
    const { problem, plan, random, survey, offers, swap } = filledPlan();
    let swapped = 0;
    let moved = 0;
    for (let move = 0; move < 2000; move++) {
      const before = stopsOf(plan);
      const cost = plan.cost;
      if (!(random.chance(0.5) ? swap.swapEnds() : swap.swapRoutes())) {
        expect(stopsOf(plan)).toEqual(before);
        continue;
      }
      swapped++;
      expect(plan.cost).toBe(planCost(problem, plan.routes()));
      const offered = [...offers.stops.subarray(0, offers.count)];
      const after = stopsOf(plan);
      expect([...after.flat(), ...offered].sort()).toEqual(before.flat().sort());
      before.forEach((route, v) => {
        for (const stop of route) if (!after[v]!.includes(stop) && !offered.includes(stop)) moved++;
      });
      if (random.chance(0.3)) {
        plan.commit();
        survey.take();
      } else {
        plan.rollback();
        expect([stopsOf(plan), plan.cost]).toEqual([before, cost]);
      }
    }
    expect(swapped).toBeGreaterThan(200);
    expect(moved).toBeGreaterThan(200);
  });

  it('leaves pinned visits where they are', () => {
    const { plan, random, pinned, swap } = filledPlan(0.3);
    const home = plan.routeOf.slice();
    for (let move = 0; move < 500; move++) {
      if (random.chance(0.5) ? swap.swapEnds() : swap.swapRoutes()) {
        for (let x = 0; x < plan.slotCount; x++) if (pinned[x] === 1) expect(plan.routeOf[x]).toBe(home[x]);
      }
      plan.rollback();
    }
    expect(pinned).toContain(1);
  });

  it('carries a round to another day of which each visit alone would not pay for the drive, in the order it was driven', () => {
    // Base and three stops far off and near each other; a round costs 215, each visit is worth 120.
    const far = randomProblem({ seed: 1, stops: 3, vehicles: 2, days: 2 });
    const minutes = Int32Array.from([0, 100, 100, 105, 100, 0, 5, 10, 100, 5, 0, 5, 105, 10, 5, 0]);
    const problem: RoutingProblem = {
      ...{ ...far, minutes, arcCost: [minutes], fixedCost: new Int32Array(6) },
      vehicles: { ...far.vehicles, shiftEnd: Int32Array.of(900, 2340), latestReturn: Int32Array.of(900, 2340) },
      windowList: Int32Array.of(0, 1, 0, 1, 0, 1),
      windowStart: Int32Array.of(0, 1, 2),
      windowOpen: Int32Array.of(420, 1860),
      windowLast: Int32Array.of(900, 2340),
      windowClose: Int32Array.of(900, 2340),
      menus: new SingleOptionMenus([20, 20, 20], [120, 120, 120]),
    };
    const plan = new WorkingPlan(problem);
    for (const [at, stop] of [0, 2, 1].entries()) plan.insert(plan.freeSlot(stop), 0, at, 0);
    plan.commit();
    const survey = new Survey(plan, new Uint8Array(plan.slotCount));
    survey.take();
    const offers = new Offers(3);
    const rest = [survey, offers, nearestStops(problem, 3), 3] as const;
    const swap = new EndSwap(plan, new Random(1), new InsertionScan(plan), ...rest);
    expect(Array.from({ length: 20 }).some(() => swap.swapRoutes())).toBe(true);
    expect([stopsOf(plan), offers.count, plan.cost]).toEqual([[[], [0, 2, 1]], 0, 215 - 360]);
  });

  it('finds nothing to swap in an empty plan', () => {
    const problem = randomProblem({ seed: 1, stops: 3, vehicles: 2 });
    const plan = new WorkingPlan(problem);
    const survey = new Survey(plan, new Uint8Array(plan.slotCount));
    survey.take();
    const rest = [survey, new Offers(3), nearestStops(problem, 3), 3] as const;
    const swap = new EndSwap(plan, new Random(1), new InsertionScan(plan), ...rest);
    expect([swap.swapEnds(), swap.swapRoutes()]).toEqual([false, false]);
  });
});
