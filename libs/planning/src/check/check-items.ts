import type { WeekPlan } from '../week-plan.js';
import type { Report } from './plan-fault.js';
import type { SnapshotLookup } from './snapshot-lookup.js';

/** Names exist, visits and routes belong together, and every item occurs exactly once, planned or left out. */
export function checkItems(lookup: SnapshotLookup, plan: WeekPlan, report: Report): void {
  const visits = new Map(plan.visits.map((visit) => [visit.id, visit]));
  if (visits.size !== plan.visits.length) report('structure', 'two visits have the same id');
  const routed = new Set<string>();
  const days = new Set<string>();
  for (const route of plan.routes) {
    const name = `route of ${route.technicianId} on ${route.date}`;
    if (!lookup.technicians.has(route.technicianId)) report('structure', `${name}: unknown technician`);
    if (days.has(name)) report('structure', `${name}: occurs twice`);
    days.add(name);
    if (route.visitIds.length === 0) report('structure', `${name}: has no visits`);
    route.visitIds.forEach((id, k) => {
      const visit = visits.get(id);
      if (!visit) report('structure', `${name}: unknown visit ${id}`);
      else if (visit.technicianId !== route.technicianId || visit.date !== route.date || visit.order !== k + 1) {
        report('structure', `${name}: visit ${id} says another technician, date or order`);
      }
      if (routed.has(id)) report('structure', `${name}: visit ${id} is driven twice`);
      routed.add(id);
    });
  }
  const seen = new Map<string, string>();
  const once = (itemId: string, where: string) => {
    if (!lookup.items.has(itemId)) report('structure', `${where}: unknown item ${itemId}`);
    const before = seen.get(itemId);
    if (before !== undefined) report('item', `item ${itemId} is in ${before} and in ${where}`);
    seen.set(itemId, where);
  };
  for (const visit of plan.visits) {
    if (!routed.has(visit.id)) report('structure', `visit ${visit.id} is in no route`);
    if (!lookup.sites.has(visit.siteId)) report('structure', `visit ${visit.id}: unknown site ${visit.siteId}`);
    if (visit.items.length === 0) report('item', `visit ${visit.id} has no items`);
    for (const { itemId, machineId } of visit.items) {
      once(itemId, `visit ${visit.id}`);
      const item = lookup.items.get(itemId);
      if (!item) continue;
      if (item.machineId !== machineId || lookup.machines.get(item.machineId)?.siteId !== visit.siteId) {
        report('item', `visit ${visit.id}: item ${itemId} does not belong to this machine and site`);
      }
    }
  }
  for (const { itemId } of plan.leftOut) once(itemId, 'what is left out');
  for (const itemId of lookup.items.keys()) {
    if (!seen.has(itemId)) report('item', `item ${itemId} is neither planned nor left out`);
  }
}
