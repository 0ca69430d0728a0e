import { compact } from './compact.js';
import { EndSwap } from './end-swap.js';
import { type Exchange, fromNumbers, inNumbers, WHOLE } from './exchange.js';
import { Halves } from './halves.js';
import { nearestStops } from './neighbours.js';
import { Offers } from './offers.js';
import type { ChoiceSolver } from './polish/choice.js';
import { chooseRoutes } from './polish/choose-routes.js';
import { CyclicTransfers } from './polish/cyclic-transfers.js';
import { RoutePool } from './polish/route-pool.js';
import type { RoutingProblem } from './problem.js';
import { triangleGap } from './problem.js';
import { Random } from './random.js';
import { GreedyRecreate } from './recreate.js';
import { StringRuin } from './ruin.js';
import { RunLength } from './run-length.js';
import { DEFAULT_PARAMETERS, type SearchParameters } from './search-parameters.js';
import type { StopRule } from './stop/stop-rule.js';
import { Survey } from './survey.js';
import { usedPlaces } from './used-places.js';
import { type RoutedVisit, WorkingPlan } from './working-plan.js';

export interface StartVisit {
  stop: number;
  vehicle: number;
  /** Service minutes at most; left out = the best option that fits. */
  minutes?: number;
  /** Never taken out again. */
  pinned?: boolean;
}

export interface SolveOptions {
  seed: number;
  stop: StopRule;
  parameters?: Partial<SearchParameters>;
  /** Visits to begin with, in driving order per vehicle; those that do not fit are skipped. */
  start?: readonly StartVisit[];
  /** Combines routes met on the way into a better plan, now and then; left out = that is not done. */
  choice?: ChoiceSolver;
  /** Other searches of the same problem, to learn from. */
  exchange?: Exchange;
  /** Called at every improvement. */
  onBest?: (best: { iterations: number; cost: number; routes: () => RoutedVisit[][] }) => void;
}

export interface RoutingResult {
  /** Cost units; worth of what is done counted negative. */
  cost: number;
  /** One entry per vehicle, in driving order. */
  routes: RoutedVisit[][];
  /** Stops without any visit. */
  unassigned: number[];
  iterations: number;
  /** Improvements of the best plan found. */
  improvements: number;
  /** Meetings after which two searches had each their half of the plan. */
  divided: number;
}

const CHECK_EVERY = 256;
/** Share of the run after which routes met so far are combined. */
const COMBINE_AT = 0.9;
/** A plan of another search is taken over when it is better by so many mean arc costs; at the end, when better at all. */
const ADOPT_FROM = 2;
/** Share of a run after which its whole length in iterations is known well enough. */
const LENGTH_KNOWN_AT = 0.05;
/** Accepted changes between two notes of the plan's routes. */
const NOTED_EVERY = 20;
/** Looks for cyclic transfers take place so many times in a run at most, and every so many tried insertions an iteration. Measured. */
const LOOKS_PER_RUN = 400;
const TRIALS_PER_ITERATION = 20;

/**
 * Ruin and recreate under simulated annealing: minimise arcs + fixed costs + overtime − worth.
 * Accept when cost < cost(current) − T·ln u; T falls from first to last temperature, geometric in the share of the
 * budget. Temperatures are multiples of the mean arc cost per visit of the first plan.
 *
 * The same problem, seed and iteration budget give the same result. Hard constraints hold throughout.
 */
