import { describe, expect, it } from '@jest/globals';
import { SingleOptionMenus } from './menu.js';
import { type SolveOptions, solve } from './search.js';
import { anyOf } from './stop/any-of.js';
import { cancelled } from './stop/cancelled.js';
import { maxIterations } from './stop/max-iterations.js';
import { maxRuntime } from './stop/max-runtime.js';
import { cheapestPlan, planCost } from './test-support/brute-force.js';
import { randomProblem } from './test-support/random-problem.js';

const week = (seed: number, extra = {}) =>
  randomProblem({ seed, stops: 30, vehicles: 8, days: 4, lunch: true, overtime: true, windowsPerDay: 2, ...extra });

const crowded = { stops: 60, vehicles: 4, days: 2, lunch: false, overtime: false, windowsPerDay: 1, prize: 9000 };

const run = (problem: ReturnType<typeof week>, iterations: number, extra: Partial<SolveOptions> = {}) =>
  solve(problem, { seed: 3, stop: maxIterations(iterations), ...extra });

describe('solve', () => {
  it('gives the same plan twice for the same seed and iterations', () => {
    const problem = week(1);
    expect(run(problem, 1000)).toEqual(run(problem, 1000));
  });

  it('gives the same plan with the insertion cache off', () => {
    for (const extra of [{}, { asymmetric: true }, { options: 3 }, { stops: 60, vehicles: 24 }, crowded]) {
      const problem = week(2, extra);
      expect(run(problem, 500, { parameters: { insertionCache: false } })).toEqual(run(problem, 500));
    }
  });

  it('gives the same plan however the places are numbered', () => {
    for (const extra of [{}, { asymmetric: true }, crowded]) {
      const problem = week(5, extra);
      expect(run(backwards(problem), 500)).toEqual(run(problem, 500));
    }
  });

  it('gives minutes a price where days are full, but not where there is lunch', () => {
    const differs = (extra: object) => {
      const problem = week(2, extra);
      return run(problem, 500, { parameters: { minutePrice: 0 } }).cost !== run(problem, 500).cost;
    };
    expect(differs(crowded)).toBe(true);
    expect(differs({ ...crowded, lunch: true })).toBe(false);
    expect(differs({ ...crowded, vehicles: 30 })).toBe(false);
  });

  it('cools anew from the best plan where stops are few, and a run cut short is the beginning of the whole one', () => {
    const problem = week(4, { stops: 8 });
    const improvements = (stop: SolveOptions['stop']) => {
      const seen: [number, number][] = [];
      const result = run(problem, 0, { stop, onBest: ({ iterations, cost }) => seen.push([iterations, cost]) });
      expect(planCost(problem, result.routes)).toBe(result.cost);
      return seen;
    };
    const whole = improvements(maxIterations(60_000));
    for (const cutAt of [1000, 20_000, 40_000]) {
      expect(improvements(maxIterations(60_000, cutAt))).toEqual(whole.filter(([at]) => at <= cutAt));
    }
  });

  it('reports the cost that a full evaluation finds, on asymmetric and non-metric travel too', () => {
    for (let seed = 1; seed <= 12; seed++) {
      const problem = week(seed, { asymmetric: seed % 2 === 0, nonMetric: seed % 3 === 0, options: 1 + (seed % 3) });
      const result = run(problem, 400);
      expect(planCost(problem, result.routes)).toBe(result.cost);
    }
  });

  it('reaches the optimum of tiny problems on at least 9 of 10 seeds', () => {
    for (let instance = 1; instance <= 6; instance++) {
      const problem = randomProblem({
        seed: 100 + instance,
        stops: 5,
        vehicles: 2,
        days: 1 + (instance % 2),
        lunch: instance % 2 === 0,
        overtime: instance % 3 === 0,
        windowsPerDay: 1 + (instance % 2),
        options: 1 + (instance % 2),
      });
      const optimum = cheapestPlan(problem);
      let reached = 0;
      for (let seed = 1; seed <= 10; seed++) {
        const { cost } = solve(problem, { seed, stop: maxIterations(2000) });
        expect(cost).toBeGreaterThanOrEqual(optimum);
        if (cost === optimum) reached++;
      }
      expect(reached).toBeGreaterThanOrEqual(9);
    }
  });

  it('never takes out a pinned visit', () => {
    const problem = week(6);
    const first = run(problem, 200);
    const vehicle = first.routes.findIndex((route) => route.length > 0);
    const stop = first.routes[vehicle]![0]!.stop;
    const result = run(problem, 1000, { start: [{ stop, vehicle, pinned: true }] });
    expect(result.routes[vehicle]!.map((visit) => visit.stop)).toContain(stop);
  });

  it('stops when cancelled, with a valid plan', () => {
    const problem = week(7);
    let asked = 0;
    const result = run(problem, 0, {
      stop: anyOf(
        maxIterations(1e6),
        cancelled(() => ++asked > 3),
      ),
    });
    expect(result.iterations).toBe(3 * 256);
    expect(planCost(problem, result.routes)).toBe(result.cost);
  });

  it('stops by the clock it is given', () => {
    let now = 0;
    const result = run(week(8), 0, { stop: maxRuntime(1, () => (now += 100)) });
    expect(result.iterations).toBe(9 * 256);
  });

  it('never takes out a stop over which another is reached in time', () => {
    // Straight to the second stop is cheap but takes 200 minutes, over the first one 90: before its window closes.
    const problem = randomProblem({ seed: 1, stops: 2, vehicles: 1 });
    const straight = {
      ...problem,
      vehicles: { ...problem.vehicles, overtimeCost: Int32Array.of(0) },
      minutes: Int32Array.from([0, 50, 200, 50, 0, 40, 20, 40, 0]),
      arcCost: [Int32Array.from([0, 50, 10, 20, 0, 40, 10, 40, 0])],
      windowList: Int32Array.from([0, 1]),
      windowStart: Int32Array.from([0, 1, 2]),
      windowOpen: Int32Array.from([420, 420]),
      windowLast: Int32Array.from([700, 520]),
      windowClose: Int32Array.from([700, 600]),
      fixedCost: new Int32Array(2),
      menus: new SingleOptionMenus([1, 5], [75, 1000]),
    };
    const result = run(straight, 2000);
    expect(result.routes[0]!.map((visit) => visit.stop)).toEqual([0, 1]);
    expect(planCost(straight, result.routes)).toBe(result.cost);
  });

  it('solves the empty problem', () => {
    const problem = randomProblem({ seed: 1, stops: 0, vehicles: 2 });
    expect(run(problem, 300)).toMatchObject({ cost: 0, unassigned: [] });
  });
});

/** The same problem with its places numbered from the last to the first. */
function backwards(problem: ReturnType<typeof week>): ReturnType<typeof week> {
  const { places, vehicles, stops } = problem;
  const turn = (each: Int32Array) => each.map((place) => places - 1 - place);
  return {
    ...problem,
    // Of a matrix read from its end, rows and columns both run backwards.
    minutes: problem.minutes.slice().reverse(),
    arcCost: problem.arcCost.map((matrix) => matrix.slice().reverse()),
    vehicles: { ...vehicles, startPlace: turn(vehicles.startPlace), endPlace: turn(vehicles.endPlace) },
    stops: { ...stops, place: turn(stops.place) },
  };
}
