import { SiteAdditions } from './cheapest-addition.js';
import { type Draft, type EvaluatedRoute, evaluateDraft, evaluateRoute, routeCents } from './draft.js';
import { explainLeftOut } from './explain-left-out.js';
import { explainVisit } from './explain-visit.js';
import type { PlanningInstance } from './instance.js';
import { loadLists } from './load-list.js';
import { withoutOptionalWork } from './probe.js';
import { visitMinutes } from './visit-minutes.js';
import type { DayRoute, LeftOut, PlannedVisit, WeekPlan } from './week-plan.js';

/**
 * Writes a draft as the plan document: times with the offset of their place, reasons, load lists, what is left out.
 *
 * @throws Error when a route of the draft cannot be driven; a draft comes from the search or the baseline, which
 *         never make one
 */
export function reportPlan(
  instance: PlanningInstance,
  draft: Draft,
  head: Pick<WeekPlan, 'snapshotHash' | 'seed' | 'iterations'> &
    Partial<Pick<WeekPlan, 'plannedIterations' | 'threads' | 'combined' | 'divided'>>,
): WeekPlan {
  const evaluated = evaluateDraft(instance, draft);
  if (evaluated === null) throw new Error('a route of the draft cannot be driven');
  const routes = draft.map((visits, v) => (visits.length === 0 ? null : evaluateRoute(instance, v, visits)));
  const ids = visitIds(draft, routes);
  const loads = loadLists(instance, draft);
  return {
    version: 1,
    ...head,
    cost: evaluated.cost,
    routes: routes.flatMap((route, v) => (route ? [dayRoute(instance, v, route, ids[v]!, loads[v]!)] : [])),
    visits: routes
      .flatMap((route, v) => (route ? draft[v]!.map((_, k) => plannedVisit(instance, draft, v, k, route, ids)) : []))
      .sort((a, b) => Number(a.id.slice(1)) - Number(b.id.slice(1))),
    leftOut: explainAll(instance, draft, evaluated.leftOut),
  };
}

/** One technician-day of a draft with its visits in driving order, or null when it is empty. */
export function reportRoute(
  instance: PlanningInstance,
  draft: Draft,
  v: number,
): { route: DayRoute; visits: PlannedVisit[] } | null {
  const visits = draft[v]!;
  const route = visits.length === 0 ? null : evaluateRoute(instance, v, visits);
  if (route === null) return null;
  const ids = draft.map((each, w) => each.map((_, k) => `${w}-${k}`));
  return {
    route: dayRoute(instance, v, route, ids[v]!, loadLists(instance, draft)[v]!),
    visits: visits.map((_, k) => plannedVisit(instance, draft, v, k, route, ids)),
  };
}

/** Site by site, since the items of a site share most of what is asked; told in the order given. */
function explainAll(instance: PlanningInstance, draft: Draft, leftOut: readonly number[]): LeftOut[] {
  const present = draft.map((visits, v) => routeCents(instance, v, visits));
  const bare = withoutOptionalWork(instance, draft);
  const ofSite = new Map<number, number[]>();
  for (const index of leftOut) {
    const { site } = instance.items[index]!;
    const indices = ofSite.get(site);
    if (indices) indices.push(index);
    else ofSite.set(site, [index]);
  }
  const told = new Map<number, LeftOut>();
  for (const [site, indices] of ofSite) {
    const additions = new SiteAdditions(instance, draft, present, site);
    for (const index of indices) told.set(index, explainLeftOut(additions, index, bare));
  }
  return leftOut.map((index) => told.get(index)!);
}

/** v1, v2 … by start of work; ties by technician-day. */
function visitIds(draft: Draft, routes: readonly (EvaluatedRoute | null)[]): string[][] {
  const starts = draft.flatMap((visits, v) => visits.map((_, k) => ({ v, k, start: routes[v]!.times.start[k]! })));
  starts.sort((a, b) => a.start - b.start || a.v - b.v || a.k - b.k);
  const ids: string[][] = draft.map(() => []);
  starts.forEach(({ v, k }, n) => {
    ids[v]![k] = `v${n + 1}`;
  });
  return ids;
}

function dayRoute(
  instance: PlanningInstance,
  v: number,
  route: EvaluatedRoute,
  visitIds: string[],
  load: DayRoute['load'],
): DayRoute {
  const day = instance.technicianDays[v]!;
  const technician = instance.snapshot.technicians[day.technician]!;
  const at = (minutes: number) => instance.clock.instant(minutes, technician.zone);
  const { times } = route;
  const lunchMinutes = times.lunch ? times.lunch.to - times.lunch.from : 0;
  return {
    technicianId: technician.id,
    date: day.date,
    leaveAt: at(times.leave),
    returnAt: at(times.return),
    lunch: times.lunch && { from: at(times.lunch.from), to: at(times.lunch.to) },
    driveMinutes: route.driveMinutes,
    driveMetres: route.drives.reduce((sum, drive) => sum + drive.metres, 0),
    workMinutes: route.workMinutes,
    waitMinutes: times.return - times.leave - route.driveMinutes - route.workMinutes - lunchMinutes,
    overtimeMinutes: route.overtimeMinutes,
    visitIds,
    load,
  };
}

function plannedVisit(
  instance: PlanningInstance,
  draft: Draft,
  v: number,
  k: number,
  { times, drives }: EvaluatedRoute,
  ids: readonly string[][],
): PlannedVisit {
  const { snapshot } = instance;
  const day = instance.technicianDays[v]!;
  const visit = draft[v]![k]!;
  const site = snapshot.sites[visit.site]!;
  const at = (minutes: number) => instance.clock.instant(minutes, site.zone);
  const { setup, preparation } = visitMinutes(instance, visit.site, visit.items);
  return {
    id: ids[v]![k]!,
    promisedVisitId: visit.promise ? snapshot.promises[visit.promise.index]!.visitId : null,
    siteId: site.id,
    technicianId: snapshot.technicians[day.technician]!.id,
    date: day.date,
    order: k + 1,
    driveMinutes: drives[k]!.minutes,
    arriveAt: at(times.arrive[k]!),
    startAt: at(times.start[k]!),
    endAt: at(times.end[k]!),
    setupMinutes: setup,
    preparationMinutes: preparation,
    ...explainVisit(instance, draft, v, k),
  };
}
