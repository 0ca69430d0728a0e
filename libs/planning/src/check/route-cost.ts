import type { CostParts, DayRoute, PlannedVisit } from '../week-plan.js';
import { instantToMinutes, localToMinutes } from './local-time.js';
import type { SnapshotLookup } from './snapshot-lookup.js';

export type RoundCost = Pick<CostParts, 'travel' | 'labour' | 'visitFees' | 'preference' | 'timing'>;

/** Visits of a route in order of driving. */
export function stopsOf(visits: ReadonlyMap<string, PlannedVisit>, route: DayRoute): PlannedVisit[] {
  return route.visitIds.map((id) => visits.get(id)!);
}

/** What a technician's day costs apart from overtime when these visits are made, in this order; none cost nothing. */
export function roundCost(lookup: SnapshotLookup, route: DayRoute, stops: readonly PlannedVisit[]): RoundCost {
  const technician = lookup.technicians.get(route.technicianId)!;
  const cost: RoundCost = { travel: 0, labour: 0, visitFees: 0, preference: 0, timing: 0 };
  if (stops.length === 0) return cost;
  const begins = technician.shifts.find(({ date }) => date === route.date)?.underWay?.siteId ?? null;
  const from = begins === null ? `base ${technician.id}` : `site ${begins}`;
  const path = [from, ...stops.map((visit) => `site ${visit.siteId}`), `base ${technician.id}`];
  let minutes = 0;
  for (let leg = 1; leg < path.length; leg++) {
    const drive = lookup.drive(path[leg - 1]!, path[leg]!);
    cost.travel += drive.cents;
    minutes += drive.minutes;
  }
  for (const visit of stops) {
    const site = lookup.sites.get(visit.siteId)!;
    const { start, end } = lookup.span(visit);
    minutes += end - start;
    cost.visitFees += site.visitFeeCents;
    if (site.preferredTechnicianId !== null && site.preferredTechnicianId !== technician.id) {
      cost.preference += site.preferenceCents;
    }
    for (const { itemId } of visit.items) cost.timing += lookup.timing(itemId, route.date);
  }
  cost.labour = Math.round((minutes * technician.wageCentsPerHour) / 60);
  return cost;
}

/** Minutes past the end of the shift; 0 where there is no shift, which is told elsewhere. */
export function overtimeMinutes(lookup: SnapshotLookup, route: DayRoute): number {
  const technician = lookup.technicians.get(route.technicianId)!;
  const shift = technician.shifts.find((candidate) => candidate.date === route.date);
  if (!shift) return 0;
  return Math.max(0, instantToMinutes(route.returnAt) - localToMinutes(technician.zone, route.date, shift.end));
}
