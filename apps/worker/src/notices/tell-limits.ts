import { dateText } from '@deckround/register-store';
import { emitEvent, findNearLimits } from '@deckround/store';
import type { WorkerContext } from '../context.js';

/** A stopgap's limit is told this many days before it is reached. */
const NEAR_DAYS = 5;

/** Tells of every stopgap whose limit nears, once. Two processes that do so at the same time tell it once. */
export async function tellNearLimits({ store, clock, logger }: WorkerContext): Promise<void> {
  const now = clock.now();
  for (const { stopgapId, shopId } of await store.asOwner((tx) => findNearLimits(tx, now, NEAR_DAYS))) {
    await store.inShop(shopId, async (tx) => {
      const { count } = await tx.stopgap.updateMany({
        where: { id: stopgapId, limitToldAt: null },
        data: { limitToldAt: now },
      });
      if (count === 0) return;
      const { machine, ...stopgap } = await tx.stopgap.findUniqueOrThrow({
        where: { id: stopgapId },
        include: { machine: true, dueForecasts: { where: { p10: { not: null } }, orderBy: { p10: 'asc' }, take: 1 } },
      });
      const early = stopgap.limitHours === null ? null : (stopgap.dueForecasts[0]?.p10 ?? null);
      const limits = [stopgap.limitOn, early].flatMap((each) => (each ? [dateText(each)] : [])).sort();
      const told = { stopgapId, machineId: machine.id, siteId: machine.siteId, limitOn: limits[0]! };
      await emitEvent(tx, shopId, 'stopgap.limit-near', told, now);
      logger.info('stopgap.limit-told', { stopgapId });
    });
  }
}
