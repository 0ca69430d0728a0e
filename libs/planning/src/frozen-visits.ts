import { type DraftVisit, evaluateRoute } from './draft.js';
import type { InstancePromise, PlanningInstance } from './instance.js';
import { visitsPerDay } from './machines-down.js';

/**
 * The frozen promises that stand, in order of their slots: those that can be kept beside the dearer ones of the day. The
 * others are given up, and their items are free again; but not those of a day under way, which stays as it is.
 */
export function frozenVisits(instance: PlanningInstance): InstancePromise[] {
  const kept: DraftVisit[][] = instance.technicianDays.map(() => []);
  const dearestFirst = instance.promises
    .filter((promise) => promise.kind === 'frozen' && promise.items.length > 0)
    .sort((a, b) => b.moveCents - a.moveCents || inTurn(a, b));
  const taken = new Set<number>();
  return dearestFirst
    .filter((promise) => {
      if (promise.items.some((item) => taken.has(item))) return false;
      const v = instance.technicianDays.findIndex(
        (each) => each.technician === promise.technician && each.day === promise.day,
      );
      if (v < 0 || (!keep(instance, kept, v, promise) && !isUnderWay(instance, promise))) return false;
      for (const item of promise.items) taken.add(item);
      return true;
    })
    .sort(inTurn);
}

function keep(instance: PlanningInstance, kept: DraftVisit[][], v: number, promise: InstancePromise): boolean {
  const { technicianDays, snapshot } = instance;
  const atSite = kept.flatMap((visits, w) =>
    technicianDays[w]!.day === promise.day ? visits.filter((visit) => visit.site === promise.site) : [],
  );
  if (atSite.length >= visitsPerDay(snapshot.sites[promise.site]!)) return false;
  const items = [...new Set(promise.items)].sort((a, b) => a - b);
  const route = [...kept[v]!, { site: promise.site, items, promise }].sort((a, b) => inTurn(a.promise!, b.promise!));
  if (evaluateRoute(instance, v, route) === null) return false;
  kept[v] = route;
  return true;
}

function isUnderWay({ snapshot, dates }: PlanningInstance, promise: InstancePromise): boolean {
  return snapshot.isUnderWay === true && dates[promise.day] === snapshot.asOf;
}

function inTurn(a: InstancePromise, b: InstancePromise): number {
  return a.slot.open - b.slot.open || a.index - b.index;
}
