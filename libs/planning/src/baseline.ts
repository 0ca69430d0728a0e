import { canDo } from './cheapest-addition.js';
import { type Draft, type DraftVisit, routeCents } from './draft.js';
import { leastCents } from './insertion-bounds.js';
import { buildInstance, type InstanceItem, type PlanningInstance } from './instance.js';
import { visitsPerDay } from './machines-down.js';
import { type PlanStop, planStops } from './plan-stops.js';
import { reportPlan } from './report-plan.js';
import type { PlanningSnapshot } from './snapshot.js';
import { visitMinutes } from './visit-minutes.js';
import type { WeekPlan } from './week-plan.js';

export type BaselineVariant = 'due-day' | 'seven-day-merge';

/**
 * What a careful person does today, in two stages: every item on its due day, grouped by site; then routes by cheapest
 * insertion with relocation. `seven-day-merge` also takes along what falls due at the site within seven days.
 * Deterministic; scored like any other plan.
 *
 * @source own definition, planner note section 6
 */
export function baselinePlan(snapshot: PlanningSnapshot, variant: BaselineVariant, snapshotHash = ''): WeekPlan {
  const instance = buildInstance(snapshot);
  const draft = new Baseline(instance, planStops(instance)).draft(variant);
  return reportPlan(instance, draft, { snapshotHash, seed: 0, iterations: 0 });
}

/** Both variants as drafts. */
export function baselineDrafts(instance: PlanningInstance, stops: readonly PlanStop[]): Draft[] {
  const variants = ['due-day', 'seven-day-merge'] as const;
  return variants.map((variant) => new Baseline(instance, stops).draft(variant));
}

/** The week as it stands: what was promised and the visits of the former plan, as far as they can still be made. */
export function standingDraft(instance: PlanningInstance, stops: readonly PlanStop[]): Draft {
  return new Baseline(instance, stops).standing();
}

/** One draft in the making, visit by visit at its cheapest place. */
class Baseline {
  private routes: DraftVisit[][];
  /** Visits by site and day. */
  private readonly visitsOn = new Map<string, number>();
  /** Technician-days of each day. */
  private readonly vehiclesOn: number[][];

  constructor(
    private readonly instance: PlanningInstance,
    private readonly stops: readonly PlanStop[],
  ) {
    this.routes = instance.technicianDays.map(() => []);
    this.vehiclesOn = instance.dates.map(() => []);
    for (const [v, { day }] of instance.technicianDays.entries()) this.vehiclesOn[day]!.push(v);
  }

  draft(variant: BaselineVariant): Draft {
    const { instance } = this;
    const placed = this.placePromises(this.promises());
    const queues: InstanceItem[][] = instance.dates.map(() => []);
    for (const [day, items] of this.dueDays(variant, placed)) queues[day]!.push(...items);
    queues.forEach((queue, day) => {
      const rest = this.placeDay(queue, day);
      if (day + 1 < queues.length) queues[day + 1]!.push(...rest);
    });
    this.routes = this.routes.map((route, v) => this.relocated(route, v));
    return this.routes;
  }

  standing(): Draft {
    const inOrder = this.promises().sort((a, b) => a.promise.slot.open - b.promise.slot.open);
    const placed = this.placePromises(inOrder);
    for (const { site, technician, day, items } of this.instance.previous) {
      const v = this.instance.technicianDays.findIndex((d) => d.technician === technician && d.day === day);
      if (v < 0) continue;
      const todo = items.filter((item) => !placed.has(item) && canDo(this.instance, item, v)).sort((a, b) => a - b);
      if (todo.length === 0 || !this.siteHasRoom(site, v, todo)) continue;
      if (this.insert({ site, items: todo, promise: null }, v)) for (const item of todo) placed.add(item);
    }
    return this.routes;
  }

  private promises() {
    return [
      ...this.stops.flatMap((stop) => (stop.promise ? [{ promise: stop.promise, items: stop.items }] : [])),
      ...this.stops.flatMap((stop) => stop.confirmed.map((promise) => ({ promise, items: promise.items }))),
    ];
  }

