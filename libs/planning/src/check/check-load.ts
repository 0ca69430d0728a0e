import type { WeekPlan } from '../week-plan.js';
import type { Report } from './plan-fault.js';
import type { SnapshotLookup } from './snapshot-lookup.js';

/** Load lists: right sums, and what is missing after stock, arrivals and the routes before it. */
export function checkLoad(lookup: SnapshotLookup, plan: WeekPlan, report: Report): void {
  const { parts, technicians, asOf } = lookup.snapshot;
  const visits = new Map(plan.visits.map((visit) => [visit.id, visit]));
  const order = new Map(technicians.map((technician, k) => [technician.id, k]));
  const routes = [...plan.routes].sort((a, b) =>
    a.date === b.date ? order.get(a.technicianId)! - order.get(b.technicianId)! : a.date < b.date ? -1 : 1,
  );
  const taken = new Map<string, number>();
  for (const route of routes) {
    const name = `load of ${route.technicianId} on ${route.date}`;
    const need = new Map<string, number>();
    for (const id of route.visitIds) {
      for (const { itemId } of visits.get(id)!.items) {
        const item = lookup.items.get(itemId)!;
        for (const part of item.parts) add(need, `part ${part.partId}`, part.quantity);
        for (const thing of item.consumables) add(need, `${thing.name} in ${thing.unit}`, thing.quantity);
      }
    }
    for (const line of route.load) {
      const key = line.partId === null ? `${line.name} in ${line.unit}` : `part ${line.partId}`;
      const quantity = need.get(key);
      need.delete(key);
      if (quantity === undefined || !near(quantity, line.quantity)) {
        report('load', `${name}: ${line.quantity} of ${key}, should be ${quantity ?? 0}`);
        continue;
      }
      if (line.partId === null) continue;
      const part = parts.find((candidate) => candidate.id === line.partId);
      const arrived = (part?.arrivals ?? [])
        .filter((arrival) => arrival.date >= asOf && arrival.date <= route.date)
        .reduce((sum, arrival) => sum + arrival.quantity, part?.onHand ?? 0);
      const there = arrived - (taken.get(line.partId) ?? 0);
      const missing = Math.max(0, quantity - there);
      if (!near(missing, line.missing)) {
        report('load', `${name}: ${missing} of ${key} are missing, not ${line.missing}`);
      }
      add(taken, line.partId, quantity - missing);
    }
    for (const key of need.keys()) report('load', `${name}: ${key} is not on the list`);
  }
}

function add(sums: Map<string, number>, key: string, quantity: number): void {
  sums.set(key, (sums.get(key) ?? 0) + quantity);
}

function near(a: number, b: number): boolean {
  return Math.abs(a - b) < 1e-5;
}
