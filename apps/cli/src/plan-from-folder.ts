import type { PlanningSnapshot, WeekPlan } from '@deckround/planning';
import { addDays, inUse, planningSnapshot, type Register, upkeepSnapshot } from '@deckround/register';
import { computeForecast, type PlanProgress, planInThread, snapshotHash } from '@deckround/worker';

/** Everything the planner needs, from a register alone. */
export function snapshotOfFolder(
  told: Register,
  firstDate: string,
  days: number,
  asOf = addDays(firstDate, -1),
): PlanningSnapshot {
  const register = inUse(told, addDays(firstDate, days - 1));
  const { due } = computeForecast(upkeepSnapshot(register, { asOf, costFrom: firstDate, costDays: days }));
  return planningSnapshot(register, due, { asOf, firstDate, days });
}

/** Searches with progress on a terminal; Ctrl-C keeps the best plan so far. */
export async function searchPlan(
  snapshot: PlanningSnapshot,
  options: { seed: number; seconds: number; iterations?: number | undefined; threads?: number; combine?: boolean },
  onProgress: (progress: PlanProgress) => void = () => {},
): Promise<WeekPlan> {
  const budget = options.iterations === undefined ? { seconds: options.seconds } : { iterations: options.iterations };
  const search = planInThread(
    snapshot,
    {
      ...{ snapshotHash: snapshotHash(snapshot), seed: options.seed, ...budget },
      ...{ threads: options.threads ?? 1, combine: options.combine ?? false },
    },
    onProgress,
  );
  const cancel = () => search.cancel();
  process.once('SIGINT', cancel);
  try {
    return await search.plan;
  } finally {
    process.off('SIGINT', cancel);
  }
}
