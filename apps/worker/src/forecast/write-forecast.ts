import { machineItems, type Register } from '@deckround/register';
import { dateColumn } from '@deckround/register-store';
import type { Tx } from '@deckround/store';
import type { UpkeepSnapshot } from '@deckround/upkeep';
import type { ForecastResult } from '../compute/messages.js';

const CHUNK = 2000;

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
  await inChunks(seen, (part) =>
    tx.dueForecast.createMany({
      data: part.map((each) => ({
        shopId,
        runId,
        machineId: each.machineId,
        serviceItemId: each.kind === 'service' ? rowIds.get(each.itemId)! : null,
        stopgapId: each.kind === 'stopgap' ? each.itemId : null,
        code: each.code,
        slot: each.slot,
        title: each.title,
        p10: each.p10 === null ? null : dateColumn(each.p10),
        p50: each.p50 === null ? null : dateColumn(each.p50),
        p90: each.p90 === null ? null : dateColumn(each.p90),
        costFrom: dateColumn(snapshot.costFrom),
        probabilityOverdue: each.probabilityOverdue.map((value) => Math.round(value * 10000) / 10000),
        timingCostCents: each.timingCostCents,
        deferralCents: each.deferralCents,
        why: each.why,
      })),
    }),
  );
  await tx.usageForecast.deleteMany({});
  await inChunks(usage, (part) =>
    tx.usageForecast.createMany({
      data: part.map(({ machineId, lifetimeHoursNow, hoursPerWeek, ...quantiles }) => ({
        shopId,
        machineId,
        asOf: dateColumn(snapshot.usage.asOf),
        lifetimeHoursNow,
        hoursPerWeek,
        ...quantiles,
      })),
    }),
  );
  await tx.forecastRun.update({
    where: { id: runId },
    data: { snapshotHash: hash, result: { machines: usage.length, items: seen.length } },
  });
}

async function inChunks<T>(rows: readonly T[], write: (part: readonly T[]) => Promise<unknown>): Promise<void> {
  for (let from = 0; from < rows.length; from += CHUNK) await write(rows.slice(from, from + CHUNK));
}
