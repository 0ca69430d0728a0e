import { evaluateDraft, evaluateRoute } from '../draft.js';
import type { PlanningInstance } from '../instance.js';
import type { CostParts } from '../week-plan.js';
import { findVisit, isBroken, type NamedDraft, type StandingWeek } from './standing-week.js';

export interface VisitPlace {
  technicianId: string;
  date: string;
  startAt: string;
}

/** One visit that a change moves, adds or drops. */
export interface VisitChange {
  /** null = a new visit. */
  visitId: string | null;
  siteId: string;
  what: 'added' | 'moved' | 'retimed' | 'dropped';
  /** null = a new visit, or one that could not stand where it did. */
  from: VisitPlace | null;
  to: VisitPlace | null;
  /** Of one that is dropped: the visits that do its work instead, by time; none = its work waits. */
  workTo: VisitPlace[];
  /** Minutes later (+) or earlier (−) on the same day with the same technician; null otherwise. */
  minutesLater: number | null;
  /** What the customer was told does not hold any more. */
  breaksPromise: boolean;
}

export interface PlanChange {
  /** Difference of every part of the cost, cents; `total` is what the change costs. */
  cents: CostParts;
  visits: VisitChange[];
  /** Items that were planned and are not any more. */
  leftOut: string[];
}

/**
 * The difference of two drafts of one instance: what it costs, and whom it concerns.
 *
 * @throws Error when one of the drafts cannot be driven
 */
export function describeChange(week: StandingWeek, after: NamedDraft): PlanChange {
  const { instance, draft } = week;
  const before = evaluateDraft(instance, draft);
  const then = evaluateDraft(instance, after);
  if (before === null || then === null) throw new Error('a route of the draft cannot be driven');
  const cents = { ...then.cost };
  for (const part of Object.keys(cents) as (keyof CostParts)[]) cents[part] -= before.cost[part];
  const missed = new Set(before.leftOut);
  return {
    cents,
    visits: visitChanges(week, after),
    leftOut: then.leftOut.flatMap((index) => (missed.has(index) ? [] : [instance.snapshot.items[index]!.id])),
  };
}

function visitChanges(week: StandingWeek, after: NamedDraft): VisitChange[] {
  const { instance, draft: before, homeless } = week;
  const changes: VisitChange[] = [];
  const standing = startsOf(instance, before);
  const planned = startsOf(instance, after);
  const placesOf = (work: readonly number[]) =>
    after
      .flatMap((visits, v) => visits.map(({ site, items }, k) => ({ v, site, items, start: planned[v]![k]! })))
      .filter(({ items }) => items.some((item) => work.includes(item)))
      .sort((a, b) => a.start - b.start)
      .map(({ v, site, start }) => place(instance, v, site, start));
  for (const [v, visits] of before.entries()) {
    for (const [k, visit] of visits.entries()) {
      const from = standing[v]![k]!;
      const there = findVisit(after, visit.visitId!);
      const siteId = instance.snapshot.sites[visit.site]!.id;
      const base = { visitId: visit.visitId, siteId, from: place(instance, v, visit.site, from) };
      if (there === null) {
        const breaksPromise = isBroken(week, visit.visitId, null);
        const workTo = placesOf(visit.items);
        changes.push({ ...base, what: 'dropped', to: null, workTo, minutesLater: null, breaksPromise });
        continue;
      }
      const to = planned[there.v]![there.k]!;
      if (there.v === v && to === from) continue;
      changes.push({
        ...base,
        what: there.v === v ? 'retimed' : 'moved',
        to: place(instance, there.v, visit.site, to),
        workTo: [],
        minutesLater: there.v === v ? to - from : null,
        breaksPromise: isBroken(week, visit.visitId, { v: there.v, start: to }),
      });
    }
  }
  for (const [v, visits] of after.entries()) {
    for (const [k, visit] of visits.entries()) {
      const { visitId, site } = visit;
      const isLost = homeless.some((each) => each.visitId === visitId);
      if (visitId !== null && !isLost) continue;
      changes.push({
        visitId,
        siteId: instance.snapshot.sites[site]!.id,
        what: isLost ? 'moved' : 'added',
        from: null,
        to: place(instance, v, site, planned[v]![k]!),
        workTo: [],
        minutesLater: null,
        breaksPromise: isBroken(week, visitId, { v, start: planned[v]![k]! }),
      });
    }
  }
  return changes;
}

function place(instance: PlanningInstance, v: number, site: number, start: number): VisitPlace {
  const { technicians, sites } = instance.snapshot;
  const day = instance.technicianDays[v]!;
  return {
    technicianId: technicians[day.technician]!.id,
    date: day.date,
    startAt: instance.clock.instant(start, sites[site]!.zone),
  };
}

function startsOf(instance: PlanningInstance, draft: NamedDraft): number[][] {
  return draft.map((visits, v) => (visits.length === 0 ? [] : evaluateRoute(instance, v, visits)!.times.start));
}
