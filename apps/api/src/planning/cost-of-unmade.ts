import { type CostParts, describeChange, standingWeek } from '@deckround/planning';
import { dateText, visitItemKey } from '@deckround/register-store';
import type { Tx } from '@deckround/store';
import { plannedSnapshot } from '../week-changes/planned-snapshot.js';
import type { VisitRow } from './visit-view.js';

/**
 * What a plan costs less, or more, without visits that nobody can make: their drives and labour are spared, and their work
 * waits. Reckoned as the plan was, with the people and the access that it counted on.
 *
 * @param visits of the plan's days
 */
export async function costOfUnmade(
  tx: Tx,
  runId: string,
  visits: readonly VisitRow[],
  unmade: ReadonlySet<string>,
): Promise<Partial<CostParts>> {
  if (!visits.some(({ id }) => unmade.has(id))) return {};
  const week = standingWeek(
    await plannedSnapshot(tx, runId),
    visits.map(({ id, siteId, technicianId, visitDate, visitItems }) => ({
      ...{ visitId: id, siteId, technicianId, date: dateText(visitDate), itemIds: visitItems.map(visitItemKey) },
      ...{ heldAt: null, announced: null },
    })),
  );
  const made = week.draft.map((day) => day.filter(({ visitId }) => !unmade.has(visitId!)));
  return describeChange(week, made).cents;
}
