import type { CostParts, WeekPlan } from '@deckround/planning';
import { addDays } from '@deckround/register';
import { dateColumn, visitItemKey } from '@deckround/register-store';
import type { Tx } from '@deckround/store';
import { type PlannedDays, planOfDay, plansOf } from './plans-of-days.js';

/** The plan that a week goes by: the newest one for its first planned day. */
export async function planOfWeek(tx: Tx, weekOf: string, days = 7): Promise<PlannedDays | null> {
  const plans = await plansOf(tx, weekOf, addDays(weekOf, days - 1));
  for (let day = 0; day < days; day++) {
    const plan = planOfDay(plans, addDays(weekOf, day));
    if (plan !== null) return plan;
  }
  return null;
}

/** What a plan costs with the changes made to it since, and others, cents. */
export async function costNow(
  tx: Tx,
  runId: string,
  plan: WeekPlan,
  ...others: readonly Partial<CostParts>[]
): Promise<CostParts> {
  const changes = await tx.weekChange.findMany({ where: { planRunId: runId }, select: { change: true } });
  const cost = { ...plan.cost };
  const made = changes.map(({ change }) => (change as unknown as { cents: CostParts }).cents);
  for (const cents of [...made, ...others])
    for (const part of Object.keys(cost) as (keyof CostParts)[]) cost[part] += cents[part] ?? 0;
  return cost;
}

/** The planner's names for all work that stands in a visit of these days, or was done in one. */
export async function standingWork(tx: Tx, { from, to }: PlannedDays): Promise<Set<string>> {
  const items = await tx.visitItem.findMany({
    where: { visit: { visitDate: { gte: dateColumn(from), lte: dateColumn(to) }, state: { not: 'cancelled' } } },
    select: { machineId: true, code: true, slot: true, stopgapId: true, roadCallId: true },
  });
  return new Set(items.map(visitItemKey));
}
