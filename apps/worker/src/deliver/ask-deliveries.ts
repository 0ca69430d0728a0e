import { findDueEndpoints, findDueSources, findShopsWithNotices } from '@deckround/store';
import type { WorkerContext } from '../context.js';

/** Asks every DELIVER_SECONDS for what is due to be sent or fetched. @returns how to stop; it waits for a look under way */
export function startDeliveries({ store, queue, config, logger }: WorkerContext): () => Promise<void> {
  let underWay: Promise<void> | null = null;
  const look = async () => {
    for (const { id, shopId } of await store.asOwner(findDueEndpoints))
      await queue.enqueue('deliver', { shopId, runId: id });
    for (const { id, shopId } of await store.asOwner(findDueSources))
      await queue.enqueue('hear', { shopId, runId: id });
    if (config.SMTP_URL === undefined) return;
    for (const { shopId } of await store.asOwner(findShopsWithNotices))
      await queue.enqueue('notify', { shopId, runId: shopId });
  };
  const timer = setInterval(() => {
    underWay ??= look()
      .catch((error: unknown) => logger.warn('deliveries.not-asked', { reason: String(error) }))
      .finally(() => {
        underWay = null;
      });
  }, config.DELIVER_SECONDS * 1000);
  return async () => {
    clearInterval(timer);
    await underWay;
  };
}
