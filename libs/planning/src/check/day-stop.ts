import type { PlanningPromise } from '../snapshot.js';
import type { DayRoute, PlannedVisit } from '../week-plan.js';
import type { SnapshotLookup } from './snapshot-lookup.js';

/** A visit as a technician's day sees it. */
export interface DayStop {
  siteId: string;
  itemIds: readonly string[];
  minutes: number;
  promisedVisitId: string | null;
}

/** Whose day it is. */
export type RouteDay = Pick<DayRoute, 'technicianId' | 'date'>;

/** The promise that a stop keeps, if any. */
export function promiseOf(lookup: SnapshotLookup, { promisedVisitId }: DayStop): PlanningPromise | undefined {
  return promisedVisitId === null ? undefined : lookup.promises.get(promisedVisitId);
}

/** Visits of a route in order of driving, with the minutes that the plan gives them. */
export function stopsOf(lookup: SnapshotLookup, visits: ReadonlyMap<string, PlannedVisit>, route: DayRoute): DayStop[] {
  return route.visitIds.map((id) => {
    const visit = visits.get(id)!;
    const { start, end } = lookup.span(visit);
    const { siteId, promisedVisitId } = visit;
    return { siteId, promisedVisitId, itemIds: visit.items.map(({ itemId }) => itemId), minutes: end - start };
  });
}

/** Places of a technician's day: where it begins, each stop, the base; named as `SnapshotLookup.drive` wants them. */
export function placesOf(lookup: SnapshotLookup, route: RouteDay, stops: readonly DayStop[]): string[] {
  const { id, shifts } = lookup.technicians.get(route.technicianId)!;
  const begins = shifts.find(({ date }) => date === route.date)?.underWay?.siteId ?? null;
  const base = `base ${id}`;
  return [begins === null ? base : `site ${begins}`, ...stops.map(({ siteId }) => `site ${siteId}`), base];
}

/** The stop with other items done in it. */
export function withItems(lookup: SnapshotLookup, stop: DayStop, itemIds: readonly string[]): DayStop {
  const items = itemIds.map((id) => lookup.items.get(id)!);
  return { ...stop, itemIds, minutes: lookup.visitMinutes(stop.siteId, items) };
}