  /** Visits that were announced, with the items they were announced for. */
  private placePromises(promises: ReturnType<Baseline['promises']>): Set<number> {
    const placed = new Set<number>();
    const { technicianDays } = this.instance;
    for (const { promise, items } of promises) {
      const day = technicianDays.findIndex((d) => d.technician === promise.technician && d.day === promise.day);
      if (day < 0) continue;
      const frozen = promise.kind === 'frozen';
      const todo = items.filter((item) => !placed.has(item) && (frozen || canDo(this.instance, item, day)));
      if (todo.length === 0 || (!frozen && !this.siteHasRoom(promise.site, day, todo))) continue;
      const isPlaced = this.insert({ site: promise.site, items: [...todo].sort((a, b) => a - b), promise }, day);
      // The work of a frozen visit goes with it or not at all.
      if (isPlaced || frozen) for (const item of todo) placed.add(item);
    }
    return placed;
  }

  /** Due day of every item that falls due within the horizon, moved earlier to a day when it can be done. */
  private dueDays(variant: BaselineVariant, placed: Set<number>): [number, InstanceItem[]][] {
    const { items, dates } = this.instance;
    const result: [number, InstanceItem[]][] = [];
    const bySite = new Map<number, { item: InstanceItem; due: number }[]>();
    for (const item of items) {
      if (placed.has(item.index)) continue;
      const due = item.mustDo ? Math.min(this.dueDay(item), dates.length - 1) : this.dueDay(item);
      const list = bySite.get(item.site) ?? [];
      list.push({ item, due });
      bySite.set(item.site, list);
    }
    for (const list of bySite.values()) {
      list.sort((a, b) => a.due - b.due || a.item.index - b.item.index);
      let lead = -Infinity;
      for (const { item, due } of list) {
        if (variant === 'due-day' || due > lead + 7) lead = due;
        if (lead >= dates.length) continue;
        const day = this.possibleDay(item, lead);
        if (day >= 0) result.push([day, [item]]);
      }
    }
    return result;
  }

  /** Days from the first date to the median due date; without one, the day its timing cost is lowest. */
  private dueDay(item: InstanceItem): number {
    const { snapshot, dates } = this.instance;
    const due = snapshot.items[item.index]!.dueP50;
    if (due === null) {
      const cheapest = Math.min(...item.timingCents.slice(0, dates.length));
      return cheapest < item.deferralCents ? item.timingCents.indexOf(cheapest) : dates.length;
    }
    return Math.max(0, Math.floor((Date.parse(due) - Date.parse(dates[0]!)) / 86_400_000));
  }

  /** Last possible day up to `due`, else the first one after it; −1 = none. */
  private possibleDay(item: InstanceItem, due: number): number {
    const { technicianDays, dates, windows } = this.instance;
    const possible = (day: number) =>
      windows[item.site]![day]!.length > 0 &&
      technicianDays.some((shift, v) => shift.day === day && canDo(this.instance, item.index, v));
    for (let day = Math.min(due, dates.length - 1); day >= 0; day--) if (possible(day)) return day;
    for (let day = due + 1; day < dates.length; day++) if (possible(day)) return day;
    return -1;
  }

  /** Places the day's visits, dearest first; gives back what did not fit. */
  private placeDay(queue: InstanceItem[], day: number): InstanceItem[] {
    const bySite = new Map<number, InstanceItem[]>();
    for (const item of queue) bySite.set(item.site, [...(bySite.get(item.site) ?? []), item]);
    const price = (items: InstanceItem[]) =>
      items.reduce((sum, item) => sum + item.deferralCents + (item.mustDo ? 1e9 : 0), 0);
    const visits = [...bySite].sort(([a, x], [b, y]) => price(y) - price(x) || a - b);
    const rest: InstanceItem[] = [];
    for (const [site, items] of visits) {
      let open = items;
      for (const v of this.technicianOrder(site, items, day)) {
        const able = open.filter((item) => canDo(this.instance, item.index, v));
        if (able.length === 0) continue;
        const done = this.placeLargest(site, able, v);
        open = open.filter((item) => !done.has(item.index));
        if (open.length === 0) break;
      }
      rest.push(...open);
    }
    return rest;
  }

  /** Preferred technician first; then who can do most of it, has the least work, lives nearest. */
  private technicianOrder(site: number, items: InstanceItem[], day: number): number[] {
    const { technicianDays, snapshot, travel } = this.instance;
    const rank = (v: number) => {
      const { technician } = technicianDays[v]!;
      const preferred = snapshot.technicians[technician]!.id === snapshot.sites[site]!.preferredTechnicianId;
      const able = items.filter((item) => canDo(this.instance, item.index, v)).length;
      const near = travel.minutes[(snapshot.sites.length + technician) * travel.size + site]!;
      return [-able, preferred ? 0 : 1, this.routes[v]!.length, near, v];
    };
    return this.vehiclesOn[day]!.map((v) => ({ v, rank: rank(v) }))
      .sort((a, b) => compare(a.rank, b.rank))
      .map(({ v }) => v);
  }

