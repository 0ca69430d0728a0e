import type { PlannedVisit, WeekPlan } from '../week-plan.js';
import { hasOffsetOf, instantToMinutes } from './local-time.js';
import type { Report } from './plan-fault.js';
import type { SnapshotLookup } from './snapshot-lookup.js';

/** Skills, parts, minutes, access and machines down. A frozen visit has been agreed: it is held to its slot only. */
export function checkVisits(lookup: SnapshotLookup, plan: WeekPlan, report: Report): void {
  for (const visit of plan.visits) {
    checkMinutes(lookup, visit, report);
    const { zone } = lookup.sites.get(visit.siteId)!;
    for (const instant of [visit.arriveAt, visit.startAt, visit.endAt]) {
      if (!hasOffsetOf(zone, instant)) report('access', `visit ${visit.id}: ${instant} has not the offset of ${zone}`);
    }
    if (lookup.frozenFor(visit)) continue;
    checkAccess(lookup, visit, report);
    const isBarred = lookup.snapshot.barred?.some(
      ({ siteId, technicianId, date }) =>
        siteId === visit.siteId &&
        (technicianId === null || technicianId === visit.technicianId) &&
        (date === null || date === visit.date),
    );
    if (isBarred) report('access', `visit ${visit.id}: ${visit.technicianId} is not to be sent there that day`);
    const { skills } = lookup.technicians.get(visit.technicianId)!;
    for (const { itemId } of visit.items) {
      const item = lookup.items.get(itemId)!;
      if (item.skill !== null && !skills.includes(item.skill)) {
        report('skill', `visit ${visit.id}: ${visit.technicianId} has not the skill ${item.skill} for ${itemId}`);
      }
      if (item.latestDate && item.latestDate < visit.date && !(item.mustDo && item.betterLate)) {
        report('release', `visit ${visit.id}: ${itemId} can be done until ${item.latestDate}`);
      }
      if (item.releaseDate !== null && item.releaseDate > visit.date) {
        report('release', `visit ${visit.id}: the parts for ${itemId} are there from ${item.releaseDate}`);
      }
    }
  }
  for (const site of lookup.snapshot.sites) {
    const here = plan.visits.filter((visit) => visit.siteId === site.id);
    for (const visit of here) {
      const { start, end } = lookup.span(visit);
      // The most are down at some visit's start.
      const present = here.filter((other) => {
        const span = lookup.span(other);
        return span.start <= start && start < span.end;
      });
      const down =
        site.downRule === 'one-by-one'
          ? new Set(present.map((other) => other.technicianId)).size
          : present.reduce((sum, other) => sum + new Set(other.items.map((item) => item.machineId)).size, 0);
      if (end > start && down > site.maxMachinesDown) {
        report(
          'machines-down',
          `site ${site.id}: ${down} machines down at ${visit.startAt}, ${site.maxMachinesDown} allowed`,
        );
      }
    }
  }
}

function checkMinutes(lookup: SnapshotLookup, visit: PlannedVisit, report: Report): void {
  const items = visit.items.map(({ itemId }) => lookup.items.get(itemId)!);
  const setup = lookup.sites.get(visit.siteId)!.setupMinutes;
  const preparation = lookup.preparationMinutes(items);
  const work = items.reduce((sum, item) => sum + item.minutes, 0);
  const { start, end } = lookup.span(visit);
  const wrong = (what: string, is: number, should: number) => {
    if (is !== should) report('minutes', `visit ${visit.id}: ${what} is ${is} min, should be ${should}`);
  };
  wrong('set-up', visit.setupMinutes, setup);
  wrong('preparation', visit.preparationMinutes, preparation);
  wrong('start to end', end - start, setup + preparation + work);
  visit.items.forEach((planned, k) => {
    wrong(`item ${planned.itemId}`, planned.minutes, items[k]!.minutes);
  });
  const alone = items.reduce((sum, item) => sum + lookup.preparationMinutes([item]), 0);
  const shared = visit.items.reduce((sum, planned) => sum + planned.sharedMinutes, 0);
  wrong('shared preparation', shared, alone - preparation);
}

function checkAccess(lookup: SnapshotLookup, visit: PlannedVisit, report: Report): void {
  const { start, end } = lookup.span(visit);
  if (!lookup.access(visit.siteId, null).some(({ open, close }) => open <= start && end <= close))
    report('access', `visit ${visit.id}: ${visit.siteId} cannot be entered ${visit.startAt} to ${visit.endAt}`);
  if (instantToMinutes(visit.arriveAt) > start) report('access', `visit ${visit.id}: starts before it arrives`);
}
