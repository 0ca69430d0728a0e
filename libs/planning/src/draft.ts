import { earliestReturn, type Timetable, type TimetableVisit, timetable } from '@deckround/routing';
import {
  basePlace,
  type InstancePromise,
  overtimePremium,
  type PlanningInstance,
  type TechnicianDay,
  type TimeSpan,
} from './instance.js';
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
  const round = sumUp(instance, v, visits);
  const day = instance.technicianDays[v]!;
  const times = timetable(day, round.visits, round.home);
  if (times === null) return null;
  const { travel } = instance;
  const places = [day.startPlace, ...visits.map((visit) => visit.site), basePlace(instance, day.technician)];
  const drives = places.slice(1).map((to, leg) => {
    const arc = places[leg]! * travel.size + to;
    return { minutes: travel.minutes[arc]!, metres: travel.metres[arc]! };
  });
  const { driveMinutes, workMinutes } = round;
  const overtimeMinutes = Math.max(0, times.return - day.shiftEnd);
  return {
    times,
    drives,
    driveMinutes,
    workMinutes,
    overtimeMinutes,
    cost: costOf(instance, v, round, overtimeMinutes),
  };
}

/**
 * Sum of a route's cost parts; an empty route costs nothing but the way home of a day under way, one that cannot be
 * driven infinitely much.
 */
export function routeCents(instance: PlanningInstance, v: number, visits: readonly DraftVisit[]): number {
  if (visits.length === 0) return sum(Object.values(emptyRouteCost(instance, v) ?? {}));
  const round = sumUp(instance, v, visits);
  const day = instance.technicianDays[v]!;
  const back = earliestReturn(day, round.visits, round.home);
  return back === null ? Infinity : sum(Object.values(costOf(instance, v, round, Math.max(0, back - day.shiftEnd))));
}

/** A day under way has to end at home all the same, however late; null on any other day. */
function emptyRouteCost(instance: PlanningInstance, v: number): RouteCost | null {
  const day = instance.technicianDays[v]!;
  if (day.startPlace >= instance.snapshot.sites.length) return null;
  const round = sumUp(instance, v, []);
  const back = earliestReturn(day, [], round.home) ?? day.shiftStart + round.home;
  return costOf(instance, v, round, Math.max(0, back - day.shiftEnd));
}

/** What a route adds up to before its times are known. */
interface Round {
  visits: TimetableVisit[];
  /** Minutes of the drive home. */
  home: number;
  driveMinutes: number;
  workMinutes: number;
  travel: number;
  visitFees: number;
  preference: number;
  timing: number;
}

function sumUp(instance: PlanningInstance, v: number, visits: readonly DraftVisit[]): Round {
  const { travel, snapshot } = instance;
  const day = instance.technicianDays[v]!;
  const { id } = snapshot.technicians[day.technician]!;
  const round: Round = {
    visits: [],
    home: 0,
    driveMinutes: 0,
    workMinutes: 0,
    travel: 0,
    visitFees: 0,
    preference: 0,
    timing: 0,
  };
  let place = day.startPlace;
  for (const visit of visits) {
    const site = snapshot.sites[visit.site]!;
    const service = visitMinutes(instance, visit.site, visit.items).total;
    const arc = place * travel.size + visit.site;
    const drive = travel.minutes[arc]!;
    round.visits.push({ drive, service, windows: draftWindows(instance, visit, day, service) });
    round.driveMinutes += drive;
    round.workMinutes += service;
    round.travel += travel.cents[arc]!;
    round.visitFees += site.visitFeeCents;
    if (site.preferredTechnicianId !== null && site.preferredTechnicianId !== id)
      round.preference += site.preferenceCents;
    for (const item of visit.items) round.timing += instance.items[item]!.timingCents[day.day]!;
    place = visit.site;
  }
  const arc = place * travel.size + basePlace(instance, day.technician);
  round.home = travel.minutes[arc]!;
  round.driveMinutes += round.home;
  round.travel += travel.cents[arc]!;
  return round;
}

function costOf(instance: PlanningInstance, v: number, round: Round, overtimeMinutes: number): RouteCost {
  const { technician } = instance.technicianDays[v]!;
  const { wageCentsPerHour } = instance.snapshot.technicians[technician]!;
  const { travel, visitFees, preference, timing } = round;
  return {
    travel,
    labour: Math.round((wageCentsPerHour * (round.driveMinutes + round.workMinutes)) / 60),
    overtime: Math.round((overtimePremium(instance, technician) * overtimeMinutes) / 60),
    visitFees,
    preference,
    timing,
  };
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
    const route = visits.length === 0 ? null : evaluateRoute(instance, v, visits);
    if (visits.length > 0 && route === null) return null;
    const parts = route?.cost ?? emptyRouteCost(instance, v);
    if (parts === null) continue;
    for (const part of Object.keys(parts) as (keyof RouteCost)[]) cost[part] += parts[part];
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

function draftWindows(
  instance: PlanningInstance,
  visit: DraftVisit,
  day: TechnicianDay,
  service: number,
): TimetableVisit['windows'] {
  const { promise } = visit;
  if (promise?.kind === 'frozen') {
    return [{ open: promise.slot.open, last: promise.slot.close, close: promise.slot.close + service }];
  }
  if (instance.isBarred(visit.site, day.technician, day.day)) return [];
  const access = instance.windows[visit.site]![day.day]!;
  if (promise === null) return access;
  const windows: (TimeSpan & { last: number })[] = [];
  for (const span of access) {
    const open = Math.max(span.open, promise.slot.open);
    const last = Math.min(span.close, promise.slot.close);
    if (open <= last) windows.push({ open, last, close: span.close });
  }
  return windows;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
