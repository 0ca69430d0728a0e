import { checkPlan } from '@deckround/planning';
import { planInThread, snapshotHash } from '@deckround/worker';
import { describe, expect, it } from '@jest/globals';
import { generateSnapshot } from '../../libs/planning/src/test-support/generate-snapshot.js';

const snapshot = generateSnapshot({
  seed: 8,
  sites: 20,
  machinesPerSite: 4,
  items: 90,
  technicians: 3,
  days: 4,
  promises: true,
});
const large = generateSnapshot({
  ...{ seed: 9, sites: 200, machinesPerSite: 4, items: 3600, technicians: 14 },
  ...{ days: 5, mustDos: true, promises: true, reachKm: 40 },
});
const plan = (options: { threads: number; combine: boolean; seed?: number }) =>
  planInThread(snapshot, { snapshotHash: snapshotHash(snapshot), seed: 4, iterations: 12_000, ...options }).plan;

describe('a week searched on two threads', () => {
  it('is a sound plan, the same for the same seed and iterations', async () => {
    const [first, second] = [await plan({ threads: 2, combine: true }), await plan({ threads: 2, combine: true })];
    expect(checkPlan(snapshot, first)).toEqual([]);
    expect(second).toEqual(first);
    expect(first).toMatchObject({ threads: 2, combined: true });
    // few routes are searched as a whole by both
    expect(first).not.toHaveProperty('divided');
  });

  it('hands in a plan no dearer than what either would have had without the last meeting', async () => {
    const alone = await plan({ threads: 1, combine: false });
    const together = await plan({ threads: 2, combine: false });
    expect(checkPlan(snapshot, together)).toEqual([]);
    // the searches part ways at the first exchange, so that only their mean is comparable; far off would be a fault
    expect(together.cost.total).toBeLessThan(alone.cost.total * 1.02);
  });

  it('is divided between both where it is large: a sound plan, the same again, and cheaper than one search finds', async () => {
    const search = (threads: number) =>
      planInThread(large, { snapshotHash: '', seed: 2, iterations: 2000, threads, combine: true }).plan;
    const [first, second, alone] = [await search(2), await search(2), await search(1)];
    expect(checkPlan(large, first)).toEqual([]);
    expect(second).toEqual(first);
    expect(first.divided).toBeGreaterThan(1);
    expect(alone).not.toHaveProperty('divided');
    expect(first.cost.total).toBeLessThan(alone.cost.total);
  }, 120_000);

  it.each([
    ['small', snapshot],
    ['large', large],
  ])('is cut short by a cancel, on both threads: a %s plan', async (_size, snapshot) => {
    const search = planInThread(snapshot, { snapshotHash: '', seed: 1, iterations: 50_000_000, threads: 2 });
    setTimeout(() => search.cancel(), 1500);
    const cut = await search.plan;
    expect(cut.iterations).toBeLessThan(50_000_000);
    expect(checkPlan(snapshot, cut)).toEqual([]);
  });
});
