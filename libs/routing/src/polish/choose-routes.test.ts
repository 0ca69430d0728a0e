import { describe, expect, it } from '@jest/globals';
import { fromNumbers, inNumbers } from '../exchange.js';
import { solve } from '../search.js';
import { maxIterations } from '../stop/max-iterations.js';
import { randomProblem } from '../test-support/random-problem.js';
import { WorkingPlan } from '../working-plan.js';
import type { ChoiceProblem } from './choice.js';
import { chooseRoutes } from './choose-routes.js';

const problem = randomProblem({ seed: 5, stops: 30, vehicles: 6, days: 3, lunch: true, overtime: true });
const routesOf = (seed: number, iterations: number) => {
  const { routes } = solve(problem, { seed, stop: maxIterations(iterations) });
  const plan = new WorkingPlan(problem);
  plan.replaceRoutes(routes);
  return { routes, plan };
};

describe('routes put in place of others', () => {
  it('cost what the search said, and are known again from numbers', () => {
    const { cost, routes } = solve(problem, { seed: 1, stop: maxIterations(500) });
    const plan = new WorkingPlan(problem);
    plan.replaceRoutes(routesOf(2, 20).routes);
    plan.replaceRoutes(routes);
    expect(plan.cost).toBe(cost);
    expect(plan.routes()).toEqual(routes);
    const sum = routes.reduce((total, _, v) => total + plan.routeCost(v), 0);
    expect(sum).toBe(cost);
    expect(fromNumbers(plan, inNumbers(plan, cost, routes))).toEqual(routes);
  });
});

describe('choosing among routes met', () => {
  it('offers every route with its price, and builds the plan that was chosen', () => {
    const { plan } = routesOf(1, 5);
    const better = routesOf(3, 2000);
    expect(better.plan.cost).toBeLessThan(plan.cost);
    const pool = better.routes.flatMap((visits, vehicle) =>
      visits.length === 0 ? [] : [{ vehicle, cost: better.plan.routeCost(vehicle), visits }],
    );
    let asked: ChoiceProblem | null = null;
    const chosen = chooseRoutes(plan, pool, (question) => {
      asked = question;
      return Array.from(question.cost, (_, j) => j);
    })!;
    expect(asked!.cost.reduce((a, b) => a + b, 0)).toBe(better.plan.cost);
    plan.replaceRoutes(chosen);
    expect(plan.cost).toBe(better.plan.cost);
  });

  it('changes nothing when nothing cheaper is found', () => {
    expect(chooseRoutes(routesOf(1, 5).plan, [], () => null)).toBeNull();
  });
});
