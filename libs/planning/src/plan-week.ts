import {
  anyOf,
  type ChoiceSolver,
  cancelled,
  type Exchange,
  maxIterations,
  type RoutedVisit,
  type SearchParameters,
  type StartVisit,
  type StopRule,
  solve,
} from '@deckround/routing';
import { baselineDrafts, standingDraft } from './baseline.js';
import { calibrate } from './calibrate.js';
import { type Draft, type DraftVisit, evaluateDraft } from './draft.js';
import { fillGaps } from './fill-gaps.js';
import { buildInstance, type PlanningInstance } from './instance.js';
import { ItemMenus } from './item-menus.js';
import { type PlanStop, planStops } from './plan-stops.js';
import { reportPlan } from './report-plan.js';
import type { PlanningSnapshot } from './snapshot.js';
import { promiseKeptBy, toRoutingProblem } from './to-routing.js';
import { visitMinutes } from './visit-minutes.js';
import type { CostParts, WeekPlan } from './week-plan.js';

export interface PlanProgress {
  iterations: number;
  cost: CostParts;
  visitsPlaced: number;
  itemsPlaced: number;
  itemsLeftOut: number;
  mustDoMissing: number;
}

export interface PlanWeekOptions {
  /** SHA-256 of the canonical snapshot; copied into the plan. */
  snapshotHash: string;
  seed: number;
  /**
   * Iterations: exact and repeatable. `cutAt` repeats a run that was cut short after so many of them.
   * Seconds: a short trial run measures the speed and fixes the iterations, which the plan then tells.
   */
  stop: { iterations: number; cutAt?: number } | { seconds: number; now: () => number };
  /** Combines routes met on the way into a better plan near the end. */
  choice?: ChoiceSolver;
  /** A second search of the same snapshot, by `searchBeside`, to learn from; told how many iterations it is to take. */
  beside?: { exchange: Exchange; onPlanned: (iterations: number) => void };
  /** Settings of the search, for experiments; the defaults are measured. */
  parameters?: Partial<SearchParameters>;
  /** Called at improvements; in a large plan working out the progress takes a while, so it is done when asked for. */
  onProgress?: (progress: () => PlanProgress) => void;
  /** Asked every 256 iterations. */
  shouldCancel?: () => boolean;
}

/** Where whole plans want other settings than plain routing: a visit's travel is much of a whole plan's stake. */
const PLANNING_PARAMETERS: Partial<SearchParameters> = { firstTemperature: 0.3, lastTemperature: 0.01 };
/** Two searches share caches and memory: what each is left of the speed that one has alone. Measured, 0.75 to 0.95. */
const SHARED_SPEED = 0.8;
/**
 * Up to so many stops the search begins hotter: iterations are plenty there, and a cool start
 * seldom exchanges the visits of two days. Of 40 tiny weeks solved exactly, two were missed on two and on five seeds
 * of ten at 0.3, and one on one seed at 1; from 12 stops on 0.3 ends cheaper.
 */
const FEW_STOPS = 8;
const HOT = 1;

function parametersFor(stops: number): Partial<SearchParameters> {
  return stops > FEW_STOPS ? PLANNING_PARAMETERS : { ...PLANNING_PARAMETERS, firstTemperature: HOT };
}

/**
 * Plans the week: which items in which visit, by whom, on which day, in which order, and which are left out.
 * The same snapshot, seed and iterations give the same plan. A cancelled run returns the best plan so far.
 * Never dearer than either two-stage baseline, nor than the standing week as `standingDraft` can lay it out again.
 *
 * @throws SnapshotInconsistent
 */
export function planWeek(snapshot: PlanningSnapshot, options: PlanWeekOptions): WeekPlan {
  const { stop } = options;
  const begin = 'seconds' in stop ? stop.now() : 0;
  const { instance, stops, menus, problem, start } = prepared(snapshot);
  const others = [...baselineDrafts(instance, stops), standingDraft(instance, stops)];
  const search = (rule: StopRule, onProgress?: PlanWeekOptions['onProgress']) =>
    solve(problem, {
      seed: options.seed,
      stop: anyOf(rule, cancelled(options.shouldCancel ?? (() => false))),
      start,
      parameters: { ...parametersFor(stops.length), ...options.parameters },
      // a trial run is neither combined nor met
      ...(rule.limit < Infinity && options.choice && { choice: options.choice }),
      ...(rule.limit < Infinity && options.beside && { exchange: options.beside.exchange }),
      ...(onProgress && {
        onBest: ({ iterations, routes }) =>
          onProgress(() => progressOf(instance, toDraft(instance, stops, menus, routes()), iterations)),
      }),
    });

  const speed = options.beside ? SHARED_SPEED : 1;
  const planned = 'iterations' in stop ? stop.iterations : calibrate(stop, begin, search, speed);
  options.beside?.onPlanned(planned);
  const cutAt = 'iterations' in stop ? (stop.cutAt ?? planned) : planned;
  const result = search(maxIterations(planned, cutAt), options.onProgress);

  let draft: Draft = toDraft(instance, stops, menus, result.routes);
  for (const other of others) if (isBetter(instance, other, draft)) draft = other;
  const bound = new Set(stops.flatMap((each) => (each.promise ? each.items : [])));
  return reportPlan(instance, fillGaps(instance, draft, bound), {
    snapshotHash: options.snapshotHash,
    seed: options.seed,
    iterations: result.iterations,
    ...(result.iterations < planned && { plannedIterations: planned }),
    ...(options.beside && { threads: 2 }),
    ...(options.choice && { combined: true }),
    ...(result.divided > 0 && { divided: result.divided }),
  });
}