  /** Inserts a visit with as many of the items as fit, giving up those with the lowest deferral price first. */
  private placeLargest(site: number, items: InstanceItem[], v: number): Set<number> {
    const byPrice = [...items].sort(
      (a, b) => Number(b.mustDo) - Number(a.mustDo) || b.deferralCents - a.deferralCents || a.index - b.index,
    );
    // Fewer items never take longer, so the largest number that fits can be halved in on.
    let fits: number[] = [];
    for (let low = 0, high = byPrice.length; low < high; ) {
      const count = Math.ceil((low + high) / 2);
      const indices = indicesOf(byPrice.slice(0, count));
      const possible =
        this.siteHasRoom(site, v, indices) && this.cheapestRoute({ site, items: indices, promise: null }, v);
      if (possible) {
        fits = indices;
        low = count;
      } else {
        high = count - 1;
      }
    }
    if (fits.length > 0 && this.insert({ site, items: fits, promise: null }, v)) return new Set(fits);
    return new Set();
  }

  private siteHasRoom(site: number, v: number, items: readonly number[]): boolean {
    const { technicianDays, snapshot, items: all } = this.instance;
    const row = snapshot.sites[site]!;
    const today = this.visitsOn.get(`${site}|${technicianDays[v]!.day}`) ?? 0;
    if (this.routes[v]!.some((visit) => visit.site === site) || today >= visitsPerDay(row)) return false;
    const machines = new Set(items.map((item) => all[item]!.machine)).size;
    return row.downRule === 'one-by-one' || machines <= row.maxMachinesDown;
  }

  private insert(visit: DraftVisit, v: number): boolean {
    const route = this.cheapestRoute(visit, v);
    if (route === null) return false;
    this.routes[v] = route;
    const key = `${visit.site}|${this.instance.technicianDays[v]!.day}`;
    this.visitsOn.set(key, (this.visitsOn.get(key) ?? 0) + 1);
    return true;
  }

  /** The route with the visit at its cheapest position; null when it fits nowhere. */
  private cheapestRoute(visit: DraftVisit, v: number): DraftVisit[] | null {
    const route = this.routes[v]!;
    const { day } = this.instance.technicianDays[v]!;
    const timing = visit.items.reduce((sum, item) => sum + this.instance.items[item]!.timingCents[day]!, 0);
    const { total } = visitMinutes(this.instance, visit.site, visit.items);
    const leastAt = leastCents(this.instance, v, route, visit.site, total);
    const least = Array.from({ length: route.length + 1 }, (_, p) => leastAt(p) + timing);
    if (least.every((cents) => cents === Infinity)) return null;
    const present = routeCents(this.instance, v, route);
    let best = Infinity;
    let bestRoute: DraftVisit[] | null = null;
    for (let p = 0; p <= route.length; p++) {
      if (present + least[p]! >= best) continue;
      const tried = route.toSpliced(p, 0, visit);
      const cents = routeCents(this.instance, v, tried);
      if (cents < best) {
        best = cents;
        bestRoute = tried;
      }
    }
    return bestRoute;
  }

  /** Moves single visits within the route while that makes it cheaper. */
  private relocated(route: DraftVisit[], v: number): DraftVisit[] {
    let best = route;
    let cents = routeCents(this.instance, v, route);
    for (let improved = true; improved; ) {
      improved = false;
      for (let from = 0; from < best.length && !improved; from++) {
        for (let to = 0; to < best.length && !improved; to++) {
          if (from === to) continue;
          const tried = [...best];
          tried.splice(to, 0, ...tried.splice(from, 1));
          const price = routeCents(this.instance, v, tried);
          if (price < cents) {
            cents = price;
            best = tried;
            improved = true;
          }
        }
      }
    }
    return best;
  }
}

function indicesOf(items: readonly InstanceItem[]): number[] {
  return items.map((item) => item.index).sort((a, b) => a - b);
}

function compare(a: number[], b: number[]): number {
  for (let k = 0; k < a.length; k++) if (a[k] !== b[k]) return a[k]! - b[k]!;
  return 0;
}
