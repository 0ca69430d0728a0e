import type { PlanningItem } from '../snapshot.js';
import type { CostParts, WeekPlan } from '../week-plan.js';
import { stopsOf } from './day-stop.js';
import type { Report } from './plan-fault.js';
import { overtimeCents, overtimeMinutes, roundCost } from './route-cost.js';
import type { SnapshotLookup } from './snapshot-lookup.js';

/** Every part of the cost to the cent, the price of everything left out, and the timing cost of every item. */
export function checkCost(lookup: SnapshotLookup, plan: WeekPlan, report: Report): void {
  const { snapshot } = lookup;
  const visits = new Map(plan.visits.map((visit) => [visit.id, visit]));
  const cost: Omit<CostParts, 'total'> = {
    travel: 0,
    labour: 0,
    overtime: 0,
    visitFees: 0,
    preference: 0,
    timing: 0,
    deferral: 0,
    laterLabour: 0,
    disruption: 0,
  };
  for (const route of plan.routes) {
    const round = roundCost(lookup, route, stopsOf(lookup, visits, route));
    for (const part of Object.keys(round) as (keyof typeof round)[]) cost[part] += round[part];
    for (const planned of route.visitIds.flatMap((id) => visits.get(id)!.items)) {
      const timing = lookup.timing(planned.itemId, route.date);
      if (planned.timingCents !== timing) report('cost', `item ${planned.itemId}: timing cost is ${timing} cents`);
    }
    cost.overtime += overtimeCents(lookup, route, overtimeMinutes(lookup, route));
  }
  const left = new Map(plan.leftOut.map((row) => [row.itemId, row]));
  for (const item of snapshot.items) {
    const row = left.get(item.id);
    if (!row) continue;
    const price = deferralPrice(lookup, item);
    cost.deferral += price;
    cost.laterLabour += labourPutOff(lookup, item);
    if (row.cents !== price) report('left-out', `item ${item.id}: leaving it costs ${price} cents, not ${row.cents}`);
    if (row.mustDo !== item.mustDo) report('left-out', `item ${item.id}: whether it must be done is wrong`);
  }
  for (const promise of lookup.promises.values()) {
    if (!plan.visits.some((visit) => visit.promisedVisitId === promise.visitId)) cost.disruption += promise.moveCents;
  }
  let total = 0;
  for (const part of Object.keys(cost) as (keyof typeof cost)[]) {
    total += cost[part];
    if (plan.cost[part] !== cost[part]) report('cost', `${part} is ${plan.cost[part]} cents, should be ${cost[part]}`);
  }
  if (plan.cost.total !== total) report('cost', `total is ${plan.cost.total} cents, should be ${total}`);
}

/** Deferral cost plus its share of a typical later trip: fee, set-up, and the mean of the three shortest drives there. */
export function deferralPrice(lookup: SnapshotLookup, item: PlanningItem): number {
  const { snapshot } = lookup;
  const site = lookup.sites.get(lookup.machines.get(item.machineId)!.siteId)!;
  const drives = lookup.drivesTo(site.id, snapshot.sites.length > 1 ? 'sites' : 'bases').slice(0, 3);
  // fee + set-up × mean wage + mean of (cents + minutes × mean wage) over the drives, over one denominator
  const people = BigInt(Math.max(1, snapshot.technicians.length));
  const wages = snapshot.technicians.reduce((sum, { wageCentsPerHour }) => sum + BigInt(wageCentsPerHour), 0n);
  const count = BigInt(Math.max(1, drives.length));
  const below = 60n * people * count;
  let above = below * BigInt(site.visitFeeCents) + count * BigInt(site.setupMinutes) * wages;
  for (const { cents, minutes } of drives) above += 60n * people * BigInt(cents) + wages * BigInt(minutes);
  const trip = Number((2n * above + below) / (2n * below));
  return item.deferralCents + Math.round((snapshot.laterTripShare * trip) / Math.max(1, lookup.openAt(site.id)));
}

/** Own minutes at the average wage, by the snapshot's share. */
export function labourPutOff(lookup: SnapshotLookup, item: PlanningItem): number {
  return Math.round(((lookup.snapshot.laterLabourShare ?? 0) * averageWage(lookup) * item.minutes) / 60);
}

function averageWage({ snapshot }: SnapshotLookup): number {
  const wages = snapshot.technicians.map((technician) => technician.wageCentsPerHour);
  return wages.length === 0 ? 0 : wages.reduce((sum, value) => sum + value, 0) / wages.length;
}
