import { AskedRoutes } from './asked-routes.js';
import { InsertionCache } from './insertion-cache.js';
import { costPerMinute } from './problem.js';
import type { Random } from './random.js';
import type { SearchParameters } from './search-parameters.js';
import type { WorkingPlan } from './working-plan.js';

/**
 * Greedy insertion with blinks: offers stops in a drawn order, each at its cheapest place over all routes.
 * A visit is placed when that lowers the cost, with minutes at their price where they have one. What remains open at a
 * stop is offered again at the end of the queue.
 *
 * @source orders and blinks: Christiaens, Vanden Berghe 2020, see `ruin.ts`
 */
export class GreedyRecreate {
  readonly cache: InsertionCache;
  private readonly queue: Int32Array;
  private readonly rank: Float64Array;
  private readonly kindSeen: Int32Array;
  private round = 0;
  private readonly asked: AskedRoutes;
  private readonly fewLooks: number;
  /** One row per order: smaller goes first. */
  private readonly keys: Float64Array[];
  private readonly weights: number[];
  private weightSum: number;

  constructor(
    private readonly plan: WorkingPlan,
    private readonly random: Random,
    private readonly parameters: SearchParameters,
    private readonly dip: number,
    /** Nearest stops of each, `reach` a row. */
    neighbours: Uint16Array,
    reach: number,
  ) {
    const { stops, vehicles, windowList } = plan.problem;
    this.cache = new InsertionCache(plan, parameters.insertionCache);
    this.fewLooks = Math.min(FEW_LOOKS, Math.floor(vehicles.count / ROUTES_PER_LOOK));
    this.queue = new Int32Array(stops.count + plan.slotCount);
    this.rank = new Float64Array(stops.count);
    this.kindSeen = new Int32Array(Math.max(0, ...vehicles.kind) + 1);
    const servers = Array.from({ length: stops.count }, (_, s) =>
      Int32Array.from(
        Array.from({ length: vehicles.count }, (_, v) => v).filter((v) => windowList[s * vehicles.count + v]! >= 0),
      ),
    );
    this.asked = new AskedRoutes(plan, random, parameters, servers, neighbours, reach);
    const orders = recreateOrders(plan, servers);
    this.keys = orders.map((order) => order.key);
    this.weights = orders.map((order) => order.weight);
    this.weightSum = this.weights.reduce((a, b) => a + b, 0);
  }

  /**
   * Puts the stops worth most per minute first the more often, the more stops find no room; where days are full as well,
   * minutes get a price, unless there is lunch or overtime: weeks with them came out no better. Measured.
   *
   * @param leftOut  share of stops without a visit in the first plan, 0 … 1
   * @param fullness share of all shifts that its routes take, 0 … 1
   */
  heedMinutes(leftOut: number, fullness: number): void {
    this.weights[this.weights.length - 1] = Math.round(Math.max(0, leftOut - ROOMY) * PER_MINUTE_WEIGHT);
    this.weightSum = this.weights.reduce((a, b) => a + b, 0);
    const { problem } = this.plan;
    const { lunchMinutes, latestReturn, shiftEnd } = problem.vehicles;
    const isPlain = lunchMinutes.every((minutes, v) => minutes === 0 && latestReturn[v] === shiftEnd[v]);
    if (leftOut <= ROOMY || fullness < FULL || !isPlain) return;
    this.cache.scan.minutePrice = this.parameters.minutePrice * costPerMinute(problem);
    this.cache.forget();
  }

  /**
   * @param threshold stop early once the cost cannot get below this any more
   * @param lenience  a visit may cost this much by itself: others may follow that make it worth while
   * @returns false when it stopped early
   */
  apply(stops: Int32Array, count: number, threshold: number, lenience: number): boolean {
    const { plan, parameters, queue } = this;
    const { menus } = plan.problem;
    for (let k = 0; k < count; k++) queue[k] = stops[k]!;
    this.sort(count);
    let hope = 0;
    for (let k = 0; k < count; k++) hope += menus.ceiling(queue[k]!, plan.open[queue[k]!]!) + this.dip;
    let total = count;
    for (let k = 0; k < total; k++) {
      const stop = queue[k]!;
      hope -= menus.ceiling(stop, plan.open[stop]!) + this.dip;
      const slot = plan.freeSlot(stop);
      if (slot < 0) continue;
      if (this.place(stop, slot, lenience)) {
        const left = menus.ceiling(stop, plan.open[stop]!);
        if (left > 0 && plan.freeSlot(stop) >= 0) {
          queue[total++] = stop;
          hope += left + this.dip;
        }
      }
      if (parameters.earlyAbort && plan.cost - hope >= threshold) return false;
    }
    return true;
  }

