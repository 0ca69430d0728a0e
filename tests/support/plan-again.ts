import { type Clock, createLogger, parseConfig } from '@deckround/platform';
import type { Store } from '@deckround/store';
import { createProcessors } from '@deckround/worker';
import { expect } from '@jest/globals';
import { WEEK } from './small-shop.js';

/** Plans the small shop's week as the worker does, in this process. @returns the run */
export async function planAgain(store: Store, shopId: string, clock: Clock): Promise<string> {
  const run = await store.inShop(shopId, (tx) =>
    tx.planRun.create({
      data: { shopId, weekOf: new Date(`${WEEK}T00:00:00Z`), days: 7, seconds: 5, iterations: 2000 },
    }),
  );
  const context = { config: parseConfig({}), store, logger: createLogger('silent', 'test'), clock, holder: 'test' };
  await createProcessors(context).plan({ shopId, runId: run.id });
  expect(await store.inShop(shopId, (tx) => tx.planRun.findUniqueOrThrow({ where: { id: run.id } }))).toMatchObject({
    status: 'done',
  });
  return run.id;
}
