import { claimRun, finishRun, type RunTable, renewLease, type Tx } from '@deckround/store';
import type { WorkerContext } from '../context.js';

/** Thrown when another holder took the run over: whatever was computed is theirs to write now. */
export class LeaseLost extends Error {
  override readonly name = 'LeaseLost';
}

export interface HeldRun {
  /** Writes the result and the end of the run in one transaction. @throws LeaseLost, with nothing written */
  finish(status: 'done' | 'cancelled', write: (tx: Tx) => Promise<void>): Promise<void>;
  /** True once the lease went to someone else. */
  isLost(): boolean;
}

/**
 * Runs `work` on one row of background work, at most one holder at a time: claims the row, renews the lease while the
 * work goes on, and records a failure that will not go away by itself.
 *
 * @returns how it ended; null = it was not ours to do, or is no longer
 */
export async function holdRun(
  context: WorkerContext,
  table: RunTable,
  { shopId, runId }: { shopId: string; runId: string },
  work: (run: HeldRun) => Promise<void>,
): Promise<'finished' | 'failed' | null> {
  const { store, holder, config, logger } = context;
  const lease = config.JOB_LEASE_SECONDS;
  if (!(await store.inShop(shopId, (tx) => claimRun(tx, table, runId, holder, lease)))) return null;
  logger.info('run.claimed', { table, runId, holder });
  let lost = false;
  const heartbeat = setInterval(
    () => {
      store
        .inShop(shopId, (tx) => renewLease(tx, table, runId, holder, lease))
        .then((kept) => {
          if (!kept) lost = true;
        })
        .catch((error: unknown) => logger.warn('run.lease-not-renewed', { table, runId, reason: String(error) }));
    },
    (lease * 1000) / 3,
  );
  try {
    await work({
      isLost: () => lost,
      finish: async (status, write) => {
        await store.inShop(shopId, async (tx) => {
          // First the row, so that two holders cannot both write: the second finds it no longer its own.
          if (!(await finishRun(tx, table, runId, holder, status))) throw new LeaseLost(`${table} ${runId}`);
          await write(tx);
        });
        logger.info('run.finished', { table, runId, status });
      },
    });
    return 'finished';
  } catch (error) {
    if (error instanceof LeaseLost) {
      logger.warn('run.lease-lost', { table, runId });
      return null;
    }
    logger.error('run.failed', { table, runId }, error);
    const reason = error instanceof Error ? error.message : String(error);
    await store.inShop(shopId, (tx) => finishRun(tx, table, runId, holder, 'failed', reason.slice(0, 2000)));
    return 'failed';
  } finally {
    clearInterval(heartbeat);
  }
}
