import type { JobPayload } from '@deckround/jobs';
import { inUse, upkeepSnapshot } from '@deckround/register';
import { dateText, loadRegister } from '@deckround/register-store';
import { forecastInThread } from '../compute/compute-in-thread.js';
import { snapshotHash } from '../compute/snapshot-hash.js';
import type { WorkerContext } from '../context.js';
import { holdRun } from '../runs/hold-run.js';
import { writeForecast } from './write-forecast.js';

/** Due dates and usage of every machine of a shop: read, decide, write. */
export function forecastProcessor(context: WorkerContext) {
  return async (payload: JobPayload<'forecast'>): Promise<void> => {
    await holdRun(context, 'forecast_run', payload, async (run) => {
      const { shopId, runId } = payload;
      const { snapshot, register } = await context.store.inShop(shopId, async (tx) => {
        const row = await tx.forecastRun.findUniqueOrThrow({ where: { id: runId } });
        const register = inUse(await loadRegister(tx), dateText(row.asOf));
        const span = { asOf: dateText(row.asOf), costFrom: dateText(row.costFrom), costDays: row.costDays };
        return { register, snapshot: upkeepSnapshot(register, span) };
      });
      const result = await forecastInThread(snapshot);
      await run.finish('done', (tx) =>
        writeForecast(tx, shopId, runId, register, snapshot, result, snapshotHash(snapshot)),
      );
    });
  };
}
