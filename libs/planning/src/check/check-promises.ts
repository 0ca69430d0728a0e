import type { PlanningPromise } from '../snapshot.js';
import type { PlannedVisit, WeekPlan } from '../week-plan.js';
import type { DayStop } from './day-stop.js';
import { earliestBack } from './earliest-back.js';
import type { Report } from './plan-fault.js';
import type { SnapshotLookup } from './snapshot-lookup.js';

/**
 * Frozen visits stand exactly as announced unless they cannot be kept beside the other frozen ones of the day; whoever
 * claims a promise keeps it.
 */
export function checkPromises(lookup: SnapshotLookup, plan: WeekPlan, report: Report): void {
  for (const promise of lookup.promises.values()) {
    const claims = plan.visits.filter((visit) => visit.promisedVisitId === promise.visitId);
    if (claims.length > 1) report('promise', `promise ${promise.visitId} is claimed by several visits`);
    const claim = claims[0];
    if (!claim) {
      if (promise.kind === 'frozen' && canBeKept(lookup, plan, promise)) {
        report('promise', `frozen visit ${promise.visitId} is missing`);
      }
    } else if (!isKept(lookup, promise, claim)) {
      report('promise', `visit ${claim.id} does not stand as promised (${promise.visitId})`);
    }
  }
  for (const visit of plan.visits) {
    if (visit.promisedVisitId !== null && !lookup.promises.has(visit.promisedVisitId)) {
      report('promise', `visit ${visit.id} claims the unknown promise ${visit.promisedVisitId}`);
    }
  }
}

function isKept(lookup: SnapshotLookup, promise: PlanningPromise, visit: PlannedVisit): boolean {
  const slot = lookup.slot(promise);
  const { start } = lookup.span(visit);
  if (visit.siteId !== promise.siteId || visit.technicianId !== promise.technicianId) return false;
  if (visit.date !== promise.date || start < slot.from || start > slot.to) return false;
  if (promise.kind === 'confirmed') return true;
  const promised = promise.itemIds.filter((itemId) => lookup.items.has(itemId)).sort();
  const planned = visit.items.map((item) => item.itemId).sort();
  return promised.join('\n') === planned.join('\n');
}

/**
 * Whether the technician works then and could make the visit beside the frozen ones that the plan keeps on that day, in
 * order of their slots. One route visits a site once.
 */
function canBeKept(lookup: SnapshotLookup, plan: WeekPlan, promise: PlanningPromise): boolean {
  const { technicianId, date, siteId } = promise;
  if (!lookup.technicians.has(technicianId)) return false;
  const kept = plan.visits
    .filter((visit) => visit.technicianId === technicianId && visit.date === date)
    .flatMap((visit) => lookup.frozenFor(visit) ?? []);
  if (kept.some((other) => other.siteId === siteId)) return false;
  const inTurn = [...kept, promise].sort((a, b) => lookup.slot(a).from - lookup.slot(b).from);
  return (
    earliestBack(
      lookup,
      promise,
      inTurn.map((each) => stopOf(lookup, each)),
    ) !== null
  );
}

function stopOf(lookup: SnapshotLookup, { visitId, siteId, ...promise }: PlanningPromise): DayStop {
  const items = promise.itemIds.flatMap((itemId) => lookup.items.get(itemId) ?? []);
  const minutes = lookup.visitMinutes(siteId, items);
  return { siteId, itemIds: items.map(({ id }) => id), minutes, promisedVisitId: visitId };
}