export function solve(told: RoutingProblem, options: SolveOptions): RoutingResult {
  const problem = compact(usedPlaces(told));
  const parameters = { ...DEFAULT_PARAMETERS, ...options.parameters };
  const random = new Random(options.seed);
  const plan = new WorkingPlan(problem);
  const pinned = new Uint8Array(plan.slotCount);
  const dip = problem.arcCost.reduce((worst, arcs) => Math.max(worst, triangleGap(arcs, problem.places)), 0);
  const reach = Math.min(problem.stops.count, 400);
  const neighbours = nearestStops(problem, reach);
  const recreate = new GreedyRecreate(plan, random, parameters, dip, neighbours, reach);
  const survey = new Survey(plan, pinned);
  const offers = new Offers(problem.stops.count);
  const ruin = new StringRuin(plan, random, parameters, survey, offers, neighbours, reach);
  const endSwap = new EndSwap(plan, random, recreate.cache.scan, survey, offers, neighbours, reach);

  for (const visit of options.start ?? []) placeStart(plan, recreate, pinned, visit);
  const everyStop = Int32Array.from({ length: problem.stops.count }, (_, s) => s);
  recreate.apply(everyStop, everyStop.length, Infinity, 0);
  plan.commit();
  survey.renew();
  recreate.heedMinutes(survey.unserved.count / Math.max(1, problem.stops.count), survey.fullness());

  let current = plan.cost;
  /** Since the plan was last divided, if it is. */
  let best = plan.cost;
  let bestRoutes = plan.routes();
  let improvements = 0;
  options.onBest?.({ iterations: 0, cost: best, routes: () => bestRoutes });
  const pool = options.choice ? new RoutePool(plan, parameters.mostPooled) : null;
  const { exchange } = options;
  let halves = exchange ? new Halves(plan, survey, exchange) : null;
  let isCombined = false;
  // Where stops want several visits, plans came out no better at equal time. Measured.
  const isSimple = problem.stops.visits.every((visits) => visits === 1);
  const transfers = isSimple ? new CyclicTransfers(plan, survey, neighbours, reach) : null;
  let nextLook = 0;
  let accepted = 0;
  const keepBest = (at: number) => {
    best = current;
    bestRoutes = plan.routes();
    pool?.note();
    if (halves && halves.settled.cost <= best) return;
    improvements++;
    options.onBest?.({ iterations: at, cost: best, routes: () => bestRoutes });
  };

  const restart = (routes: readonly (readonly RoutedVisit[])[], at: number) => {
    plan.replaceRoutes(routes);
    survey.take();
    current = plan.cost;
    if (current < best) keepBest(at);
  };
  const overall = () => (halves && halves.settled.cost <= best ? halves.settled : { cost: best, routes: bestRoutes });

  let scale = 0;
  let temperature = 0;
  const length = new RunLength();
  let rounds = 1;
  let round = 0;
  let iterations = 0;
  for (; ; iterations++) {
    const isCheck = iterations % CHECK_EVERY === 0 || iterations === options.stop.limit;
    if (isCheck || (exchange && iterations % exchange.every === 0)) {
      const share = options.stop.share(iterations);
      const isLast = share >= 1;
      const isMeeting = exchange !== undefined && (isLast || iterations % exchange.every === 0);
      // What concerns the whole plan waits until its halves are together.
      const isWhole = halves === null || isMeeting;
      if (pool !== null && !isCombined && !isLast && share >= COMBINE_AT && isWhole) {
        isCombined = true;
        halves?.undo();
        const { routes } = overall();
        plan.replaceRoutes(routes);
        restart(chooseRoutes(plan, pool.columns, options.choice!) ?? routes, iterations);
      }
      if (isMeeting && halves) {
        for (const routes of halves.meet({ cost: best, routes: bestRoutes }, isLast)) restart(routes, iterations);
      } else if (isMeeting && iterations > 0) {
        const shown = inNumbers(plan, best, bestRoutes);
        const theirs = exchange.meet({ best: shown, current: shown, division: WHOLE }, isLast);
        if (theirs !== null && best - theirs.best.cost > (isLast ? 0 : ADOPT_FROM * scale)) {
          restart(fromNumbers(plan, theirs.best), iterations);
        }
      }
      if (isLast) break;
      // Not at a meeting: there both searches stand at the same plan, which they are about to divide.
      const isDue = !isMeeting && share >= parameters.transfersFrom && iterations >= nextLook;
      if (transfers !== null && isDue && survey.unserved.count > 0) {
        if (transfers.look()) {
          current = plan.cost;
          if (current < best) keepBest(iterations);
        }
        nextLook = iterations + Math.max(iterations / share / LOOKS_PER_RUN, transfers.trials / TRIALS_PER_ITERATION);
      }
      if (iterations === 0) {
        scale = meanArcCost(plan);
        // Both stand at the same plan here, and decide alike.
        if (survey.usedRoutes <= parameters.dividedFrom) halves = null;
      }
      if (share <= LENGTH_KNOWN_AT)
        rounds = roundsFor(length.forecast(iterations, share), problem.stops.count, parameters);
      const at = Math.min(Math.floor(share * rounds), rounds - 1);
      if (at > round && isWhole) {
        round = at;
        restart(overall().routes, iterations);
      }
      if (isMeeting && halves) {
        halves.divide(overall());
        best = current;
        bestRoutes = plan.routes();
      }
      const first = parameters.firstTemperature * (round > 0 ? parameters.reheat : 1);
      const cooled = share * rounds - round;
      temperature = scale * first * roundedPower(parameters.lastTemperature / first, cooled);
    }
    const threshold = current + temperature * random.minusLog();
    const lenience = random.chance(parameters.lenientShare)
      ? (random.below(1024) / 1024) * parameters.lenience * scale
      : 0;
    const isSwapped =
      (random.chance(parameters.endSwaps) && endSwap.swapEnds()) ||
      (random.chance(parameters.routeSwaps) && endSwap.swapRoutes());
    if (!isSwapped) ruin.apply();
    const isWhole = recreate.apply(offers.stops, offers.count, threshold, lenience);
    if (isWhole && plan.cost < threshold && plan.isDrivable()) {
      survey.follow();
      if (!plan.commit()) continue;
      current = plan.cost;
      if (current < best) keepBest(iterations + 1);
      else if (pool !== null && ++accepted % NOTED_EVERY === 0) pool.note();
    } else {
      plan.rollback();
    }
  }
  const { cost, routes } = overall();
  const served = new Set(routes.flat().map((visit) => visit.stop));
  return {
    cost,
    routes,
    unassigned: Array.from(everyStop).filter((s) => !served.has(s)),
    iterations,
    improvements,
    divided: halves?.divided ?? 0,
  };
}

