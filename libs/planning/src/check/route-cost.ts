import type { CostParts, DayRoute } from '../week-plan.js';
import { type DayStop, placesOf } from './day-stop.js';
import { earliestBack } from './earliest-back.js';
import { instantToMinutes, localToMinutes } from './local-time.js';
import type { SnapshotLookup } from './snapshot-lookup.js';

export type RoundCost = Pick<CostParts, 'travel' | 'labour' | 'visitFees' | 'preference' | 'timing'>;

/** What a technician's day costs apart from overtime when these stops are made, in this order; none cost nothing. */
export function roundCost(lookup: SnapshotLookup, route: DayRoute, stops: readonly DayStop[]): RoundCost {
  const technician = lookup.technicians.get(route.technicianId)!;
  const cost: RoundCost = { travel: 0, labour: 0, visitFees: 0, preference: 0, timing: 0 };
  if (stops.length === 0) return cost;
  const path = placesOf(lookup, route, stops);
  let minutes = 0;
  for (let leg = 1; leg < path.length; leg++) {
    const drive = lookup.drive(path[leg - 1]!, path[leg]!);
    cost.travel += drive.cents;
    minutes += drive.minutes;
  }
  for (const stop of stops) {
    const site = lookup.sites.get(stop.siteId)!;
    minutes += stop.minutes;
    cost.visitFees += site.visitFeeCents;
    if (site.preferredTechnicianId !== null && site.preferredTechnicianId !== technician.id) {
      cost.preference += site.preferenceCents;
    }
    for (const itemId of stop.itemIds) cost.timing += lookup.timing(itemId, route.date);
  }
  cost.labour = Math.round((minutes * technician.wageCentsPerHour) / 60);
  return cost;
}

/** What the day costs with overtime when these stops are made, in this order; Infinity where that cannot be done. */
export function dayCents(lookup: SnapshotLookup, route: DayRoute, stops: readonly DayStop[]): number {
  if (stops.length === 0) return 0;
  const back = earliestBack(lookup, route, stops);
  if (back === null) return Infinity;
  const { travel, labour, visitFees, preference, timing } = roundCost(lookup, route, stops);
  const overtime = overtimeCents(lookup, route, minutesLate(lookup, route, back));
  return travel + labour + visitFees + preference + timing + overtime;
}

/** What so many minutes past the shift cost on top of the wage. */
export function overtimeCents(lookup: SnapshotLookup, route: DayRoute, minutes: number): number {
  const { wageCentsPerHour, overtimeCentsPerHour } = lookup.technicians.get(route.technicianId)!;
  return Math.round((minutes * Math.max(0, overtimeCentsPerHour - wageCentsPerHour)) / 60);
}

/** Minutes past the end of the shift that the plan tells; 0 where there is no shift, which is told elsewhere. */
export function overtimeMinutes(lookup: SnapshotLookup, route: DayRoute): number {
  return minutesLate(lookup, route, instantToMinutes(route.returnAt));
}

function minutesLate(lookup: SnapshotLookup, route: DayRoute, back: number): number {
  const technician = lookup.technicians.get(route.technicianId)!;
  const shift = technician.shifts.find((candidate) => candidate.date === route.date);
  return shift ? Math.max(0, back - localToMinutes(technician.zone, route.date, shift.end)) : 0;
}
