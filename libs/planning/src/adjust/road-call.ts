import { maxIterations, type StartVisit, solve } from '@deckround/routing';
import { type DraftVisit, evaluateDraft, routeCents } from '../draft.js';
import type { InstancePromise, PlanningInstance } from '../instance.js';
import { ItemMenus } from '../item-menus.js';
import type { PlanStop } from '../plan-stops.js';
import { promiseKeptBy, toRoutingProblem } from '../to-routing.js';
import { describeChange, type PlanChange } from './describe-change.js';
import { type Placement, placements } from './place-visit.js';
import { findVisit, type NamedDraft, type NamedVisit, type StandingWeek } from './standing-week.js';

/** The simplest first. */
const KINDS = ['squeeze-in', 'push-one', 're-plan'] as const;
export type RoadCallKind = (typeof KINDS)[number];

export interface RoadCallOption {
  kind: RoadCallKind;
  draft: NamedDraft;
  /** Beside the same week without the call. */
  change: PlanChange;
}

export interface RoadCallSettings {
  /** The call's item in the snapshot. */
  itemId: string;
  /** Days of the horizon to look at. */
  dates: readonly string[];
  /** Iterations of the small search. */
  iterations: number;
  seed: number;
}

/** How many technicians the small search shuffles. */
const CREW = 3;
/** How many visits to push are tried in full, the most promising first. */
const PUSHED_TRIED = 24;
/** While the day is planned again, breaking a promise counts this many times its price. */
const PROMISE_WEIGHT = 3;

/**
 * The three ways to fit a call into the week, the best of each kind:
 * squeeze-in: nobody's promise moves, every visit stays with its technician and in its order;
 * push-one: one visit makes room and goes elsewhere, or its work waits;
 * re-plan: a small search over the nearest technicians' day, promises three times as dear.
 * A kind without a feasible way, or no better than a simpler one, is left out.
 */
export function roadCallOptions(week: StandingWeek, settings: RoadCallSettings): RoadCallOption[] {
  const { instance, draft } = week;
  const near = instance.technicianDays.flatMap((day, v) => (settings.dates.includes(day.date) ? [v] : []));
  const drafts = visitsForCall(week, settings.itemId).flatMap((call): [RoadCallKind, NamedDraft | null][] => [
    ['squeeze-in', squeezeIn(instance, draft, call, near)],
    ['push-one', pushOne(instance, draft, call, near)],
    ['re-plan', rePlan(week, call, near, settings)],
  ]);
  return bestRoadCallOptions(
    drafts.flatMap(([kind, after]) =>
      after === null ? [] : [{ kind, draft: after, change: roadCallChange(week, after, settings.itemId) }],
    ),
  );
}

/** The call as a visit of its own, and in each visit of its site that nobody can make where it stands. */
function visitsForCall({ instance, homeless }: StandingWeek, itemId: string): NamedVisit[] {
  const index = instance.snapshot.items.findIndex((item) => item.id === itemId);
  const { site } = instance.items[index]!;
  const lost = homeless.filter((visit) => visit.site === site);
  return [
    { visitId: null, site, items: [index], promise: null },
    ...lost.map((visit) => ({ ...joined(visit, [index]), promise: null })),
  ];
}

function joined(visit: NamedVisit, items: readonly number[]): NamedVisit {
  return { ...visit, items: [...visit.items, ...items].sort((a, b) => a - b) };
}

/** The cheapest of each kind, as of several weeks; a kind that is no better than a simpler one is left out. */
export function bestRoadCallOptions<Option extends RoadCallOption>(options: readonly Option[]): Option[] {
  const best: Option[] = [];
  for (const kind of KINDS) {
    const cheapest = options
      .filter((option) => option.kind === kind)
      .reduce<Option | null>((a, b) => (a !== null && a.change.cents.total <= b.change.cents.total ? a : b), null);
    if (cheapest === null) continue;
    const { change } = cheapest;
    const isBetter = best.every(
      (simpler) => change.cents.total < simpler.change.cents.total || isGentler(change, simpler.change),
    );
    if (isBetter) best.push(cheapest);
  }
  return best;
}

/** What a call costs beside a week without it: that it would be left out otherwise is no saving. */
export function roadCallChange(week: StandingWeek, after: NamedDraft, itemId: string): PlanChange {
  const change = describeChange(week, after);
  const { instance } = week;
  const index = instance.snapshot.items.findIndex((item) => item.id === itemId);
  const { deferralCents, laterLabourCents } = instance.items[index]!;
  return {
    ...change,
    cents: {
      ...change.cents,
      total: change.cents.total + deferralCents,
      deferral: change.cents.deferral + deferralCents - laterLabourCents,
      laterLabour: change.cents.laterLabour + laterLabourCents,
    },
  };
}

