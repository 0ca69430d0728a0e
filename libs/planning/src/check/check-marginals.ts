import type { WeekPlan } from '../week-plan.js';
import { deferralPrice, labourPutOff } from './check-cost.js';
import { promiseOf, stopsOf } from './day-stop.js';
import type { Report } from './plan-fault.js';
import { dayCents } from './route-cost.js';
import type { SnapshotLookup } from './snapshot-lookup.js';

/**
 * What the plan costs with each visit and without it, its work left out and its promise broken. Days that cannot be driven
 * are passed over: that is told elsewhere.
 */
export function checkMarginals(lookup: SnapshotLookup, plan: WeekPlan, report: Report): void {
  const visits = new Map(plan.visits.map((visit) => [visit.id, visit]));
  for (const route of plan.routes) {
    const stops = stopsOf(lookup, visits, route);
    const whole = dayCents(lookup, route, stops);
    if (whole === Infinity) continue;
    stops.forEach((stop, k) => {
      let marginal = whole - dayCents(lookup, route, stops.toSpliced(k, 1));
      for (const itemId of stop.itemIds) {
        const item = lookup.items.get(itemId)!;
        marginal -= deferralPrice(lookup, item) + labourPutOff(lookup, item);
      }
      marginal -= promiseOf(lookup, stop)?.moveCents ?? 0;
      const visit = visits.get(route.visitIds[k]!)!;
      if (visit.marginalCents !== marginal) {
        report('cost', `visit ${visit.id}: with it the plan costs ${marginal} cents more, not ${visit.marginalCents}`);
      }
    });
  }
}
