import { type Draft, type DraftVisit, routeCents } from './draft.js';
import { busyMinutes, canEndInTime, leastCents } from './insertion-bounds.js';
import type { InstanceItem, PlanningInstance } from './instance.js';
import { visitsPerDay } from './to-routing.js';
import { visitMinutes } from './visit-minutes.js';

export interface Addition {
  /** Technician-day and its visits afterwards. */
  v: number;
  visits: DraftVisit[];
  /** What the route costs more, the item's timing cost included. */
  cents: number;
  joins: 'visit' | 'new-visit';
}

/** Whether its parts are there on a day, or its visit stands on that day anyway. */
export function hasPartsOn({ releaseDay, standsOn }: InstanceItem, day: number): boolean {
  return releaseDay <= day || standsOn === day;
}

/** Whether a technician-day may do the item at all: skill, the day its parts are there, its last day, nobody barred. */
export function canDo(instance: PlanningInstance, index: number, v: number): boolean {
  const item = instance.items[index]!;
  const day = instance.technicianDays[v]!;
  const { skills } = instance.snapshot.technicians[day.technician]!;
  if (!hasPartsOn(item, day.day) || item.latestDay < day.day) return false;
  return (item.skill === null || skills.includes(item.skill)) && !instance.isBarred(item.site, day.technician, day.day);
}

/**
 * Cheapest way to do a left-out item with everything else unchanged: in a visit of its site, or in a new one.
 *
 * @param below ways that cost as much or more do not count
 */
export function cheapestAddition(
  instance: PlanningInstance,
  draft: Draft,
  index: number,
  present: readonly number[],
  below = Infinity,
): Addition | null {
  const { site } = instance.items[index]!;
  const alone: DraftVisit = { site, items: [index], promise: null };
  const { total } = visitMinutes(instance, site, alone.items);
  const visitsOn = visitsPerDayAt(instance, draft, site);
  const ways: Way[] = [];
  draft.forEach((visits, v) => {
    if (!canDo(instance, index, v)) return;
    const here = visits.findIndex((visit) => visit.site === site && visit.promise?.kind !== 'frozen');
    if (here >= 0) {
      const joined = withItem(visits[here]!, index);
      if (!respectsMachines(instance, joined) || !hasTimeFor(instance, v, visits, here, joined)) return;
      ways.push({ v, at: here, joined, least: -Infinity });
    } else if (
      // No detour is shorter than none: drives are shortest paths.
      canEndInTime(instance, v, busyMinutes(instance, v, visits) + total) &&
      (visitsOn.get(instance.technicianDays[v]!.day) ?? 0) < visitsPerDay(instance.snapshot.sites[site]!) &&
      visits.every((visit) => visit.site !== site) &&
      !isPromised(instance, site, v)
    ) {
      const leastAt = leastCents(instance, v, visits, alone);
      for (let at = 0; at <= visits.length; at++) {
        const least = leastAt(at);
        if (least < below) ways.push({ v, at, joined: null, least });
      }
    }
  });
  // The most promising first; of equally dear ones the first in the order of technician-days counts.
  const inOrder = ways.map((way, order) => ({ ...way, order })).sort((a, b) => a.least - b.least || a.order - b.order);
  let best: (Addition & { order: number }) | null = null;
  for (const { v, at, joined, least, order } of inOrder) {
    if (best !== null && least > best.cents) break;
    const visits = joined ? draft[v]!.with(at, joined) : draft[v]!.toSpliced(at, 0, alone);
    const cents = routeCents(instance, v, visits) - present[v]!;
    if (!(cents < below)) continue;
    if (best === null || cents < best.cents || (cents === best.cents && order < best.order)) {
      best = { v, visits, cents, joins: joined ? 'visit' : 'new-visit', order };
    }
  }
  if (best === null) return null;
  const { v, visits, cents, joins } = best;
  return { v, visits, cents, joins };
}

/** A place where an item could be done: in a visit that is there (worked out in any case), or in a new one; and its least cost. */
interface Way {
  v: number;
  at: number;
  joined: DraftVisit | null;
  least: number;
}

/** Whether the day can end in time once a visit takes as long as another one. */
function hasTimeFor(
  instance: PlanningInstance,
  v: number,
  visits: readonly DraftVisit[],
  at: number,
  other: DraftVisit,
): boolean {
  const { site, items } = visits[at]!;
  const longer = visitMinutes(instance, site, other.items).total - visitMinutes(instance, site, items).total;
  return canEndInTime(instance, v, busyMinutes(instance, v, visits) + longer);
}

/** A visit with one more item. */
export function withItem(visit: DraftVisit, index: number): DraftVisit {
  return { ...visit, items: [...visit.items, index].sort((a, b) => a - b) };
}

/** Where all machines of a visit stand idle, not more than the site allows. */
export function respectsMachines(instance: PlanningInstance, visit: DraftVisit): boolean {
  const { downRule, maxMachinesDown } = instance.snapshot.sites[visit.site]!;
  if (downRule === 'one-by-one') return true;
  return new Set(visit.items.map((item) => instance.items[item]!.machine)).size <= maxMachinesDown;
}

/** Visits that a site has on each day. */
function visitsPerDayAt(instance: PlanningInstance, draft: Draft, site: number): Map<number, number> {
  const counts = new Map<number, number>();
  draft.forEach((visits, v) => {
    for (const visit of visits) {
      if (visit.site !== site) continue;
      const { day } = instance.technicianDays[v]!;
      counts.set(day, (counts.get(day) ?? 0) + 1);
    }
  });
  return counts;
}

/** A technician-day that has been announced to the site is only for the announced visit. */
function isPromised(instance: PlanningInstance, site: number, v: number): boolean {
  const day = instance.technicianDays[v]!;
  return instance.promises.some((p) => p.site === site && p.technician === day.technician && p.day === day.day);
}
