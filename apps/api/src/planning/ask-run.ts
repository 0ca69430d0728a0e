import type { JobName, JobQueue } from '@deckround/jobs';
import type { Logger } from '@deckround/platform';

/**
 * Asks for background work once its row is written. When the queue cannot be reached the row stays asked, and the
 * sweep asks again.
 */
export async function askRun(
  queue: JobQueue,
  logger: Logger,
  name: JobName,
  shopId: string,
  runId: string,
): Promise<void> {
  try {
    await queue.enqueue(name, { shopId, runId });
  } catch (error) {
    logger.warn('run.not-enqueued', { name, runId, reason: String(error) });
  }
}
