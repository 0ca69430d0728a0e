import type { DayRoute, WeekPlan } from '../week-plan.js';
import { deferralPrice, labourPutOff } from './check-cost.js';
import { type DayStop, promiseOf, stopsOf, withItems } from './day-stop.js';
import type { Report } from './plan-fault.js';
import { dayCents } from './route-cost.js';
import type { SnapshotLookup } from './snapshot-lookup.js';

interface PlannedDay {
  route: DayRoute;
  stops: readonly DayStop[];
  cents: number;
}

/**
 * What it costs more when an item is not done in its visit: the cheapest of leaving it out and of doing it in another visit
 * that the site gets anyway, less what its own day saves. Days that cannot be driven are passed over: that is told elsewhere.
 */
export function checkWaiting(lookup: SnapshotLookup, plan: WeekPlan, report: Report): void {
  const visits = new Map(plan.visits.map((visit) => [visit.id, visit]));
  const days = plan.routes
    .map((route): PlannedDay => {
      const stops = stopsOf(lookup, visits, route);
      return { route, stops, cents: dayCents(lookup, route, stops) };
    })
    .filter((day) => day.cents < Infinity);
  const daysAt = new Map<string, PlannedDay[]>();
  for (const day of days) {
    for (const siteId of new Set(day.stops.map((stop) => stop.siteId))) {
      daysAt.set(siteId, [...(daysAt.get(siteId) ?? []), day]);
    }
  }
  for (const day of days) {
    day.stops.forEach((stop, k) => {
      for (const planned of visits.get(day.route.visitIds[k]!)!.items) {
        const rest = stop.itemIds.filter((itemId) => itemId !== planned.itemId);
        const left = rest.length === 0 ? day.stops.toSpliced(k, 1) : day.stops.with(k, withItems(lookup, stop, rest));
        const broken = rest.length === 0 ? (promiseOf(lookup, stop)?.moveCents ?? 0) : 0;
        const saved = day.cents - dayCents(lookup, day.route, left) - broken;
        const elsewhere = daysAt
          .get(stop.siteId)!
          .filter((other) => other !== day)
          .map((other) => centsThere(lookup, other, planned.itemId, stop.siteId));
        const item = lookup.items.get(planned.itemId)!;
        const waiting = Math.min(deferralPrice(lookup, item) + labourPutOff(lookup, item), ...elsewhere) - saved;
        if (planned.waitingCents !== waiting) {
          report('cost', `item ${item.id}: waiting costs ${waiting} cents, not ${planned.waitingCents}`);
        }
      }
    });
  }
}

/** What a day costs more when the item is done in its visit of the site; Infinity where that cannot be. */
function centsThere(lookup: SnapshotLookup, day: PlannedDay, itemId: string, siteId: string): number {
  const { route, stops, cents } = day;
  const item = lookup.items.get(itemId)!;
  const { downRule, maxMachinesDown } = lookup.sites.get(siteId)!;
  const k = stops.findIndex((stop) => stop.siteId === siteId && promiseOf(lookup, stop)?.kind !== 'frozen');
  if (k < 0) return Infinity;
  if (item.skill !== null && !lookup.technicians.get(route.technicianId)!.skills.includes(item.skill)) return Infinity;
  if (item.releaseDate !== null && route.date < item.releaseDate) return Infinity;
  if (item.latestDate && route.date > item.latestDate) return Infinity;
  const itemIds = [...stops[k]!.itemIds, itemId];
  const machines = new Set(itemIds.map((id) => lookup.items.get(id)!.machineId));
  if (downRule === 'whole-visit' && machines.size > maxMachinesDown) return Infinity;
  return dayCents(lookup, route, stops.with(k, withItems(lookup, stops[k]!, itemIds))) - cents;
}
