import { checkPlan, type PlanningSnapshot, planWeek } from '@deckround/planning';
import { describe, expect, it } from '@jest/globals';
import { type ProvenWeek, provenWeek } from '../support/proven-week.js';
import { tinyWeek } from '../support/tiny-week.js';

/** The first dozen, and the two of the first 60 on which the search once missed most often. */
const WEEKS = [...Array.from({ length: 12 }, (_, k) => k + 1), 26, 28];
const SEVERAL = 4;
const SEEDS = Array.from({ length: 10 }, (_, k) => k + 1);
const ITERATIONS = 2000;

/** The same week with one rule given up. */
const WITHOUT: Record<string, (week: PlanningSnapshot) => PlanningSnapshot> = {
  lunch: (week) => ({ ...week, technicians: week.technicians.map((each) => ({ ...each, lunch: null })) }),
  overtime: (week) => ({ ...week, technicians: week.technicians.map((each) => ({ ...each, maxOvertimeMinutes: 0 })) }),
  skills: (week) => ({ ...week, items: week.items.map((item) => ({ ...item, skill: null })) }),
  windows: (week) => ({
    ...week,
    sites: week.sites.map((site) => ({
      ...site,
      windows: site.windows.map((window) => ({ ...window, open: '05:00', close: '20:00' })),
    })),
  }),
  'must-dos': (week) => ({ ...week, items: week.items.map((item) => ({ ...item, mustDo: false })) }),
};

const proofs = new Map<number, Promise<ProvenWeek>>();
function proofOf(number: number): Promise<ProvenWeek> {
  if (!proofs.has(number)) proofs.set(number, provenWeek(tinyWeek(number)));
  return proofs.get(number)!;
}

describe('tiny weeks solved to proven optimality', () => {
  it.each(WEEKS)('week %i: its optimum is reached on 9 of 10 seeds and never undercut', async (number) => {
    const week = tinyWeek(number);
    const { cents } = await proofOf(number);
    const costs = SEEDS.map((seed) => {
      const plan = planWeek(week, { snapshotHash: '', seed, stop: { iterations: ITERATIONS } });
      expect(checkPlan(week, plan)).toEqual([]);
      expect(plan.leftOut.filter((row) => row.mustDo)).toEqual([]);
      return plan.cost.total;
    });
    expect(Math.min(...costs)).toBe(cents);
    expect(costs.filter((cost) => cost === cents).length).toBeGreaterThanOrEqual(9);
  });

  it.each(Object.keys(WITHOUT))('in several of them %s decide', async (rule) => {
    let decided = 0;
    for (const number of WEEKS) {
      if (decided === SEVERAL) break;
      const { cents } = await provenWeek(WITHOUT[rule]!(tinyWeek(number)));
      if (cents !== (await proofOf(number)).cents) decided++;
    }
    expect(decided).toBe(SEVERAL);
  });

  it.each<[string, (week: ProvenWeek) => boolean]>([
    ['a lunch', ({ routes }) => routes.some((route) => route.hasLunch)],
    ['overtime', ({ routes }) => routes.some((route) => route.overtimeMinutes > 0)],
    ['shared preparation', ({ routes }) => routes.some((route) => route.sharedMinutes > 0)],
    ['several day routes', ({ routes }) => routes.length > 1],
    ['a route of several visits', ({ routes }) => routes.some((route) => route.siteIds.length > 1)],
    ['work left out', ({ leftOut }) => leftOut.length > 0],
  ])('several optima have %s', async (_, has) => {
    const optima = await Promise.all(WEEKS.map(proofOf));
    expect(optima.filter(has).length).toBeGreaterThanOrEqual(SEVERAL);
  });
});
