import { type DraftVisit, evaluateRoute } from '../draft.js';
import { buildInstance, type InstancePromise, knownItems, type PlanningInstance } from '../instance.js';
import type { PlanningPromise, PlanningSnapshot } from '../snapshot.js';

/** A visit as the week stands now. */
export interface StandingVisit {
  visitId: string;
  siteId: string;
  technicianId: string;
  date: string;
  itemIds: readonly string[];
  /** Start of work when the shop holds the visit fast, wall clock of the site; null = it may move. */
  heldAt: string | null;
  /** What the customer was told; null = nothing. */
  announced: Pick<PlanningPromise, 'from' | 'to' | 'moveCents'> | null;
}

/** A draft visit that keeps its name; `null` = it is new. */
export interface NamedVisit extends DraftVisit {
  visitId: string | null;
}

export type NamedDraft = readonly (readonly NamedVisit[])[];

/** A week as it is planned now, ready to be asked what a change would cost. */
export interface StandingWeek {
  instance: PlanningInstance;
  draft: NamedDraft;
  /** Visits that cannot stand where they do any more: nobody works then, or the site is closed. */
  homeless: NamedVisit[];
  /** What customers were told, by visit. Of a visit that is held fast that is wider than the time at which it is held. */
  announced: ReadonlyMap<string | null, InstancePromise>;
}

/**
 * Lays the visits of a week over its snapshot, in the order given within each technician-day. Their promises take the
 * place of the snapshot's. A visit of which no work is left open has no place in it.
 *
 * @throws SnapshotInconsistent
 */
export function standingWeek(snapshot: PlanningSnapshot, visits: readonly StandingVisit[]): StandingWeek {
  const promises = visits.flatMap(promiseOfVisit);
  const dateOf = new Map(visits.flatMap(({ itemIds, date }) => itemIds.map((id) => [id, date])));
  const instance = boundAsItStands(buildInstance({ ...snapshot, promises }), dateOf);
  const siteOf = new Map(snapshot.sites.map((site, s) => [site.id, s]));
  const itemOf = new Map(snapshot.items.map((item, i) => [item.id, i]));
  const promiseOf = new Map(instance.promises.map((promise) => [promises[promise.index]!.visitId, promise]));
  const announced = new Map<string | null, InstancePromise>();
  for (const { visitId, siteId, date, announced: told } of visits) {
    const promise = promiseOf.get(visitId);
    if (told === null || promise === undefined) continue;
    const { zone } = snapshot.sites[siteOf.get(siteId)!]!;
    const minutes = (time: string) => instance.clock.minutes(zone, date, time);
    announced.set(visitId, {
      ...promise,
      kind: 'confirmed',
      slot: { open: minutes(told.from), close: minutes(told.to) },
    });
  }
  const draft: NamedVisit[][] = instance.technicianDays.map(() => []);
  const homeless: NamedVisit[] = [];
  for (const visit of visits) {
    const v = instance.technicianDays.findIndex(
      (day) => day.date === visit.date && snapshot.technicians[day.technician]!.id === visit.technicianId,
    );
    const site = siteOf.get(visit.siteId);
    const items = knownItems(visit.itemIds, itemOf).sort((a, b) => a - b);
    if (site === undefined || items.length === 0) continue;
    const { visitId } = visit;
    const named: NamedVisit = { visitId, site, items, promise: promiseOf.get(visitId) ?? null };
    // What cannot stand by itself goes first: else its neighbours would seem to be in its way.
    if (v < 0 || evaluateRoute(instance, v, [named]) === null) homeless.push(named);
    else draft[v]!.push(named);
  }
  for (const [v, visits] of draft.entries()) {
    while (visits.length > 0 && evaluateRoute(instance, v, visits) === null) {
      const culprit = visits.findLastIndex((_, k) => evaluateRoute(instance, v, visits.toSpliced(k, 1)) !== null);
      homeless.push(...visits.splice(culprit, 1));
    }
  }
  return { instance, draft, homeless, announced };
}

/**
 * Work bound to those days that it can keep. In its own visit it may stay on its day without its parts. Where they are
 * there on none of these days no place is any better, so it does not wait for them. What had better be late is not bound
 * to its last day once it stands after it, or its parts come after it.
 */
function boundAsItStands(instance: PlanningInstance, dateOf: ReadonlyMap<string, string>): PlanningInstance {
  const { snapshot, dates } = instance;
  const lastDay = dates.length - 1;
  const items = instance.items.map((item) => {
    const { id, betterLate } = snapshot.items[item.index]!;
    const standsOn = dates.indexOf(dateOf.get(id) ?? '');
    const isMissed = betterLate && Math.max(standsOn, item.releaseDay) > item.latestDay;
    const isWanting = standsOn >= 0 && item.releaseDay > lastDay;
    return { ...item, standsOn, ...(isMissed && { latestDay: lastDay }), ...(isWanting && { releaseDay: 0 }) };
  });
  return { ...instance, items };
}

/** What binds a visit in planning: the very time at which it is held, else what the customer was told. */
function promiseOfVisit({ heldAt, announced, itemIds, ...visit }: StandingVisit): PlanningPromise[] {
  if (heldAt === null && announced === null) return [];
  const slot = heldAt === null ? announced! : { from: heldAt, to: heldAt };
  const kind = heldAt === null ? 'confirmed' : 'frozen';
  const { from, to } = slot;
  return [{ ...visit, kind, from, to, itemIds: [...itemIds], moveCents: announced?.moveCents ?? 0 }];
}

/** Whether beginning on that technician-day at that minute is other than the customer was told. */
export function isBroken(
  { instance, announced }: StandingWeek,
  visitId: string | null,
  to: { v: number; start: number } | null,
): boolean {
  const told = announced.get(visitId);
  if (told === undefined) return false;
  if (to === null) return true;
  const day = instance.technicianDays[to.v]!;
  const isElsewhere = day.day !== told.day || day.technician !== told.technician;
  return isElsewhere || to.start < told.slot.open || to.start > told.slot.close;
}

/** Days on which somebody still works, in order. */
export function workedDates({ instance }: StandingWeek): string[] {
  return [...new Set(instance.technicianDays.map((day) => day.date))].sort();
}

/** Where a visit stands in a draft. */
export function findVisit(draft: NamedDraft, visitId: string): { v: number; k: number } | null {
  for (const [v, visits] of draft.entries()) {
    const k = visits.findIndex((visit) => visit.visitId === visitId);
    if (k >= 0) return { v, k };
  }
  return null;
}

/** Start and end of work of every visit of a technician-day; null when it cannot be driven. */
export function evaluateStanding(
  instance: PlanningInstance,
  v: number,
  visits: readonly DraftVisit[],
): { start: number; end: number }[] | null {
  const { times } = evaluateRoute(instance, v, visits) ?? {};
  return times ? visits.map((_, k) => ({ start: times.start[k]!, end: times.end[k]! })) : null;
}
