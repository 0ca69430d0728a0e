import type { WeekPlan } from '../week-plan.js';
import { deferralPrice, labourPutOff } from './check-cost.js';
import type { Report } from './plan-fault.js';
import { overtimeMinutes, roundCost, stopsOf } from './route-cost.js';
import type { SnapshotLookup } from './snapshot-lookup.js';

/**
 * What the plan costs with each visit and without it, its work left out and its promise broken. Days with overtime are
 * passed over: how much of it a visit causes rests on times that no plan tells.
 */
export function checkMarginals(lookup: SnapshotLookup, plan: WeekPlan, report: Report): void {
  const visits = new Map(plan.visits.map((visit) => [visit.id, visit]));
  const promises = new Map(lookup.promises().map((promise) => [promise.visitId, promise]));
  for (const route of plan.routes) {
    if (overtimeMinutes(lookup, route) > 0) continue;
    const stops = stopsOf(visits, route);
    const cents = (left: typeof stops) => {
      const { travel, labour, visitFees, preference, timing } = roundCost(lookup, route, left);
      return travel + labour + visitFees + preference + timing;
    };
    const whole = cents(stops);
    for (const visit of stops) {
      let marginal = whole - cents(stops.filter((other) => other !== visit));
      for (const { itemId } of visit.items) {
        const item = lookup.items.get(itemId)!;
        marginal -= deferralPrice(lookup, item) + labourPutOff(lookup, item);
      }
      if (visit.promisedVisitId !== null) marginal -= promises.get(visit.promisedVisitId)?.moveCents ?? 0;
      if (visit.marginalCents !== marginal) {
        report('cost', `visit ${visit.id}: with it the plan costs ${marginal} cents more, not ${visit.marginalCents}`);
      }
    }
  }
}
