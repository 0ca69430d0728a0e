import { describe, expect, it } from '@jest/globals';
import { AskedRoutes } from './asked-routes.js';
import { InsertionScan } from './insertion-scan.js';
import { nearestStops } from './neighbours.js';
import { Random } from './random.js';
import { DEFAULT_PARAMETERS } from './search-parameters.js';
import { fillPlan } from './test-support/fill-plan.js';
import { randomProblem } from './test-support/random-problem.js';
import { WorkingPlan } from './working-plan.js';

const VEHICLES = 30;
const drawn = randomProblem({ seed: 5, stops: 60, vehicles: VEHICLES });
/** Stop 0 can be served by three vehicles alone. */
const windowList = drawn.windowList.map((list, k) => (k < VEHICLES && k % 10 !== 4 ? -1 : Math.max(0, list)));
const problem = { ...drawn, windowList };

function asking(manyRoutes: number) {
  const plan = new WorkingPlan(problem);
  fillPlan(plan, new InsertionScan(plan), new Random(2), 400);
  const servers = Array.from({ length: 60 }, (_, s) =>
    Int32Array.from(Array.from({ length: VEHICLES }, (_, v) => v).filter((v) => windowList[s * VEHICLES + v]! >= 0)),
  );
  const parameters = { ...DEFAULT_PARAMETERS, manyRoutes };
  const asked = new AskedRoutes(plan, new Random(7), parameters, servers, nearestStops(problem, 60), 60);
  const ask = (stop: number) => {
    asked.ask(stop);
    return [...asked.routes.slice(0, asked.count)];
  };
  return { plan, asked, ask, servers };
}

describe('routes that a stop is offered to', () => {
  it('are all with room that can serve it, those being rebuilt first, where these are few', () => {
    const { plan, asked, ask, servers } = asking(VEHICLES);
    const rebuilt = [4, 9];
    for (const v of rebuilt) plan.touchRoute(v);
    plan.closed[6] = 1;
    for (let stop = 0; stop < 60; stop++) {
      const least = problem.menus.least(stop, 0);
      const expected = [...servers[stop]!].filter((v) => v !== 6 && plan.room.most[v]! >= least);
      const routes = ask(stop);
      expect([...routes].sort((a, b) => a - b)).toEqual(expected);
      expect(asked.rebuilt).toBe(rebuilt.filter((v) => expected.includes(v)).length);
      for (const v of routes.slice(0, asked.rebuilt)) expect(rebuilt).toContain(v);
    }
  });

  it('are some near it and one drawn, each once, where many have room', () => {
    const { plan, asked, ask } = asking(20);
    plan.touchRoute(4);
    const seen = new Set<number>();
    for (let time = 0; time < 40; time++) {
      const routes = ask(7);
      expect(new Set(routes).size).toBe(routes.length);
      expect(routes.length - asked.rebuilt).toBeLessThanOrEqual(5);
      for (const v of routes) seen.add(v);
    }
    expect(seen.size).toBeGreaterThan(15);
  });

  it('are the four nearest with room first, where many have room', () => {
    const { plan, ask } = asking(20);
    const neighbours = nearestStops(problem, 60);
    for (let stop = 1; stop < 60; stop++) {
      const least = problem.menus.least(stop, 0);
      const near = new Set<number>();
      for (const other of neighbours.slice(stop * 60, stop * 60 + 40)) {
        const v = plan.routeOf[plan.firstSlot[other]!]!;
        if (v >= 0 && windowList[stop * VEHICLES + v]! >= 0 && plan.room.most[v]! >= least) near.add(v);
      }
      expect(ask(stop).slice(0, 4)).toEqual([...near].slice(0, 4));
    }
  });

  it('are all that can serve it where those are few, however many have room', () => {
    const { plan, ask } = asking(20);
    expect(plan.room.roomy.count).toBeGreaterThan(20);
    expect(ask(0).sort((a, b) => a - b)).toEqual([4, 14, 24]);
  });
});
