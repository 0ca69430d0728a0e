import { findLostRuns } from '@deckround/store';
import type { SweepContext } from '../context.js';

/** Asks again for work that nobody is doing: its job was lost, or its holder was killed. */
export async function sweepLostRuns({ store, queue, config, logger }: SweepContext): Promise<void> {
  const lost = await store.asOwner((tx) => findLostRuns(tx, config.SWEEP_SECONDS));
  for (const { id, shopId, table } of lost) {
    logger.info('run.asked-again', { table, runId: id });
    await queue.enqueue(table === 'plan_run' ? 'plan' : 'forecast', { shopId, runId: id });
  }
}

/** Sweeps now and then every SWEEP_SECONDS. @returns how to stop; it waits for a sweep under way */
export function startSweep(context: SweepContext): () => Promise<void> {
  let underWay: Promise<void> | null = null;
  const sweep = () => {
    underWay ??= sweepLostRuns(context)
      .catch((error: unknown) => context.logger.warn('sweep.failed', { reason: String(error) }))
      .finally(() => {
        underWay = null;
      });
  };
  sweep();
  const timer = setInterval(sweep, context.config.SWEEP_SECONDS * 1000);
  return async () => {
    clearInterval(timer);
    await underWay;
  };
}
