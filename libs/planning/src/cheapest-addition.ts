import { type Draft, type DraftVisit, routeCents } from './draft.js';
import { busyMinutes, canEndInTime, leastCents } from './insertion-bounds.js';
import type { InstanceItem, PlanningInstance } from './instance.js';
import { respectsMachines, visitsPerDay } from './machines-down.js';
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
  return new SiteAdditions(instance, draft, present, instance.items[index]!.site).cheapest(index, below);
}

/**
 * Additions at one site to a draft that stays as it is, for the many items that a site leaves out. What a new visit costs
 * beside its timing rests on its length alone, and is worked out once for all items that make it so long.
 */
export class SiteAdditions {
  /** Each technician-day's visit that an item can join, -1 where there is none. */
  readonly #here: readonly number[];
  readonly #visitsOn: ReadonlyMap<number, number>;
  readonly #ways = new Map<number, NewVisitWay[]>();

  constructor(
    readonly instance: PlanningInstance,
    readonly draft: Draft,
    readonly present: readonly number[],
    readonly site: number,
  ) {
    this.#here = draft.map((visits) =>
      visits.findIndex((visit) => visit.site === site && visit.promise?.kind !== 'frozen'),
    );
    this.#visitsOn = visitsPerDayAt(instance, draft, site);
  }

  /** As {@link cheapestAddition}. */
  cheapest(index: number, below = Infinity): Addition | null {
    let best = this.#joined(index, below);
    const { instance, draft } = this;
    const { timingCents } = instance.items[index]!;
    const alone: DraftVisit = { site: this.site, items: [index], promise: null };
    const soonest = Math.min(...timingCents.slice(0, instance.dates.length));
    for (const way of this.#waysOf(alone)) {
      const limit = best?.cents ?? below;
      if (way.least + soonest > limit) break;
      const timing = timingCents[instance.technicianDays[way.v]!.day]!;
      if (way.least + timing > limit || !canDo(instance, index, way.v)) continue;
      way.exact ??= this.#workedOut(way, alone, timing);
      if (way.exact.at < 0) continue;
      const cents = way.exact.cents + timing;
      if (!(cents < below) || (best !== null && (cents > best.cents || (cents === best.cents && way.v > best.v))))
        continue;
      best = { v: way.v, visits: draft[way.v]!.toSpliced(way.exact.at, 0, alone), cents, joins: 'new-visit' };
    }
    return best;
  }

  #joined(index: number, below: number): Addition | null {
    const { instance, draft, present } = this;
    let best: Addition | null = null;
    this.#here.forEach((at, v) => {
      if (at < 0 || !canDo(instance, index, v)) return;
      const joined = withItem(draft[v]![at]!, index);
      if (!respectsMachines(instance, joined) || !hasTimeFor(instance, v, draft[v]!, at, joined)) return;
      const visits = draft[v]!.with(at, joined);
      const cents = routeCents(instance, v, visits) - present[v]!;
      if (cents < (best?.cents ?? below)) best = { v, visits, cents, joins: 'visit' };
    });
    return best;
  }

  /** Technician-days in which a visit so long may fit, the most promising first. */
  #waysOf(alone: DraftVisit): NewVisitWay[] {
    const { instance, draft, site } = this;
    const { total } = visitMinutes(instance, site, alone.items);
    const known = this.#ways.get(total);
    if (known) return known;
    const ways: NewVisitWay[] = [];
    draft.forEach((visits, v) => {
      // No detour is shorter than none: drives are shortest paths.
      if (!canEndInTime(instance, v, busyMinutes(instance, v, visits) + total) || !this.#isOpen(v)) return;
      const leastAt = leastCents(instance, v, visits, site, total);
      let least = Infinity;
      for (let at = 0; at <= visits.length; at++) least = Math.min(least, leastAt(at));
      if (least < Infinity) ways.push({ v, least, exact: null });
    });
    ways.sort((a, b) => a.least - b.least || a.v - b.v);
    this.#ways.set(total, ways);
    return ways;
  }

  /** Whether a technician-day may get a new visit here. */
  #isOpen(v: number): boolean {
    const { instance, draft, site } = this;
    return (
      (this.#visitsOn.get(instance.technicianDays[v]!.day) ?? 0) < visitsPerDay(instance.snapshot.sites[site]!) &&
      draft[v]!.every((visit) => visit.site !== site) &&
      !isPromised(instance, site, v)
    );
  }

  /** The cheapest position; of equally dear ones the first. */
  #workedOut({ v }: NewVisitWay, alone: DraftVisit, timing: number): { at: number; cents: number } {
    const { instance, site, present } = this;
    const visits = this.draft[v]!;
    const leastAt = leastCents(instance, v, visits, site, visitMinutes(instance, site, alone.items).total);
    let best = { at: -1, cents: Infinity };
    for (let at = 0; at <= visits.length; at++) {
      if (leastAt(at) > best.cents) continue;
      const cents = routeCents(instance, v, visits.toSpliced(at, 0, alone)) - present[v]! - timing;
      if (cents < best.cents) best = { at, cents };
    }
    return best;
  }
}

/** A technician-day for a new visit; all costs without its timing. */
interface NewVisitWay {
  v: number;
  /** Bound from below, over all positions. */
  least: number;
  /** The cheapest position once it is worked out, at -1 where none can be driven. */
  exact: { at: number; cents: number } | null;
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
