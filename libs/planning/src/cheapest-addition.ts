import { type Draft, type DraftVisit, routeCents } from './draft.js';
import { basePlace, type PlanningInstance } from './instance.js';
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

/** Whether a technician-day may do the item at all: skill, the day its parts are there, its last day, nobody barred. */
export function canDo(instance: PlanningInstance, index: number, v: number): boolean {
  const item = instance.items[index]!;
  const day = instance.technicianDays[v]!;
  const { skills } = instance.snapshot.technicians[day.technician]!;
  if (item.releaseDay > day.day || item.latestDay < day.day) return false;
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
  let best: Addition | null = null;
  const visitsOn = visitsPerDayAt(instance, draft, site);
  const offer = (v: number, visits: DraftVisit[], joins: Addition['joins']) => {
    const cents = routeCents(instance, v, visits) - present[v]!;
    if (cents < (best?.cents ?? below)) best = { v, visits, cents, joins };
  };
  draft.forEach((visits, v) => {
    if (!canDo(instance, index, v)) return;
    const here = visits.findIndex((visit) => visit.site === site && visit.promise?.kind !== 'frozen');
    if (here >= 0) {
      const joined = withItem(visits[here]!, index);
      if (respectsMachines(instance, joined)) offer(v, visits.with(here, joined), 'visit');
    } else if (
      (visitsOn.get(instance.technicianDays[v]!.day) ?? 0) < visitsPerDay(instance.snapshot.sites[site]!) &&
      visits.every((visit) => visit.site !== site)
    ) {
      if (isPromised(instance, site, v)) return;
      for (let p = 0; p <= visits.length; p++) {
        if (leastCents(instance, v, visits, p, alone) >= (best?.cents ?? below)) continue;
        offer(v, [...visits.slice(0, p), alone, ...visits.slice(p)], 'new-visit');
      }
    }
  });
  return best;
}

/** What a new visit costs at least: drives, labour, fee and timing, without overtime and before rounding. */
function leastCents(
  instance: PlanningInstance,
  v: number,
  visits: readonly DraftVisit[],
  position: number,
  visit: DraftVisit,
): number {
  const { travel, snapshot } = instance;
  const day = instance.technicianDays[v]!;
  const base = basePlace(instance, day.technician);
  const from = visits[position - 1]?.site ?? day.startPlace;
  const to = visits[position]?.site ?? base;
  const wage = snapshot.technicians[day.technician]!.wageCentsPerHour / 60;
  const arc = (a: number, b: number) =>
    travel.cents[a * travel.size + b]! + wage * travel.minutes[a * travel.size + b]!;
  const detour = arc(from, visit.site) + arc(visit.site, to) - (visits.length > 0 ? arc(from, to) : 0);
  const timing = visit.items.reduce((sum, item) => sum + instance.items[item]!.timingCents[day.day]!, 0);
  const { total } = visitMinutes(instance, visit.site, visit.items);
  return detour + wage * total + snapshot.sites[visit.site]!.visitFeeCents + timing - 1;
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
