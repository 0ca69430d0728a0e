import type { PlanningPromise } from '../snapshot.js';
import type { PlannedVisit, WeekPlan } from '../week-plan.js';
import { earliestBack } from './earliest-back.js';
import type { Report } from './plan-fault.js';
import type { SnapshotLookup } from './snapshot-lookup.js';

/** Frozen visits stand exactly as announced unless nobody could keep them; whoever claims a promise keeps it. */
export function checkPromises(lookup: SnapshotLookup, plan: WeekPlan, report: Report): void {
  for (const promise of lookup.promises.values()) {
    const claims = plan.visits.filter((visit) => visit.promisedVisitId === promise.visitId);
    if (claims.length > 1) report('promise', `promise ${promise.visitId} is claimed by several visits`);
    const claim = claims[0];
    if (!claim) {
      if (promise.kind === 'frozen' && canBeKept(lookup, promise)) {
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

/** Whether the technician works then and could make the visit if it were the only one of the day. */
function canBeKept(lookup: SnapshotLookup, { visitId, siteId, ...promise }: PlanningPromise): boolean {
  if (!lookup.technicians.has(promise.technicianId)) return false;
  const items = promise.itemIds.flatMap((itemId) => lookup.items.get(itemId) ?? []);
  const minutes = lookup.visitMinutes(siteId, items);
  const stop = { siteId, itemIds: items.map(({ id }) => id), minutes, promisedVisitId: visitId };
  return earliestBack(lookup, promise, [stop]) !== null;
}