function isGentler(a: PlanChange, b: PlanChange): boolean {
  const broken = (change: PlanChange) => change.visits.filter((visit) => visit.breaksPromise).length;
  return broken(a) < broken(b);
}

function squeezeIn(
  instance: PlanningInstance,
  draft: NamedDraft,
  call: NamedVisit,
  near: readonly number[],
): NamedDraft | null {
  let best: (Placement & { total: number }) | null = null;
  for (const v of near) {
    const found = additions(instance, draft, v, call);
    for (const placement of found) {
      const total = placement.cents;
      if (best === null || total < best.total) best = { ...placement, total };
    }
  }
  return best && draft.with(best.v, best.visits);
}

/** Placements of the call that break no promise; alone it may also join a visit of its site. */
function additions(instance: PlanningInstance, draft: NamedDraft, v: number, call: NamedVisit): Placement[] {
  const isAlone = call.visitId === null;
  const here = draft[v]!.findIndex((visit) => isAlone && visit.site === call.site && visit.promise?.kind !== 'frozen');
  if (here < 0) {
    const found = placements(instance, draft, v, call, false);
    return Array.isArray(found) ? found : [];
  }
  const visit = draft[v]![here]!;
  const lifted = draft.with(v, draft[v]!.toSpliced(here, 1));
  const found = placements(instance, lifted, v, joined(visit, call.items), false);
  const saved = routeCents(instance, v, draft[v]!) - routeCents(instance, v, lifted[v]!);
  return Array.isArray(found)
    ? found
        .filter((placement) => placement.position === here)
        .map((placement) => ({ ...placement, cents: placement.cents - saved }))
    : [];
}

function pushOne(
  instance: PlanningInstance,
  draft: NamedDraft,
  call: NamedVisit,
  near: readonly number[],
): NamedDraft | null {
  const tries: { without: NamedDraft; pushed: NamedVisit; placed: Placement; bound: number }[] = [];
  for (const v of near) {
    for (const [k, pushed] of draft[v]!.entries()) {
      if (pushed.promise?.kind === 'frozen') continue;
      const without = draft.with(v, draft[v]!.toSpliced(k, 1));
      const saved = routeCents(instance, v, draft[v]!) - routeCents(instance, v, without[v]!);
      const found = additions(instance, without, v, call);
      if (found.length === 0) continue;
      const placed = found.reduce((a, b) => (b.cents < a.cents ? b : a));
      tries.push({ without, pushed, placed, bound: placed.cents - saved + (pushed.promise?.moveCents ?? 0) });
    }
  }
  tries.sort((a, b) => a.bound - b.bound);
  let best: { draft: NamedDraft; cents: number } | null = null;
  for (const { without, pushed, placed, bound } of tries.slice(0, PUSHED_TRIED)) {
    const withCall = without.with(placed.v, placed.visits);
    const homeless = { ...pushed, promise: null };
    const waiting = pushed.items.reduce((sum, item) => sum + instance.items[item]!.deferralCents, 0);
    const mustDo = pushed.items.some((item) => instance.items[item]!.mustDo);
    if (!mustDo && (best === null || bound + waiting < best.cents)) best = { draft: withCall, cents: bound + waiting };
    for (let v = 0; v < instance.technicianDays.length; v++) {
      const found = placements(instance, withCall, v, homeless, false);
      if (!Array.isArray(found)) continue;
      for (const placement of found) {
        const cents = bound + placement.cents;
        if (best === null || cents < best.cents) best = { draft: withCall.with(v, placement.visits), cents };
      }
    }
  }
  return best?.draft ?? null;
}

/** The nearest technicians' first possible day, planned again; all other days stay as they are. */
function rePlan(
  { instance, draft }: StandingWeek,
  call: NamedVisit,
  near: readonly number[],
  settings: RoadCallSettings,
): NamedDraft | null {
  const able = near.filter((v) => Array.isArray(placements(instance, draft.with(v, []), v, call, false)));
  if (able.length === 0) return null;
  const day = Math.min(...able.map((v) => instance.technicianDays[v]!.day));
  const distance = (v: number) => {
    const { size, minutes } = instance.travel;
    const places = [instance.technicianDays[v]!.startPlace, ...draft[v]!.map((visit) => visit.site)];
    return Math.min(...places.map((place) => minutes[place * size + call.site]!));
  };
  const crew = near
    .filter((v) => instance.technicianDays[v]!.day === day)
    .sort((a, b) => Number(able.includes(b)) - Number(able.includes(a)) || distance(a) - distance(b) || a - b)
    .slice(0, CREW)
    .sort((a, b) => a - b);
  const planned = searchCrew(instance, draft, crew, call, settings);
  if (planned === null) return null;
  let after: NamedDraft = draft;
  for (const [n, v] of crew.entries()) after = after.with(v, planned[n]!);
  // Its work in another visit would leave an empty one behind, which nobody can make.
  if (call.visitId !== null && findVisit(after, call.visitId) === null) return null;
  return evaluateDraft(instance, after) === null ? null : after;
}

