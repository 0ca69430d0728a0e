import type { CostParts, PlannedVisit, WeekPlan } from './week-plan.js';

export interface VisitDifference {
  siteId: string;
  what: 'same' | 'retimed' | 'moved-day' | 'moved-technician' | 'added' | 'dropped';
  /** Visit ids within the two plans. */
  before: string | null;
  after: string | null;
  minutesLater: number | null;
  itemsAdded: string[];
  itemsDropped: string[];
}

export interface PlanDifference {
  /** After minus before, cents. */
  cents: CostParts;
  visits: VisitDifference[];
  nowPlanned: string[];
  nowLeftOut: string[];
}

/**
 * How one plan of a week differs from another. Visits of a site are paired by the items they share, then by nearness in
 * time.
 */
export function planDifference(before: WeekPlan, after: WeekPlan): PlanDifference {
  const cents = { ...after.cost };
  for (const part of Object.keys(cents) as (keyof CostParts)[]) cents[part] -= before.cost[part];
  const planned = (plan: WeekPlan) => new Set(plan.visits.flatMap((visit) => visit.items.map((item) => item.itemId)));
  const was = planned(before);
  const is = planned(after);
  return {
    cents,
    visits: pairs(before.visits, after.visits).map(([a, b]) => difference(a, b)),
    nowPlanned: [...is].filter((id) => !was.has(id)).sort(),
    nowLeftOut: [...was].filter((id) => !is.has(id)).sort(),
  };
}

type Pair = [PlannedVisit | null, PlannedVisit | null];

function pairs(before: readonly PlannedVisit[], after: readonly PlannedVisit[]): Pair[] {
  const candidates = before.flatMap((a) =>
    after
      .filter((b) => b.siteId === a.siteId)
      .map((b) => ({ a, b, shared: shared(a, b), apart: Math.abs(Date.parse(a.startAt) - Date.parse(b.startAt)) })),
  );
  candidates.sort((x, y) => y.shared - x.shared || x.apart - y.apart);
  const partner = new Map<PlannedVisit, PlannedVisit>();
  const taken = new Set<PlannedVisit>();
  for (const { a, b } of candidates) {
    if (partner.has(a) || taken.has(b)) continue;
    partner.set(a, b);
    taken.add(b);
  }
  return [
    ...before.map((a): Pair => [a, partner.get(a) ?? null]),
    ...after.filter((b) => !taken.has(b)).map((b): Pair => [null, b]),
  ];
}

function shared(a: PlannedVisit, b: PlannedVisit): number {
  const ids = new Set(a.items.map((item) => item.itemId));
  return b.items.filter((item) => ids.has(item.itemId)).length;
}

function difference(a: PlannedVisit | null, b: PlannedVisit | null): VisitDifference {
  const was = a?.items.map((item) => item.itemId) ?? [];
  const is = b?.items.map((item) => item.itemId) ?? [];
  const isSameDay = a !== null && b !== null && a.date === b.date && a.technicianId === b.technicianId;
  const minutesLater = isSameDay ? Math.round((Date.parse(b.startAt) - Date.parse(a.startAt)) / 60_000) : null;
  return {
    siteId: (a ?? b)!.siteId,
    what:
      a === null
        ? 'added'
        : b === null
          ? 'dropped'
          : a.date !== b.date
            ? 'moved-day'
            : a.technicianId !== b.technicianId
              ? 'moved-technician'
              : minutesLater === 0
                ? 'same'
                : 'retimed',
    before: a?.id ?? null,
    after: b?.id ?? null,
    minutesLater,
    itemsAdded: is.filter((id) => !was.includes(id)),
    itemsDropped: was.filter((id) => !is.includes(id)),
  };
}
