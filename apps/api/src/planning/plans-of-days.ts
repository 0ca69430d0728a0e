import { addDays } from '@deckround/register';
import { dateColumn, dateText } from '@deckround/register-store';
import type { Tx } from '@deckround/store';

/** Days planned as one, at most. */
const MOST_DAYS = 28;

/** The days that a finished plan run is for. */
export interface PlannedDays {
  readonly runId: string;
  readonly from: string;
  readonly to: string;
}

/** Finished plan runs for any of the days, the newest first. */
export async function plansOf(tx: Tx, from: string, to: string): Promise<PlannedDays[]> {
  const runs = await tx.planRun.findMany({
    where: { status: 'done', weekOf: { gt: dateColumn(addDays(from, -MOST_DAYS)), lte: dateColumn(to) } },
    select: { id: true, weekOf: true, days: true },
    orderBy: [{ finishedAt: 'desc' }, { id: 'desc' }],
  });
  return runs
    .map(({ id, weekOf, days }) => ({ runId: id, from: dateText(weekOf), to: addDays(dateText(weekOf), days - 1) }))
    .filter((plan) => plan.to >= from);
}

/** The days of one plan run; null = there is no such finished run. */
export async function daysOf(tx: Tx, runId: string): Promise<PlannedDays | null> {
  const run = await tx.planRun.findFirst({
    where: { id: runId, status: 'done' },
    select: { weekOf: true, days: true },
  });
  if (run === null) return null;
  const from = dateText(run.weekOf);
  return { runId, from, to: addDays(from, run.days - 1) };
}

/** The newest plan that covers a day: what stands there is its. */
export function planOfDay(plans: readonly PlannedDays[], date: string): PlannedDays | null {
  return plans.find((plan) => plan.from <= date && date <= plan.to) ?? null;
}

/** The plan of a day, and those of its days that no newer plan has taken over. */
export async function planAround(tx: Tx, date: string): Promise<{ runId: string; days: string[] } | null> {
  const plan = planOfDay(await plansOf(tx, date, date), date);
  if (plan === null) return null;
  const plans = await plansOf(tx, plan.from, plan.to);
  const days: string[] = [];
  for (let day = plan.from; day <= plan.to; day = addDays(day, 1)) {
    if (planOfDay(plans, day)?.runId === plan.runId) days.push(day);
  }
  return { runId: plan.runId, days };
}
