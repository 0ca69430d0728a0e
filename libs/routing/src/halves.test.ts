import { describe, expect, it } from '@jest/globals';
import { type Exchange, inNumbers, type Shown } from './exchange.js';
import { Halves } from './halves.js';
import { InsertionScan } from './insertion-scan.js';
import { Random } from './random.js';
import { Survey } from './survey.js';
import { fillPlan } from './test-support/fill-plan.js';
import { randomProblem } from './test-support/random-problem.js';
import { WorkingPlan } from './working-plan.js';

/** Stops in twos share a limit of one visit a day. */
const problem = (() => {
  const plain = randomProblem({ seed: 11, stops: 60, vehicles: 12, days: 3, options: 2 });
  const crowd = Int32Array.from(plain.stops.crowd, (_, s) => s >> 1);
  return { ...plain, stops: { ...plain.stops, crowd }, visitsPerDay: new Int32Array(30).fill(1) };
})();

function filled(): WorkingPlan {
  const plan = new WorkingPlan(problem);
  fillPlan(plan, new InsertionScan(plan), new Random(3), 600);
  return plan;
}

/** These menus name their options by number, which does not cross to the other search. */
const plainly = (routes: readonly (readonly { stop: number; minutes: number }[])[] | undefined) =>
  routes?.map((route) => route.map(({ stop, minutes }) => ({ stop, minutes })));
const costed = (plan: WorkingPlan) => ({ cost: plan.cost, routes: plan.routes() });

/** One of two searches of the same plan; the other shows what `theirs` says. */
function search(side: 0 | 1, theirs: (mine: Shown) => ReturnType<Exchange['meet']>) {
  const plan = filled();
  const survey = new Survey(plan, new Uint8Array(plan.slotCount));
  const halves = new Halves(plan, survey, { side, every: 1, meet: theirs });
  const meet = (isLast = false) => halves.meet(costed(plan), isLast);
  return { plan, survey, halves, meet };
}

/** The other stands where this one does. */
const likeMine = (mine: Shown) => ({ ...mine, isLast: false });

describe('two halves of a plan', () => {
  it('are each other’s rest, of about half the visits each, every crowd whole', () => {
    const [one, other] = [search(0, likeMine), search(1, likeMine)];
    const seen = new Set<string>();
    const { count } = problem.vehicles;
    for (let meeting = 0; meeting < 20; meeting++) {
      for (const { halves, plan, meet } of [one, other]) {
        meet();
        halves.divide(costed(plan));
      }
      let visits = 0;
      for (let v = 0; v < count; v++) {
        expect(one.plan.closed[v]! + other.plan.closed[v]!).toBe(1);
        if (one.plan.closed[v] === 0) visits += one.plan.length[v]!;
      }
      const all = one.plan.length.reduce((sum, length) => sum + length, 0);
      expect(Math.abs(2 * visits - all)).toBeLessThanOrEqual(2 * Math.max(...one.plan.length));
      for (let s = 0; s < problem.stops.count; s++) {
        expect(one.survey.foreign[s]! + other.survey.foreign[s]!).toBe(1);
        expect(one.survey.foreign[s]).toBe(one.survey.foreign[s ^ 1]);
      }
      expect(one.survey.placed.count + other.survey.placed.count).toBeLessThanOrEqual(all);
      seen.add(one.plan.closed.join(''));
    }
    expect(seen.size).toBeGreaterThan(10);
  });

  it('take nothing into a closed route, and keep what the other half does of their stops', () => {
    const { plan, survey, halves, meet } = search(0, likeMine);
    meet();
    halves.divide(costed(plan));
    for (let v = 0; v < problem.vehicles.count; v++) {
      if (plan.closed[v] === 0) continue;
      for (let s = 0; s < problem.stops.count; s++) expect(plan.admits(s, v)).toBe(false);
    }
    const own = survey.placed.members.subarray(0, survey.placed.count);
    expect(own.length).toBeGreaterThan(0);
    for (const x of own) {
      expect(plan.closed[plan.routeOf[x]!]).toBe(0);
      expect(survey.foreign[plan.stopOf[x]!]).toBe(0);
    }
    for (const s of survey.unserved.members.subarray(0, survey.unserved.count)) expect(survey.foreign[s]).toBe(0);
  });

  it('become one plan of what both have found, as long as both divided the same plan', () => {
    for (const isSame of [true, false]) {
      let other: WorkingPlan | undefined;
      const { plan, halves, meet } = search(0, (mine) => {
        if (!other) return likeMine(mine);
        const shown = inNumbers(other, other.cost, other.routes());
        return { best: shown, current: shown, division: isSame ? mine.division : mine.division + 1, isLast: false };
      });
      meet();
      halves.divide(costed(plan));
      const before = plainly(plan.routes())!;
      const closed = plan.closed.slice();
      const dropFrom = (changed: WorkingPlan, half: number) => {
        const v = closed.findIndex((each, k) => each === half && changed.length[k]! > 0);
        changed.removeRun(v, 1, 1);
        changed.refresh(v);
        changed.commit();
        return v;
      };
      other = filled();
      const [mine, theirs] = [dropFrom(plan, 0), dropFrom(other, 1)];
      const [best, current] = meet();
      const shorter = (v: number) => before[v]!.slice(1);
      if (isSame) {
        expect(plainly(best)).toEqual(before.map((route, v) => (v === mine || v === theirs ? shorter(v) : route)));
        expect(plainly(current)).toEqual(plainly(best));
      } else {
        // One of them had another plan before it: the cheaper one is taken as it is.
        const kept = other.cost < plan.cost ? theirs : mine;
        expect(plainly(best)).toEqual(before.map((route, v) => (v === kept ? shorter(v) : route)));
        expect(current).toBeUndefined();
      }
      expect(plan.closed.includes(1)).toBe(false);
    }
  });

  it('are whole again once the other search has ended or is gone', () => {
    for (const last of [null, 'ended'] as const) {
      let isFirst = true;
      let shown = 0;
      const { plan, survey, halves, meet } = search(1, (mine) => {
        shown++;
        if (isFirst) return likeMine(mine);
        return last === null ? null : { ...mine, isLast: true };
      });
      meet();
      halves.divide(costed(plan));
      expect(plan.closed).toContain(1);
      isFirst = false;
      meet();
      halves.divide(costed(plan));
      expect(plan.closed.includes(1) || survey.foreign.includes(1)).toBe(false);
      expect(meet()).toEqual([]);
      // Who has ended is not asked again, but waits for what the other ends with.
      expect(shown).toBe(last === null ? 3 : 2);
      expect(meet(true)).toEqual([]);
      expect(shown).toBe(last === null ? 4 : 3);
    }
  });
});
