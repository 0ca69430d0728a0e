import type { JobPayload } from '@deckround/jobs';
import { dateText, loadLifeHistory, loadRegister, writeLearned } from '@deckround/register-store';
import { learnInThread } from '../compute/compute-in-thread.js';
import type { WorkerContext } from '../context.js';
import { holdRun } from '../runs/hold-run.js';

/** Re-fits the lives of every replacing item of a shop and writes what they propose: read, decide, write. */
export function livesProcessor(context: WorkerContext) {
  return async (payload: JobPayload<'lives'>): Promise<void> => {
    await holdRun(context, 'life_run', payload, async (run) => {
      const { shopId, runId } = payload;
      const { asOf, register, history } = await context.store.inShop(shopId, async (tx) => ({
        asOf: dateText((await tx.lifeRun.findUniqueOrThrow({ where: { id: runId } })).asOf),
        register: await loadRegister(tx),
        history: await loadLifeHistory(tx),
      }));
      const learned = await learnInThread(register, asOf, history);
      await run.finish('done', (tx) => writeLearned(tx, shopId, runId, asOf, learned));
    });
  };
}
