import { dateColumn, nowAt, wallClockOf } from '@deckround/register-store';
import type { WorkerContext } from '../context.js';

/** Days between two re-fits that nobody asked for. */
const REFIT_DAYS = 30;

/** Asks for a re-fit in every shop whose last one is a month old. Two processes that do so at once ask for one. */
export async function askMonthlyRefits({ store, queue, clock, logger }: WorkerContext): Promise<void> {
  const now = clock.now();
  const since = new Date(now.getTime() - REFIT_DAYS * 86_400_000);
  const due = await store.asOwner((tx) =>
    tx.shop.findMany({ where: { lifeRunRows: { none: { askedAt: { gt: since } } }, machineRows: { some: {} } } }),
  );
  for (const shop of due) {
    const asOf = dateColumn(wallClockOf(nowAt(shop, now), shop.timeZone).slice(0, 10));
    const rows = await store.inShop(shop.id, (tx) =>
      tx.lifeRun.createManyAndReturn({ data: [{ shopId: shop.id, asOf, askedAt: now }], skipDuplicates: true }),
    );
    for (const row of rows) {
      logger.info('lives.refit-asked', { shopId: shop.id, runId: row.id });
      await queue.enqueue('lives', { shopId: shop.id, runId: row.id });
    }
  }
}
