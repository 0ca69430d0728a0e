import { expect, it } from '@jest/globals';
import { planWeek } from './plan-week.js';
import type { PlanningSnapshot } from './snapshot.js';
import { aBlockedWeek, BLOCKS, given } from './test-support/a-blocked-week.js';

const SEEDS = 12;

function missing(week: PlanningSnapshot, seed: number) {
  const plan = planWeek(week, { snapshotHash: '', seed, stop: { iterations: 200 } });
  return plan.leftOut.find((row) => row.itemId === 'must');
}

it.each(BLOCKS)(
  'a must-do in a week full of optional work that is kept out by %s alone: that is offered, and all that is offered is enough',
  (block) => {
    for (let seed = 1; seed <= SEEDS; seed++) {
      const week = aBlockedWeek(block, seed);
      const rules = missing(week, seed)?.remedyRules ?? [];
      expect({ seed, offered: rules.map((set) => set.map((rule) => rule.key)) }).toEqual({
        seed,
        offered: expect.arrayContaining([[block]]),
      });
      for (const set of rules) {
        const relaxed = set.reduce(given, week);
        expect({ seed, set, missing: missing(relaxed, seed) }).toEqual({ seed, set, missing: undefined });
      }
    }
  },
);
