import { type Timetable, timetable } from '@deckround/routing';
import {
  basePlace,
  type InstancePromise,
  type PlanningInstance,
  type TechnicianDay,
  type TimeSpan,
} from './instance.js';
import { overtimePremium } from './to-routing.js';
import { visitMinutes } from './visit-minutes.js';
import type { CostParts } from './week-plan.js';

/** A visit before it has times: what is done where, and which promise it keeps. */
export interface DraftVisit {
  site: number;
  /** By rising index. */
  items: readonly number[];
  promise: InstancePromise | null;
}

/** One entry per technician-day, visits in driving order. Items that occur nowhere are left out. */
export type Draft = readonly (readonly DraftVisit[])[];

export type RouteCost = Omit<CostParts, 'total' | 'deferral' | 'laterLabour' | 'disruption'>;

export interface EvaluatedRoute {
  times: Timetable;
  /** Minutes and metres of every drive, the last one home. */
  drives: { minutes: number; metres: number }[];
  driveMinutes: number;
  workMinutes: number;
  overtimeMinutes: number;
  cost: RouteCost;
}

/**
 * Times and cost of one technician-day.
 * travel = Σ cents; labour = round(wage × (driving + working minutes)/60); overtime = round((overtime rate − wage)⁺ ×
 * minutes past the shift/60); fees, preference and timing summed over visits. Waiting costs nothing by itself.
 *
 * @returns null when the route cannot be driven within shift, overtime, lunch, access and slots
 */
export function evaluateRoute(
  instance: PlanningInstance,
  v: number,
  visits: readonly DraftVisit[],
): EvaluatedRoute | null {
  const { travel, snapshot } = instance;
  const day = instance.technicianDays[v]!;
  const technician = snapshot.technicians[day.technician]!;
  const base = basePlace(instance, day.technician);
  const places = [day.startPlace, ...visits.map((visit) => visit.site), base];
  const drives = places.slice(1).map((to, leg) => {
    const arc = places[leg]! * travel.size + to;
    return { minutes: travel.minutes[arc]!, metres: travel.metres[arc]!, cents: travel.cents[arc]! };
  });
  const services = visits.map((visit) => visitMinutes(instance, visit.site, visit.items).total);
  const times = timetable(
    day,
    visits.map((visit, k) => ({
      drive: drives[k]!.minutes,
      service: services[k]!,
      windows: draftWindows(instance, visit, day, services[k]!),
    })),
    drives.at(-1)!.minutes,
  );
  if (times === null) return null;
  const driveMinutes = sum(drives.map((drive) => drive.minutes));
  const workMinutes = sum(services);
  const overtimeMinutes = Math.max(0, times.return - day.shiftEnd);
  const isStranger = ({ site }: DraftVisit) => {
    const preferred = snapshot.sites[site]!.preferredTechnicianId;
    return preferred !== null && preferred !== technician.id;
  };
  return {
    times,
    drives,
    driveMinutes,
    workMinutes,
    overtimeMinutes,
    cost: {
      travel: sum(drives.map((drive) => drive.cents)),
      labour: Math.round((technician.wageCentsPerHour * (driveMinutes + workMinutes)) / 60),
      overtime: Math.round((overtimePremium(instance, day.technician) * overtimeMinutes) / 60),
      visitFees: sum(visits.map((visit) => snapshot.sites[visit.site]!.visitFeeCents)),
      preference: sum(visits.map((visit) => (isStranger(visit) ? snapshot.sites[visit.site]!.preferenceCents : 0))),
      timing: sum(visits.flatMap((visit) => visit.items.map((item) => instance.items[item]!.timingCents[day.day]!))),
    },
  };
}

/** Sum of a route's cost parts; an empty route costs nothing. */
export function routeCents(instance: PlanningInstance, v: number, visits: readonly DraftVisit[]): number {
  if (visits.length === 0) return 0;
  const route = evaluateRoute(instance, v, visits);
  return route === null ? Infinity : sum(Object.values(route.cost));
}

/**
 * Cost of a whole draft: all routes, deferral price of every item left out, move price of every promise not kept.
 *
 * @returns null when a route cannot be driven
 */
export function evaluateDraft(
  instance: PlanningInstance,
  draft: Draft,
): { cost: CostParts; leftOut: number[]; mustDoMissing: number } | null {
  const cost: CostParts = {
    total: 0,
    travel: 0,
    labour: 0,
    overtime: 0,
    visitFees: 0,
    preference: 0,
    timing: 0,
    deferral: 0,
    laterLabour: 0,
    disruption: 0,
  };
  const done = new Set<number>();
  const kept = new Set<number>();
  for (const [v, visits] of draft.entries()) {
    if (visits.length === 0) continue;
    const route = evaluateRoute(instance, v, visits);
    if (route === null) return null;
    for (const part of Object.keys(route.cost) as (keyof RouteCost)[]) cost[part] += route.cost[part];
    for (const visit of visits) {
      for (const item of visit.items) done.add(item);
      if (visit.promise) kept.add(visit.promise.index);
    }
  }
  const leftOut = instance.items.filter((item) => !done.has(item.index));
  cost.laterLabour = sum(leftOut.map((item) => item.laterLabourCents));
  cost.deferral = sum(leftOut.map((item) => item.deferralCents)) - cost.laterLabour;
  cost.disruption = sum(instance.promises.filter((p) => !kept.has(p.index)).map((p) => p.moveCents));
  cost.total = sum(Object.values(cost));
  return {
    cost,
    leftOut: leftOut.map((item) => item.index),
    mustDoMissing: leftOut.filter((item) => item.mustDo).length,
  };
}

function draftWindows(instance: PlanningInstance, visit: DraftVisit, day: TechnicianDay, service: number) {
  const { promise } = visit;
  if (promise?.kind === 'frozen') {
    return [{ open: promise.slot.open, last: promise.slot.close, close: promise.slot.close + service }];
  }
  if (instance.isBarred(visit.site, day.technician, day.day)) return [];
  const slot: TimeSpan = promise?.slot ?? { open: -Infinity, close: Infinity };
  return instance.windows[visit.site]![day.day]!.map(({ open, close }) => ({
    open: Math.max(open, slot.open),
    last: Math.min(close, slot.close),
    close,
  })).filter((window) => window.open <= window.last);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
