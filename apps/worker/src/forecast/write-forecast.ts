import { machineItems, type Register } from '@deckround/register';
import { insertDueForecasts, insertUsageForecasts, type Tx } from '@deckround/store';
import type { UpkeepSnapshot } from '@deckround/upkeep';
import type { ForecastResult } from '../compute/messages.js';

/** Replaces the shop's forecasts by the newest ones. */
export async function writeForecast(
  tx: Tx,
  shopId: string,
  runId: string,
  register: Register,
  snapshot: UpkeepSnapshot,
  { due, usage }: ForecastResult,
  hash: string,
): Promise<void> {
  const rowIds = new Map(machineItems(register).map((each) => [each.id, each.item.id]));
  const lastDays = new Map(register.machines.map((machine) => [machine.id, machine.retiredOn ?? null]));
  /** A machine that is to be retired does not live to see what falls due after that. */
  const isSeen = ({ machineId, p50 }: ForecastResult['due'][number]) => {
    const retiredOn = lastDays.get(machineId) ?? null;
    return retiredOn === null || (p50 !== null && p50 < retiredOn);
  };
  const seen = due.filter(isSeen);
  await tx.dueForecast.deleteMany({});
  await insertDueForecasts(
    tx,
    { shopId, runId, costFrom: snapshot.costFrom },
    seen.map(({ kind, itemId, machineId, code, slot, title, p10, p50, p90, ...each }) => ({
      ...{ machineId, code, slot, title, p10, p50, p90 },
      serviceItemId: kind === 'service' ? rowIds.get(itemId)! : null,
      stopgapId: kind === 'stopgap' ? itemId : null,
      probabilityOverdue: each.probabilityOverdue.map((value) => Math.round(value * 10000) / 10000),
      timingCostCents: each.timingCostCents,
      deferralCents: each.deferralCents,
      why: each.why,
    })),
  );
  await tx.usageForecast.deleteMany({});
  await insertUsageForecasts(tx, { shopId, asOf: snapshot.usage.asOf }, usage);
  await tx.forecastRun.update({
    where: { id: runId },
    data: { snapshotHash: hash, result: { machines: usage.length, items: seen.length } },
  });
}
