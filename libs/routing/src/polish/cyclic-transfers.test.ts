import { describe, expect, it } from '@jest/globals';
import { InsertionScan } from '../insertion-scan.js';
import { SingleOptionMenus } from '../menu.js';
import { nearestStops } from '../neighbours.js';
import type { RoutingProblem } from '../problem.js';
import { Random } from '../random.js';
import { Survey } from '../survey.js';
import { planCost } from '../test-support/brute-force.js';
import { fillPlan } from '../test-support/fill-plan.js';
import { randomProblem } from '../test-support/random-problem.js';
import { WorkingPlan } from '../working-plan.js';
import { CyclicTransfers } from './cyclic-transfers.js';

function transfersOf(problem: RoutingProblem, plan: WorkingPlan, pinned = new Uint8Array(plan.slotCount)) {
  const survey = new Survey(plan, pinned);
  survey.renew();
  const reach = problem.stops.count;
  return { survey, transfers: new CyclicTransfers(plan, survey, nearestStops(problem, reach), reach) };
}

const stopsOf = (plan: WorkingPlan) => plan.routes().map((route) => route.map((visit) => visit.stop));

/** No drives, one stop to a vehicle; `fixed[v][s]` is what vehicle v pays to serve stop s. */
function oneEach(price: number[], fixed: number[][]): RoutingProblem {
  const problem = randomProblem({ seed: 1, stops: price.length, vehicles: fixed.length, days: 1 });
  const { vehicles, stops, places } = problem;
  const all = (n: number, value: number) => new Int32Array(n).fill(value);
  return {
    ...problem,
    minutes: all(places * places, 0),
    arcCost: [all(places * places, 0)],
    vehicles: {
      ...vehicles,
      ...{
        shiftStart: all(vehicles.count, 0),
        shiftEnd: all(vehicles.count, 60),
        latestReturn: all(vehicles.count, 60),
      },
      ...{ lunchMinutes: all(vehicles.count, 0), costClass: all(vehicles.count, 0), day: all(vehicles.count, 0) },
      capacity: all(vehicles.count, 1),
    },
    stops: {
      ...stops,
      load: all(stops.count, 1),
      visits: all(stops.count, 1),
      crowd: Int32Array.from(price, (_, s) => s),
    },
    visitsPerDay: all(stops.count, 1),
    windowList: all(stops.count * vehicles.count, 0),
    windowStart: Int32Array.of(0, 1),
    windowOpen: Int32Array.of(0),
    windowLast: Int32Array.of(60),
    windowClose: Int32Array.of(60),
    fixedCost: Int32Array.from(price.flatMap((_, s) => fixed.map((row) => row[s]!))),
    menus: new SingleOptionMenus(
      price.map(() => 10),
      price,
    ),
  };
}

function planned(problem: RoutingProblem, routes: number[][]) {
  const plan = new WorkingPlan(problem);
  routes.forEach((route, v) => {
    for (const [k, stop] of route.entries()) plan.insert(plan.freeSlot(stop), v, k, 0);
  });
  plan.commit();
  return plan;
}

describe('CyclicTransfers', () => {
  it('lets three visits go round where no two of them can change', () => {
    const problem = oneEach(
      [1000, 1000, 1000],
      [
        [50, 10, 900],
        [900, 50, 10],
        [10, 900, 50],
      ],
    );
    const plan = planned(problem, [[0], [1], [2]]);
    expect(transfersOf(problem, plan).transfers.look()).toBe(1);
    expect(stopsOf(plan)).toEqual([[1], [2], [0]]);
    expect(plan.cost).toBe(30 - 3000);
  });

  it('brings a dear stop in through another’s place, and a cheap one out', () => {
    const problem = oneEach(
      [50, 100, 700],
      [
        [0, 0, 650],
        [5, 0, 0],
      ],
    );
    // Stop 2 belongs into vehicle 1; stop 1 goes over to vehicle 0, whose stop 0 is left out.
    const plan = planned({ ...problem, windowList: Int32Array.of(0, -1, 0, 0, 0, 0) }, [[0], [1]]);
    const { transfers, survey } = transfersOf(plan.problem, plan);
    expect(transfers.look()).toBe(1);
    expect(stopsOf(plan)).toEqual([[1], [2]]);
    expect(plan.cost).toBe(-800);
    expect(survey.unserved.count).toBe(1);
    expect(transfers.look()).toBe(0);
  });

  it('only ever betters a plan, at the cost of a full evaluation, and leaves pinned visits where they are', () => {
    let bettered = 0;
    for (let seed = 1; seed <= 30; seed++) {
      const problem = randomProblem({
        ...{ seed, stops: 24, vehicles: 6, days: 3, lunch: seed % 2 === 0, overtime: seed % 3 === 0 },
        ...{ windowsPerDay: 1 + (seed % 2), options: 1 + (seed % 3) },
      });
      const plan = new WorkingPlan(problem);
      const random = new Random(seed);
      fillPlan(plan, new InsertionScan(plan), random, 400);
      const pinned = plan.routeOf.map((v) => (v >= 0 && random.chance(0.2) ? 1 : 0));
      const home = plan.routeOf.slice();
      const { transfers } = transfersOf(problem, plan, Uint8Array.from(pinned));
      for (let looks = 0; looks < 20; looks++) {
        const before = plan.cost;
        const made = transfers.look();
        expect(plan.cost).toBe(planCost(problem, plan.routes()));
        expect(plan.cost < before).toBe(made > 0);
        if (made === 0) break;
        bettered += made;
      }
      pinned.forEach((isPinned, x) => {
        if (isPinned === 1) expect(plan.routeOf[x]).toBe(home[x]);
      });
    }
    expect(bettered).toBeGreaterThan(30);
  });
});