/** Searches the crew's technician-days, all of one day, with exactly their present work and the call, all of which must be done. */
function searchCrew(
  instance: PlanningInstance,
  draft: NamedDraft,
  crew: readonly number[],
  call: NamedVisit,
  settings: RoadCallSettings,
): NamedVisit[][] | null {
  const work = crew.flatMap((v) => draft[v]!);
  const { day } = instance.technicianDays[crew[0]!]!;
  const wanted = new Set([...work.flatMap((visit) => visit.items), ...call.items]);
  const part: PlanningInstance = {
    ...instance,
    technicianDays: crew.map((v) => instance.technicianDays[v]!),
    items: instance.items.map((item) => {
      const mustDo = wanted.has(item.index);
      // What stands on the day without its parts may stay.
      if (mustDo) return { ...item, mustDo, releaseDay: Math.min(item.releaseDay, day) };
      return item.mustDo ? { ...item, mustDo } : item;
    }),
  };
  const stops = crewStops(part, work, call);
  const menus = new ItemMenus(part, stops);
  const start: StartVisit[] = crew.flatMap((v, vehicle) =>
    draft[v]!.map((visit) => {
      const pinned = visit.promise?.kind === 'frozen';
      const stop = stops.findIndex((each) =>
        pinned ? each.promise === visit.promise : each.kind === 'site' && each.site === visit.site,
      );
      return { stop, vehicle, pinned };
    }),
  );
  const { routes } = solve(toRoutingProblem(part, stops, menus), {
    seed: settings.seed,
    stop: maxIterations(settings.iterations),
    start: start.sort((a, b) => Number(b.pinned) - Number(a.pinned)),
  });
  const planned = routes.map((route, vehicle) =>
    route.map((visit): DraftVisit => {
      const stop = stops[visit.stop]!;
      const promise = stop.promise ?? promiseKeptBy(stop, part.technicianDays[vehicle]!) ?? null;
      return { site: stop.site, items: menus.itemsOf(visit.stop, visit.token), promise: original(instance, promise) };
    }),
  );
  const done = new Set(planned.flat().flatMap((visit) => [...visit.items]));
  return [...wanted].every((item) => done.has(item))
    ? named(planned, call.visitId === null ? work : [...work, call])
    : null;
}

function original(instance: PlanningInstance, promise: InstancePromise | null): InstancePromise | null {
  return promise && instance.promises.find((each) => each.index === promise.index)!;
}

function crewStops(instance: PlanningInstance, work: readonly NamedVisit[], call: NamedVisit): PlanStop[] {
  const stops: PlanStop[] = [];
  const bySite = new Map<number, NamedVisit[]>();
  for (const visit of [...work, call]) {
    if (visit.promise?.kind === 'frozen') {
      const { site, items, promise } = visit;
      stops.push({ kind: 'frozen', site, items: [...items], promise, confirmed: [], mostBonus: 0, visits: 1 });
    } else {
      bySite.set(visit.site, [...(bySite.get(visit.site) ?? []), visit]);
    }
  }
  for (const [site, visits] of bySite) {
    const items = visits.flatMap((visit) => [...visit.items]);
    items.sort((a, b) => instance.items[a]!.machine - instance.items[b]!.machine || a - b);
    const confirmed = visits.flatMap(({ promise }) =>
      promise === null ? [] : [{ ...promise, moveCents: promise.moveCents * PROMISE_WEIGHT }],
    );
    const mostBonus = Math.max(0, ...confirmed.map((promise) => promise.moveCents));
    stops.push({ kind: 'site', site, items, promise: null, confirmed, mostBonus, visits: visits.length + 1 });
  }
  return stops;
}

/** Gives every planned visit the name of the standing one at its site that shares most of its items. */
function named(planned: readonly DraftVisit[][], work: readonly NamedVisit[]): NamedVisit[][] {
  const free = new Set(work);
  const shared = (a: DraftVisit, b: DraftVisit) => a.items.filter((item) => b.items.includes(item)).length;
  const names = new Map<DraftVisit, string | null>();
  const bySize = planned.flat().sort((a, b) => b.items.length - a.items.length);
  for (const visit of bySize) {
    const candidates = [...free].filter((each) => each.site === visit.site && shared(each, visit) > 0);
    candidates.sort(
      (a, b) =>
        Number(b.promise === visit.promise) - Number(a.promise === visit.promise) ||
        shared(b, visit) - shared(a, visit),
    );
    const chosen = candidates[0];
    if (chosen) free.delete(chosen);
    names.set(visit, chosen?.visitId ?? null);
  }
  return planned.map((route) => route.map((visit) => ({ ...visit, visitId: names.get(visit)! })));
}
