import { describe, expect, it } from '@jest/globals';
import { InsertionScan } from './insertion-scan.js';
import { nearestStops } from './neighbours.js';
import { Offers } from './offers.js';
import { Random } from './random.js';
import { StringRuin } from './ruin.js';
import { DEFAULT_PARAMETERS } from './search-parameters.js';
import { Survey } from './survey.js';
import { fillPlan } from './test-support/fill-plan.js';
import { randomProblem } from './test-support/random-problem.js';
import { WorkingPlan } from './working-plan.js';

describe('StringRuin', () => {
  it('takes one to three strings, each out of another route, and offers all that it took; pinned visits stay', () => {
    const seen = new Map<number, number>();
    for (let seed = 1; seed <= 300; seed++) {
      const plan = new WorkingPlan(randomProblem({ seed: 1 + (seed % 30), stops: 30, vehicles: 6 }));
      const random = new Random(seed);
      fillPlan(plan, new InsertionScan(plan), random, 400);
      const before = plan.routes().map((route) => route.map(({ stop }) => stop));
      const pinned = new Uint8Array(plan.slotCount);
      for (let x = 0; x < plan.slotCount; x += 5) if (plan.routeOf[x]! >= 0) pinned[x] = 1;
      const held = new Set(Array.from(plan.stopOf).filter((_, x) => pinned[x] === 1));
      const survey = new Survey(plan, pinned);
      survey.renew();
      const offers = new Offers(30);
      new StringRuin(plan, random, DEFAULT_PARAMETERS, survey, offers, nearestStops(plan.problem, 30), 30).apply();

      const after = plan.routes().map((route) => route.map(({ stop }) => stop));
      const taken = before.map((route, v) => route.filter((stop) => !after[v]!.includes(stop)));
      const strings = taken.filter((stops) => stops.length > 0).length;
      seen.set(strings, (seen.get(strings) ?? 0) + 1);
      for (const stop of taken.flat()) {
        expect(offers.has(stop)).toBe(true);
        expect(held.has(stop)).toBe(false);
      }
    }
    expect([...seen.keys()].sort()).toEqual([1, 2, 3]);
    // ⌊U(1, 3.5)⌋ is 1, 2 and 3 in two, two and one of five draws.
    expect(seen.get(3)!).toBeLessThan(seen.get(1)!);
  });
});
