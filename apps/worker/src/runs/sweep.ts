import type { JobName } from '@deckround/jobs';
import { dropOldEntries } from '@deckround/register-store';
import { findLostRuns, type RunTable } from '@deckround/store';
import type { WorkerContext } from '../context.js';
import { askMonthlyRefits } from '../lives/ask-refits.js';
import { tellNearLimits } from '../notices/tell-limits.js';

const JOB_OF: Readonly<Record<RunTable, JobName>> = { plan_run: 'plan', forecast_run: 'forecast', life_run: 'lives' };

/** Asks again for work that nobody is doing: its job was lost, or its holder was killed. */
export async function sweepLostRuns({ store, queue, config, logger }: WorkerContext): Promise<void> {
  const lost = await store.asOwner((tx) => findLostRuns(tx, config.SWEEP_SECONDS));
  for (const { id, shopId, table } of lost) {
    logger.info('run.asked-again', { table, runId: id });
    await queue.enqueue(JOB_OF[table], { shopId, runId: id });
  }
}

async function sweepAll(context: WorkerContext): Promise<void> {
  await sweepLostRuns(context);
  await askMonthlyRefits(context);
  await tellNearLimits(context);
  await context.store.asOwner((tx) => dropOldEntries(tx, context.clock.now()));
}

/** Sweeps now and then every SWEEP_SECONDS. @returns how to stop; it waits for a sweep under way */
export function startSweep(context: WorkerContext): () => Promise<void> {
  let underWay: Promise<void> | null = null;
  const sweep = () => {
    underWay ??= sweepAll(context)
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
