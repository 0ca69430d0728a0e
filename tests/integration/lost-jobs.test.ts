import type { JobQueue } from '@deckround/jobs';
import { parseConfig } from '@deckround/platform';
import { claimRun, finishRun, renewLease } from '@deckround/store';
import { createProcessors, sweepLostRuns } from '@deckround/worker';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { createSmallShop, WEEK } from '../support/small-shop.js';
import { workerContext } from '../support/worker-context.js';

let database: TestDatabase;
let shopId: string;
beforeAll(async () => {
  database = await freshDatabase();
  ({ shopId } = await createSmallShop(database.store));
});
afterAll(() => database.drop());

const askPlan = (iterations: number) =>
  database.store.inShop(shopId, (tx) =>
    tx.planRun.create({ data: { shopId, weekOf: new Date(`${WEEK}T00:00:00Z`), days: 7, seconds: 5, iterations } }),
  );

function context(holder: string, queue?: JobQueue) {
  const config = parseConfig({ JOB_LEASE_SECONDS: '2', SWEEP_SECONDS: '1' });
  return workerContext(database.store, { config, holder, ...(queue && { queue }) });
}

describe('a run', () => {
  it('is held by one at a time, taken over only when the lease has run out, and finished by its holder alone', async () => {
    const { store } = database;
    const { id } = await askPlan(1000);
    expect(await store.inShop(shopId, (tx) => claimRun(tx, 'plan_run', id, 'first', 1))).toBe(true);
    expect(await store.inShop(shopId, (tx) => claimRun(tx, 'plan_run', id, 'second', 1))).toBe(false);
    await new Promise((done) => setTimeout(done, 1200));
    expect(await store.inShop(shopId, (tx) => claimRun(tx, 'plan_run', id, 'second', 30))).toBe(true);
    expect(await store.inShop(shopId, (tx) => renewLease(tx, 'plan_run', id, 'first', 30))).toBe(false);
    expect(await store.inShop(shopId, (tx) => finishRun(tx, 'plan_run', id, 'first', 'done'))).toBe(false);
    expect(await store.inShop(shopId, (tx) => finishRun(tx, 'plan_run', id, 'second', 'done'))).toBe(true);
    expect(await store.inShop(shopId, (tx) => claimRun(tx, 'plan_run', id, 'third', 1))).toBe(false);
  });

  it('given to two processors at once leaves one effect', async () => {
    const { id } = await askPlan(1000);
    await Promise.all(['one', 'two'].map((holder) => createProcessors(context(holder)).plan({ shopId, runId: id })));
    const run = await database.store.inShop(shopId, (tx) => tx.planRun.findUniqueOrThrow({ where: { id } }));
    expect(run).toMatchObject({ status: 'done', attempts: 1 });
    const plan = run.plan as unknown as { visits: object[] };
    expect(await database.store.inShop(shopId, (tx) => tx.visit.count({ where: { planRunId: id } }))).toBe(
      plan.visits.length,
    );
    await createProcessors(context('three')).plan({ shopId, runId: id });
    const after = await database.store.inShop(shopId, (tx) => tx.planRun.findUniqueOrThrow({ where: { id } }));
    expect(after.attempts).toBe(1);
  });

  it('whose job was lost is asked for again', async () => {
    const { id } = await askPlan(1000);
    await database.store.inShop(shopId, (tx) =>
      tx.planRun.update({ where: { id }, data: { askedAt: new Date(Date.now() - 60_000) } }),
    );
    const asked: string[] = [];
    const queue = {
      enqueue: async (_: string, payload: { runId: string }) => void asked.push(payload.runId),
      isReady: async () => true,
      close: async () => {},
    };
    await sweepLostRuns(context('sweeper', queue));
    expect(asked).toContain(id);
    await createProcessors(context('one')).plan({ shopId, runId: id });
  });

  it('that cannot be done is failed with its reason, not tried for ever', async () => {
    const { id } = await askPlan(1000);
    await database.store.inShop(shopId, (tx) =>
      tx.planRun.update({ where: { id }, data: { snapshot: { version: 1 } } }),
    );
    await createProcessors(context('one')).plan({ shopId, runId: id });
    const run = await database.store.inShop(shopId, (tx) => tx.planRun.findUniqueOrThrow({ where: { id } }));
    expect(run.status).toBe('failed');
    expect(run.error).toBeTruthy();
  });
});