/**
 * The second of two searches: another seed, shorter strings. It only gives and takes at the meetings; the first one
 * hands in the plan.
 */
export function searchBeside(
  snapshot: PlanningSnapshot,
  options: { seed: number; iterations: number; exchange: Exchange; shouldCancel: () => boolean },
): void {
  const { problem, start } = prepared(snapshot);
  solve(problem, {
    seed: options.seed + 1_000_003,
    stop: anyOf(maxIterations(options.iterations), cancelled(options.shouldCancel)),
    start,
    parameters: { ...parametersFor(problem.stops.count), longestString: 10 },
    exchange: options.exchange,
  });
}

function prepared(snapshot: PlanningSnapshot) {
  const instance = buildInstance(snapshot);
  const stops = planStops(instance);
  const menus = new ItemMenus(instance, stops);
  return {
    instance,
    stops,
    menus,
    problem: toRoutingProblem(instance, stops, menus),
    start: startVisits(instance, stops),
  };
}

/**
 * Frozen visits pinned; then visits that keep a promise, in the order of their slots; then those of the former plan, where
 * still possible. Each begins no longer than it was, so that it takes no other's time.
 */
function startVisits(instance: PlanningInstance, stops: readonly PlanStop[]): StartVisit[] {
  const { technicianDays } = instance;
  const start: StartVisit[] = [];
  const minutesOf = (site: number, items: readonly number[]) => visitMinutes(instance, site, items).total;
  const begin = (technician: number, day: number, visit: Omit<StartVisit, 'vehicle'>) => {
    const vehicle = technicianDays.findIndex((each) => each.technician === technician && each.day === day);
    if (vehicle >= 0) start.push({ vehicle, ...visit });
  };
  stops.forEach((stop, s) => {
    if (stop.promise) begin(stop.promise.technician, stop.promise.day, { stop: s, pinned: true });
  });
  const confirmed = stops.flatMap((stop, s) => stop.confirmed.map((promise) => ({ s, promise })));
  for (const { s, promise } of confirmed.sort((a, b) => a.promise.slot.open - b.promise.slot.open)) {
    const minutes = minutesOf(promise.site, promise.items);
    begin(promise.technician, promise.day, { stop: s, minutes });
  }
  for (const { site, technician, day, items } of instance.previous) {
    const stop = stops.findIndex((candidate) => candidate.kind === 'site' && candidate.site === site);
    if (stop < 0) continue;
    const minutes = minutesOf(site, items);
    begin(technician, day, { stop, minutes });
  }
  return start;
}

function toDraft(
  instance: PlanningInstance,
  stops: readonly PlanStop[],
  menus: ItemMenus,
  routes: readonly RoutedVisit[][],
): DraftVisit[][] {
  return routes.map((route, v) =>
    route.map((visit) => {
      const stop = stops[visit.stop]!;
      return {
        site: stop.site,
        items: menus.itemsOf(visit.stop, visit.token),
        promise: stop.promise ?? promiseKeptBy(stop, instance.technicianDays[v]!) ?? null,
      };
    }),
  );
}

/** Fewer must-dos missing, then cheaper. */
function isBetter(instance: PlanningInstance, a: Draft, b: Draft): boolean {
  const first = evaluateDraft(instance, a);
  const second = evaluateDraft(instance, b);
  if (!first || !second) return second === null && first !== null;
  if (first.mustDoMissing !== second.mustDoMissing) return first.mustDoMissing < second.mustDoMissing;
  return first.cost.total < second.cost.total;
}

function progressOf(instance: PlanningInstance, draft: Draft, iterations: number): PlanProgress {
  const evaluated = evaluateDraft(instance, draft)!;
  const visits = draft.flat();
  return {
    iterations,
    cost: evaluated.cost,
    visitsPlaced: visits.length,
    itemsPlaced: visits.reduce((sum, visit) => sum + visit.items.length, 0),
    itemsLeftOut: evaluated.leftOut.length,
    mustDoMissing: evaluated.mustDoMissing,
  };
}
