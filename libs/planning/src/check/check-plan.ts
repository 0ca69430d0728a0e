import type { PlanningSnapshot } from '../snapshot.js';
import { travelOf } from '../travel-of.js';
import type { WeekPlan } from '../week-plan.js';
import { checkCost } from './check-cost.js';
import { checkItems } from './check-items.js';
import { checkLoad } from './check-load.js';
import { checkMarginals } from './check-marginals.js';
import { checkPromises } from './check-promises.js';
import { checkRoutes } from './check-routes.js';
import { checkVisits } from './check-visits.js';
import { checkWaiting } from './check-waiting.js';
import type { PlanFault } from './plan-fault.js';
import { SnapshotLookup } from './snapshot-lookup.js';

/**
 * Checks a plan against its snapshot: structure, every item once, skills, parts, minutes, access, shifts, lunch,
 * drives, machines down, promises, load lists, every cost part to the cent, what each visit adds to it, and what waiting
 * costs each item.
 * Shares no code with the planner; only the travel matrix is the same, since it is input.
 * Does not check reasons.
 *
 * @returns nothing wrong = an empty list
 */
export function checkPlan(snapshot: PlanningSnapshot, plan: WeekPlan): PlanFault[] {
  const faults: PlanFault[] = [];
  const report = (code: PlanFault['code'], message: string) => faults.push({ code, message });
  const lookup = new SnapshotLookup(snapshot, travelOf(snapshot));
  checkItems(lookup, plan, report);
  if (faults.some((fault) => fault.code === 'structure')) return faults;
  checkVisits(lookup, plan, report);
  checkRoutes(lookup, plan, report);
  checkPromises(lookup, plan, report);
  checkLoad(lookup, plan, report);
  checkCost(lookup, plan, report);
  checkMarginals(lookup, plan, report);
  checkWaiting(lookup, plan, report);
  return faults;
}
