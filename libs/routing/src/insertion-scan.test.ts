import { describe, expect, it } from '@jest/globals';
import { InsertionScan } from './insertion-scan.js';
import { Random } from './random.js';
import { routeCost } from './test-support/brute-force.js';
import { type RandomProblemSettings, randomProblem } from './test-support/random-problem.js';
import { WorkingPlan } from './working-plan.js';

/** Builds random routes by insertion and compares every scan with trying all positions and options. */
function compareWithBruteForce(seed: number, extra: Partial<RandomProblemSettings> = {}) {
  const random = new Random(seed);
  const problem = randomProblem({
    seed,
    stops: 7,
    vehicles: 2,
    days: 1 + random.below(2),
    lunch: random.chance(0.6),
    overtime: random.chance(0.5),
    windowsPerDay: 1 + random.below(3),
    options: 1 + random.below(3),
    asymmetric: random.chance(0.5),
    nonMetric: random.chance(0.3),
    prize: 9000,
    ...extra,
  });
  const plan = new WorkingPlan(problem);
  const scan = new InsertionScan(plan);
  let scans = 0;
  let fits = 0;
  for (let step = 0; step < 12; step++) {
    const stop = random.below(problem.stops.count);
    const v = random.below(problem.vehicles.count);
    const slot = plan.freeSlot(stop);
    if (slot < 0 || !plan.admits(stop, v)) continue;
    const route = plan.routes()[v]!;
    const present = routeCost(problem, v, route);
    const menu = problem.menus.menu(stop, 0, v);
    const ahead = random.below(route.length + 1);
    let best = Infinity;
    let bestBehind = Infinity;
    for (let p = 0; p <= route.length; p++) {
      for (let k = 0; k < menu.count; k++) {
        const visit = { stop, minutes: menu.minutes[k]!, worth: menu.worth[k]! };
        const cost = routeCost(problem, v, [...route.slice(0, p), visit, ...route.slice(p)]) - present;
        best = Math.min(best, cost);
        if (p >= ahead) bestBehind = Math.min(bestBehind, cost);
      }
    }
    scan.scan(stop, v, Infinity, ahead);
    expect(scan.cost1).toBe(bestBehind);
    scan.scan(stop, v);
    expect(scan.cost1).toBe(best);
    scans++;
    if (scan.position1 < 0) continue;
    fits++;
    plan.insert(slot, v, scan.position1, scan.option1);
    expect(plan.isFeasible(v)).toBe(true);
    expect(routeCost(problem, v, plan.routes()[v]!)).toBe(present + best);
  }
  return { scans, fits };
}

describe('InsertionScan', () => {
  it('finds the cheapest insertion that brute force finds, on 20,000 random scans', () => {
    let scans = 0;
    let fits = 0;
    for (let seed = 1; scans < 20_000; seed++) {
      const counted = compareWithBruteForce(seed);
      scans += counted.scans;
      fits += counted.fits;
    }
    expect(fits / scans).toBeGreaterThan(0.2);
  });

  it('keeps to the longest time away, whenever the vehicle leaves', () => {
    const plain = { lunch: false, overtime: false, windowsPerDay: 1, options: 1 };
    let kept = 0;
    let free = 0;
    for (let seed = 1; seed <= 120; seed++) {
      kept += compareWithBruteForce(seed, { ...plain, longest: 140 }).fits;
      free += compareWithBruteForce(seed, { ...plain, longest: 500 }).fits;
    }
    expect(kept).toBeGreaterThan(200);
    expect(kept).toBeLessThan(0.9 * free); // the limit takes insertions away
  });

  it('counts minutes by which the next start is put off, where they have a price', () => {
    let fits = 0;
    let isPositionMoved = 0;
    for (let seed = 1; seed <= 300; seed++) {
      const random = new Random(seed);
      const problem = randomProblem({ seed, stops: 9, vehicles: 2, prize: 9000, asymmetric: random.chance(0.5) });
      const plan = new WorkingPlan(problem);
      const scan = new InsertionScan(plan);
      for (let step = 0; step < 12; step++) {
        const stop = random.below(problem.stops.count);
        const v = random.below(problem.vehicles.count);
        const slot = plan.freeSlot(stop);
        if (slot < 0 || !plan.admits(stop, v)) continue;
        const base = v * plan.stride;
        const length = plan.length[v]!;
        const before = plan.cost;
        let least = Infinity;
        for (let p = 0; p <= length; p++) {
          const departure = plan.out1[base + p + 1]!;
          plan.insert(slot, v, p, 0);
          const putOff = plan.out1[base + p + 2]! - departure - plan.minutesOf[slot]!;
          if (plan.isFeasible(v)) least = Math.min(least, plan.cost - before + 2.5 * putOff);
          plan.rollback();
        }
        scan.minutePrice = 0;
        scan.scan(stop, v);
        const exact = scan.position1;
        scan.minutePrice = 2.5;
        scan.scan(stop, v);
        expect(scan.cost1).toBe(least);
        if (scan.position1 < 0) continue;
        if (scan.position1 !== exact) isPositionMoved++;
        fits++;
        plan.insert(slot, v, scan.position1, scan.option1);
        plan.commit();
      }
    }
    expect(fits).toBeGreaterThan(1000);
    expect(isPositionMoved).toBeGreaterThan(20);
  });

  it('says for what a longest time away is not worked out', () => {
    const problem = randomProblem({ seed: 1, stops: 3, vehicles: 1, longest: 100, lunch: true });
    expect(() => new WorkingPlan(problem)).toThrow('without lunch and overtime');
    const plan = new WorkingPlan(randomProblem({ seed: 1, stops: 3, vehicles: 1, longest: 100, options: 2 }));
    expect(() => [0, 1, 2].forEach((stop) => void new InsertionScan(plan).scan(stop, 0))).toThrow('one option');
  });
});