  /** @returns whether a visit was placed */
  private place(stop: number, slot: number, limit: number): boolean {
    const { plan, random, cache, asked } = this;
    const { scan } = cache;
    const { vehicles, menus } = plan.problem;
    const { blink, shorterOption } = this.parameters;
    const round = ++this.round;
    asked.ask(stop);
    const { routes, count, rebuilt } = asked;
    let best = limit;
    let bestVehicle = -1;
    let bestPosition = 0;
    let bestOption = 0;
    const { cost } = cache;
    const isKept = cache.enabled && count - rebuilt > this.fewLooks;
    if (isKept) cache.bring(stop, limit);
    const row = stop * vehicles.count;
    for (let k = 0; k < count; k++) {
      const v = routes[k]!;
      const isFresh = !isKept || k < rebuilt;
      if (!isFresh) {
        let known = cost[row + v]!;
        if (Number.isNaN(known)) known = cache.fill(stop, v);
        if (known >= best) continue;
      }
      if (plan.length[v] === 0) {
        if (this.kindSeen[vehicles.kind[v]!] === round) continue;
        this.kindSeen[vehicles.kind[v]!] = round;
      }
      if (!plan.admits(stop, v)) continue;
      if (isFresh) scan.scan(stop, v, best);
      else cache.recall(stop, v);
      if (scan.cost1 < best) {
        if (!random.chance(blink)) {
          best = scan.cost1;
          bestVehicle = v;
          bestPosition = scan.position1;
          bestOption = scan.option1;
        } else if (scan.cost2 < best) {
          best = scan.cost2;
          bestVehicle = v;
          bestPosition = scan.position2;
          bestOption = scan.option2;
        }
      }
    }
    if (bestVehicle < 0) return false;
    if (bestOption > 0 && random.chance(shorterOption)) {
      const shorter = random.below(bestOption);
      const { worth } = menus.menu(stop, plan.open[stop]!, bestVehicle);
      if (best + worth[bestOption]! - worth[shorter]! < limit) bestOption = shorter;
    }
    plan.insert(slot, bestVehicle, bestPosition, bestOption);
    return true;
  }

  /** Sorts the queue by a drawn order; ties and the random order by a fresh shuffle. */
  private sort(count: number): void {
    const { random, queue, rank } = this;
    for (let k = count - 1; k > 0; k--) {
      const other = random.below(k + 1);
      const swap = queue[k]!;
      queue[k] = queue[other]!;
      queue[other] = swap;
    }
    let draw = random.below(this.weightSum);
    let order = 0;
    while (draw >= this.weights[order]!) draw -= this.weights[order++]!;
    const key = this.keys[order]!;
    if (key.length === 0) return;
    for (let k = 0; k < count; k++) rank[queue[k]!] = key[queue[k]!]!;
    for (let k = 1; k < count; k++) {
      const stop = queue[k]!;
      const mine = rank[stop]!;
      let p = k - 1;
      while (p >= 0 && rank[queue[p]!]! > mine) {
        queue[p + 1] = queue[p]!;
        p--;
      }
      queue[p + 1] = stop;
    }
  }
}

/** Other routes are looked at anew where they are few: the more routes, the longer a row is to bring up to date. Measured. */
const ROUTES_PER_LOOK = 16;
const FEW_LOOKS = 6;
/** From more vehicles than this on, a stop's length is judged by a few: making the menus of all of them takes long. */
const MENUS_LOOKED_AT = 60;
const FEW_MENUS = 4;
/** Minutes added to a stop's service when its worth per minute is judged. Own choice. */
const DRIVE_TO_IT = 15;
/** A first plan that leaves out no more than this share of the stops will find room for nearly all. Measured. */
const ROOMY = 0.35;
/** Routes of a first plan that take so much of all shifts leave no minutes to spare. Own choice. */
const FULL = 0.7;
/** Weight of worth per minute for each further share. Measured. */
const PER_MINUTE_WEIGHT = 80;

/**
 * Random 4, most minutes 4, far 2, near 1, narrow windows 2, early 2, late 2; dearest to leave out 3, where prices
 * differ; last, most worth per minute, as `heedMinutes` says: when days are full, minutes are what is scarce.
 */
function recreateOrders(plan: WorkingPlan, servers: Int32Array[]): { key: Float64Array; weight: number }[] {
  const { problem } = plan;
  const { stops, vehicles, windowList, windowStart, windowOpen, windowClose, menus, places } = problem;
  const n = stops.count;
  const make = () => new Float64Array(n);
  const minutes = make();
  const far = make();
  const near = make();
  const narrow = make();
  const early = make();
  const late = make();
  const dear = make();
  const dense = make();
  for (let s = 0; s < n; s++) {
    let span = 0;
    let first = Infinity;
    let last = -Infinity;
    let most = 0;
    let reach = Infinity;
    let latestList = -1;
    const step = servers[s]!.length > MENUS_LOOKED_AT ? Math.ceil(servers[s]!.length / FEW_MENUS) : 1;
    for (const [k, v] of servers[s]!.entries()) {
      const list = windowList[s * vehicles.count + v]!;
      if (k % step === 0) {
        const menu = menus.menu(s, 0, v);
        if (menu.count > 0) most = Math.max(most, menu.minutes[menu.count - 1]!);
      }
      reach = Math.min(reach, problem.minutes[vehicles.startPlace[v]! * places + stops.place[s]!]!);
      if (list === latestList) continue;
      latestList = list;
      for (let w = windowStart[list]!; w < windowStart[list + 1]!; w++) {
        span += windowClose[w]! - windowOpen[w]!;
        first = Math.min(first, windowOpen[w]!);
        last = Math.max(last, windowClose[w]!);
      }
    }
    minutes[s] = -Math.max(most, stops.load[s]!);
    far[s] = -reach;
    near[s] = reach;
    narrow[s] = span;
    early[s] = first;
    late[s] = -last;
    dear[s] = -menus.ceiling(s, 0);
    dense[s] = dear[s]! / (most + DRIVE_TO_IT);
  }
  const spread = dear.some((value) => value !== dear[0]);
  return [
    { key: new Float64Array(0), weight: 4 },
    { key: minutes, weight: 4 },
    { key: far, weight: 2 },
    { key: near, weight: 1 },
    { key: narrow, weight: 2 },
    { key: early, weight: 2 },
    { key: late, weight: 2 },
    ...(spread ? [{ key: dear, weight: 3 }] : []),
    { key: dense, weight: 0 },
  ];
}
