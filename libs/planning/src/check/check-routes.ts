import type { DayRoute, PlannedVisit, WeekPlan } from '../week-plan.js';
import { hasOffsetOf, instantToMinutes, localToMinutes } from './local-time.js';
import type { Report } from './plan-fault.js';
import type { SnapshotLookup } from './snapshot-lookup.js';

/** Shift, overtime, drives, lunch and the sums of each day route. */
export function checkRoutes(lookup: SnapshotLookup, plan: WeekPlan, report: Report): void {
  const visits = new Map(plan.visits.map((visit) => [visit.id, visit]));
  for (const route of plan.routes) {
    checkRoute(
      lookup,
      route,
      route.visitIds.map((id) => visits.get(id)!),
      report,
    );
  }
}

function checkRoute(lookup: SnapshotLookup, route: DayRoute, visits: PlannedVisit[], report: Report): void {
  const name = `route of ${route.technicianId} on ${route.date}`;
  const technician = lookup.technicians.get(route.technicianId)!;
  const shift = technician.shifts.find((candidate) => candidate.date === route.date);
  if (!shift) {
    report('shift', `${name}: no shift on that day`);
    return;
  }
  for (const instant of [route.leaveAt, route.returnAt]) {
    if (!hasOffsetOf(technician.zone, instant)) report('shift', `${name}: ${instant} has not the technician's offset`);
  }
  const local = (clock: string) => localToMinutes(technician.zone, route.date, clock);
  const leave = instantToMinutes(route.leaveAt);
  const back = instantToMinutes(route.returnAt);
  const overtime = Math.max(0, back - local(shift.end));
  if (leave < local(shift.start)) report('shift', `${name}: leaves before the shift`);
  if (overtime > technician.maxOvertimeMinutes) report('shift', `${name}: returns after shift and overtime`);
  if (overtime !== route.overtimeMinutes) report('overtime', `${name}: overtime is ${overtime} min`);

  const lunch = route.lunch && { from: instantToMinutes(route.lunch.from), to: instantToMinutes(route.lunch.to) };
  checkLunch(lookup, route, visits, lunch, report);

  const begins = shift.underWay?.siteId ?? null;
  let at = begins === null ? `base ${technician.id}` : `site ${begins}`;
  let free = leave;
  const sums = { minutes: 0, metres: 0, work: 0 };
  const drive = (to: string, arrival: number, what: string) => {
    const { minutes, metres } = lookup.drive(at, to);
    const resting = lunch ? Math.max(0, Math.min(arrival, lunch.to) - Math.max(free, lunch.from)) : 0;
    if (arrival - free - resting < minutes) report('drive', `${name}: ${what} is reached too early`);
    sums.minutes += minutes;
    sums.metres += metres;
    at = to;
    return minutes;
  };
  for (const visit of visits) {
    const { start, end } = lookup.span(visit);
    const minutes = drive(`site ${visit.siteId}`, instantToMinutes(visit.arriveAt), `visit ${visit.id}`);
    if (minutes !== visit.driveMinutes) report('drive', `${name}: the drive to visit ${visit.id} takes ${minutes} min`);
    sums.work += end - start;
    free = end;
  }
  drive(`base ${technician.id}`, back, 'the base');
  const wait = back - leave - sums.minutes - sums.work - (lunch ? lunch.to - lunch.from : 0);
  const should: [keyof DayRoute, number][] = [
    ['driveMinutes', sums.minutes],
    ['driveMetres', sums.metres],
    ['workMinutes', sums.work],
    ['waitMinutes', wait],
  ];
  for (const [key, value] of should) {
    if (route[key] !== value) report('route-sums', `${name}: ${key} is ${String(route[key])}, should be ${value}`);
  }
}

/** Once, within its hours, never during work; not needed when the route is back by the latest start of lunch. */
function checkLunch(
  lookup: SnapshotLookup,
  route: DayRoute,
  visits: PlannedVisit[],
  lunch: { from: number; to: number } | null,
  report: Report,
): void {
  const name = `route of ${route.technicianId} on ${route.date}`;
  const rule = lookup.lunch(route.technicianId, route.date);
  if (rule === null) {
    if (lunch) report('lunch', `${name}: has a lunch that nobody asked for`);
    return;
  }
  if (!lunch) {
    if (instantToMinutes(route.returnAt) > rule.to) report('lunch', `${name}: has no lunch`);
    return;
  }
  if (lunch.to - lunch.from !== rule.minutes) report('lunch', `${name}: lunch is not ${rule.minutes} min`);
  if (lunch.from < rule.from || lunch.from > rule.to) {
    report('lunch', `${name}: lunch starts outside its hours`);
  }
  if (lunch.from < instantToMinutes(route.leaveAt) || lunch.to > instantToMinutes(route.returnAt)) {
    report('lunch', `${name}: lunch lies outside the route`);
  }
  for (const visit of visits) {
    const { start, end } = lookup.span(visit);
    if (lunch.from < end && lunch.to > start) report('lunch', `${name}: lunch overlaps visit ${visit.id}`);
  }
}
