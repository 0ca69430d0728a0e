import type { JobPayload } from '@deckround/jobs';
import { cancelFollowing, nextPlanRun } from '@deckround/store';
import type { WorkerContext } from '../context.js';

/** Asks for the shop's next plan. After a failure, not for those that were to follow: they would count on what it lacks. */
export async function endTurn(
  { store, queue, logger }: WorkerContext,
  { shopId, runId }: JobPayload<'plan'>,
  ended: 'finished' | 'failed',
): Promise<void> {
  const next = await store.inShop(shopId, async (tx) => {
    if (ended === 'failed') await cancelFollowing(tx, runId);
    return nextPlanRun(tx);
  });
  if (next === null) return;
  try {
    await queue.enqueue('plan', { shopId, runId: next });
  } catch (error) {
    // the sweep asks again
    logger.warn('run.not-enqueued', { name: 'plan', runId: next, reason: String(error) });
  }
}