function placeStart(plan: WorkingPlan, recreate: GreedyRecreate, pinned: Uint8Array, visit: StartVisit): void {
  const slot = plan.freeSlot(visit.stop);
  if (slot < 0 || (!visit.pinned && !plan.admits(visit.stop, visit.vehicle))) return;
  const { scan } = recreate.cache;
  scan.scan(visit.stop, visit.vehicle);
  if (scan.position1 < 0 || scan.cost1 >= 0) return;
  const menu = plan.problem.menus.menu(visit.stop, plan.open[visit.stop]!, visit.vehicle);
  let option = scan.option1;
  while (option > 0 && menu.minutes[option]! > (visit.minutes ?? Infinity)) option--;
  plan.insert(slot, visit.vehicle, scan.position1, option);
  if (visit.pinned) pinned[slot] = 1;
}

/** Mean arc cost per placed visit; of an empty plan, mean arc cost from the first base to a stop. */
function meanArcCost(plan: WorkingPlan): number {
  const { vehicles, places } = plan.problem;
  let arcs = 0;
  let visits = 0;
  for (let v = 0; v < vehicles.count; v++) {
    const n = plan.length[v]!;
    if (n === 0) continue;
    visits += n;
    const base = v * plan.stride;
    const matrix = plan.costTo[vehicles.costClass[v]!]!;
    for (let p = base; p <= base + n; p++) arcs += matrix[plan.placeAt[p]! * places + plan.placeAt[p + 1]!]!;
  }
  if (visits > 0) return arcs / visits;
  const { stops } = plan.problem;
  const base = vehicles.startPlace[0];
  if (base === undefined || stops.count === 0) return 1;
  return Math.max(
    1,
    stops.place.reduce((sum, place) => sum + plan.costTo[0]![base * places + place]!, 0) / stops.count,
  );
}

/** Times to cool down: once, and again from the best plan while there are iterations enough for every stop. */
function roundsFor(total: number, stops: number, parameters: SearchParameters): number {
  const affordable = Math.floor(total / (Math.max(1, stops) * parameters.roundPerStop));
  return Math.max(1, Math.min(parameters.mostRounds, affordable));
}

/** base^share rounded to 2^-20: powers may differ in the last digit between engine versions. */
function roundedPower(base: number, share: number): number {
  return Math.round(base ** share * 1048576) / 1048576;
}
