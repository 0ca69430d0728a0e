import { describe, expect, it } from '@jest/globals';
import { InsertionScan } from './insertion-scan.js';
import { SingleOptionMenus } from './menu.js';
import type { RoutingProblem } from './problem.js';
import { Random } from './random.js';
import { fillPlan } from './test-support/fill-plan.js';
import { randomMove } from './test-support/random-moves.js';
import { randomProblem } from './test-support/random-problem.js';
import { WorkingPlan } from './working-plan.js';

/** The same day or days, with nothing but the shift to keep to. */
const allDay = (problem: RoutingProblem): RoutingProblem => ({
  ...problem,
  windowOpen: problem.windowOpen.map(() => 0),
  windowLast: problem.windowLast.map(() => 5000),
  windowClose: problem.windowClose.map(() => 5000),
});

describe('RouteRoom', () => {
  it('rules out no visit that finds a place, and of days without windows most that find none', () => {
    let found = 0;
    let ruledOut = 0;
    let none = 0;
    for (let seed = 1; seed <= 60; seed++) {
      const drawn = randomProblem({
        seed,
        stops: 24,
        vehicles: 5,
        days: 1 + (seed % 2),
        lunch: seed % 2 === 0,
        overtime: seed % 3 === 0,
        windowsPerDay: 1 + (seed % 2),
        options: 1 + (seed % 3),
        asymmetric: seed % 5 === 0,
        nonMetric: seed % 4 === 0,
      });
      const problem = seed % 2 === 0 ? drawn : allDay(drawn);
      const plan = new WorkingPlan(problem);
      const scan = new InsertionScan(plan);
      const random = new Random(seed);
      fillPlan(plan, scan, random, 300);
      const { vehicles, stops, menus } = problem;
      for (let move = 0; move < 120; move++) {
        randomMove(plan, scan, random);
        if (random.chance(0.3)) plan.commit();
        else if (random.chance(0.2)) plan.rollback();
        for (let v = 0; v < vehicles.count; v++) {
          const stop = random.below(stops.count);
          if (plan.freeSlot(stop) < 0) continue;
          scan.scan(stop, v);
          const isRuledOut = menus.least(stop, 0) > plan.room.most[v]!;
          if (scan.position1 >= 0) {
            found++;
            const { minutes } = menus.menu(stop, 0, v);
            expect(minutes[scan.option1]!).toBeLessThanOrEqual(plan.room.most[v]!);
          } else if (problem !== drawn && problem.windowList[stop * vehicles.count + v]! >= 0) {
            none++;
            if (isRuledOut) ruledOut++;
          }
        }
      }
    }
    expect(found).toBeGreaterThan(2000);
    expect(ruledOut).toBeGreaterThan(none / 2);
  });

  it('knows the accepted routes with room for the shortest visit, whatever was tried in between', () => {
    const shortest = 60;
    const minutes = Int32Array.from({ length: 30 }, (_, s) => shortest + s);
    const problem = {
      ...allDay(randomProblem({ seed: 9, stops: 30, vehicles: 6, lunch: true })),
      menus: new SingleOptionMenus(minutes, new Float64Array(30).fill(5000)),
    };
    const plan = new WorkingPlan(problem);
    const scan = new InsertionScan(plan);
    const random = new Random(4);
    const roomyNow = () => Array.from({ length: 6 }, (_, v) => v).filter((v) => plan.room.most[v]! >= shortest);
    const sizes = new Set<number>();
    let accepted = roomyNow();
    for (let move = 0; move < 3000; move++) {
      randomMove(plan, scan, random);
      if (random.chance(0.2)) {
        plan.commit();
        accepted = roomyNow();
      } else if (random.chance(0.4)) {
        plan.rollback();
        expect(roomyNow()).toEqual(accepted);
      }
      const { members, count } = plan.room.roomy;
      expect([...members.slice(0, count)].sort()).toEqual(accepted);
      sizes.add(accepted.length);
    }
    expect(sizes.size).toBeGreaterThan(2);
  });
});
