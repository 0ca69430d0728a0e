import { describe, expect, it } from '@jest/globals';
import { InsertionScan } from './insertion-scan.js';
import { Random } from './random.js';
import { Survey } from './survey.js';
import { randomMove } from './test-support/random-moves.js';
import { randomProblem } from './test-support/random-problem.js';
import { WorkingPlan } from './working-plan.js';

const members = ({ placed, unserved, usedRoutes }: Survey) => ({
  placed: [...placed.members.slice(0, placed.count)].sort(),
  unserved: [...unserved.members.slice(0, unserved.count)].sort(),
  usedRoutes,
});

describe('Survey', () => {
  it('that follows every accepted change knows what a look at the whole plan tells', () => {
    const problem = randomProblem({ seed: 3, stops: 24, vehicles: 6, days: 2, options: 2 });
    const plan = new WorkingPlan(problem);
    const scan = new InsertionScan(plan);
    const random = new Random(6);
    const pinned = new Uint8Array(plan.slotCount);
    pinned[5] = 1;
    const following = new Survey(plan, pinned);
    plan.closed[2] = 1;
    following.renew();
    let changes = 0;
    for (let move = 0; move < 2000; move++) {
      randomMove(plan, scan, random);
      if (random.chance(0.3)) {
        plan.rollback();
      } else if (random.chance(0.5)) {
        following.follow();
        if (plan.commit()) changes++;
        const anew = new Survey(plan, pinned);
        anew.renew();
        expect(members(following)).toEqual(members(anew));
      }
    }
    expect(changes).toBeGreaterThan(200);
  });
});
