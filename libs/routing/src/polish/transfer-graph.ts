import type { InsertionScan } from '../insertion-scan.js';
import type { Survey } from '../survey.js';
import type { WorkingPlan } from '../working-plan.js';

/** Cheapest ways of each visit that are remembered. Own choice. */
const MOST_ARCS = 40;
/** Nearest stops of a visit whose routes it may enter. Own choice. */
const LOOKED_AT = 40;
/** What a trial takes where there is lunch or overtime, in plain ones. Own choice. */
const FULL_TRIAL = 5;

/**
 * What it costs when one visit enters another's route: in place of one of its visits, or beside all of them. Visits near
 * a route are tried in it, each with the exact insertion that the search itself uses.
 *
 * Costs leave out the worth of placed visits, which stays what it is while they only change routes; of an unserved one
 * the worth is counted when it enters.
 */
export class TransferGraph {
  /** Visits that may move, as slots: `placedCount` placed ones, then one free slot of each stop that wants a visit. */
  readonly movers: Int32Array;
  count = 0;
  placedCount = 0;
  /** Per slot: its index among the movers, −1 = it stays. */
  readonly moverOf: Int32Array;
  /** Per slot: what its route costs more without it, its worth left out; as a rule below 0. */
  readonly without: Float64Array;
  /** Per arc: the slot whose place the mover takes, or −1 − route to go beside all of its visits; and the cost. */
  readonly target: Int32Array;
  readonly cost: Float64Array;
  private readonly arcCount: Int32Array;
  /** Insertions tried by the latest `build`, each counted for what it takes. */
  trials = 0;
  private near: number[][] = [];
  /** Per route: the latest mover that has met it. */
  private readonly metBy: Int32Array;

  constructor(
    private readonly plan: WorkingPlan,
    private readonly scan: InsertionScan,
    private readonly survey: Survey,
    /** Nearest stops of each, itself first, `reach` a row. */
    private readonly neighbours: Uint16Array,
    private readonly reach: number,
  ) {
    const { slotCount } = plan;
    this.movers = new Int32Array(slotCount);
    this.moverOf = new Int32Array(slotCount);
    this.without = new Float64Array(slotCount);
    this.target = new Int32Array(slotCount * MOST_ARCS);
    this.cost = new Float64Array(slotCount * MOST_ARCS);
    this.arcCount = new Int32Array(slotCount);
    this.metBy = new Int32Array(plan.problem.vehicles.count);
  }

  /** Arcs of a mover are first(m) … end(m) − 1, by rising cost. */
  first(m: number): number {
    return m * MOST_ARCS;
  }

  end(m: number): number {
    return m * MOST_ARCS + this.arcCount[m]!;
  }

  /** Looks at the accepted plan; leaves it as it is. */
  build(): void {
    const { plan, survey } = this;
    this.moverOf.fill(-1);
    this.arcCount.fill(0);
    this.count = 0;
    this.trials = 0;
    for (let k = 0; k < survey.placed.count; k++) this.add(survey.placed.members[k]!);
    this.placedCount = this.count;
    for (let k = 0; k < survey.unserved.count; k++) this.add(plan.freeSlot(survey.unserved.members[k]!));
    this.findNear();
    for (let v = 0; v < plan.length.length; v++) {
      if (plan.closed[v] === 1 || plan.length[v] === 0) continue;
      this.offer(v, -1 - v, 0);
      for (let p = 1; p <= plan.length[v]!; p++) {
        const slot = plan.slotAt[v * plan.stride + p]!;
        if (this.moverOf[slot]! < 0) continue;
        const before = plan.cost + plan.worthOf[slot]!;
        plan.removeRun(v, p, 1);
        plan.refresh(v, p, p - 1);
        this.without[slot] = plan.cost - before;
        if (plan.isFeasible(v)) this.offer(v, slot, this.without[slot]!);
        plan.rollback();
      }
    }
  }

  private add(slot: number): void {
    this.moverOf[slot] = this.count;
    this.movers[this.count++] = slot;
  }

  /** Lists for each route the movers that have a stop of it among their nearest. */
  private findNear(): void {
    const { plan, metBy } = this;
    const { firstSlot, routeOf, stopOf } = plan;
    const { windowList, vehicles } = plan.problem;
    this.near = Array.from({ length: vehicles.count }, () => []);
    metBy.fill(-1);
    const looked = Math.min(this.reach, LOOKED_AT);
    for (let m = 0; m < this.count; m++) {
      const stop = stopOf[this.movers[m]!]!;
      const own = routeOf[this.movers[m]!]!;
      for (let k = stop * this.reach; k < stop * this.reach + looked; k++) {
        const other = this.neighbours[k]!;
        for (let x = firstSlot[other]!; x < firstSlot[other + 1]!; x++) {
          const v = routeOf[x]!;
          if (v < 0 || v === own || metBy[v] === m) continue;
          metBy[v] = m;
          if (windowList[stop * vehicles.count + v]! >= 0) this.near[v]!.push(m);
        }
      }
    }
  }

  /** Tries the movers near the route, as it stands now, and notes what that costs on top of `sofar`. */
  private offer(v: number, target: number, sofar: number): void {
    const { plan, scan, movers } = this;
    const { problem, routeOf, open, crowdDay, stopOf } = plan;
    const { stops, vehicles, days, menus } = problem;
    this.trials += this.near[v]!.length * (plan.times.isPlain[v] === 1 ? 1 : FULL_TRIAL);
    for (const m of this.near[v]!) {
      const slot = movers[m]!;
      const stop = stopOf[slot]!;
      const own = routeOf[slot]!;
      const openNow = open[stop]!;
      let worth = 0;
      if (own >= 0) {
        // As if it had left its own route.
        worth = plan.worthOf[slot]!;
        open[stop] = menus.giveBack(stop, openNow, plan.tokenOf[slot]!);
        routeOf[slot] = -1;
        crowdDay[stops.crowd[stop]! * days + vehicles.day[own]!]!--;
      }
      // Making a menu takes far longer than a trial is worth.
      if (menus.isPrepared(stop, open[stop]!, v) && plan.admits(stop, v)) {
        scan.scan(stop, v);
        if (scan.position1 >= 0) this.note(m, target, sofar + scan.cost1 + worth);
      }
      if (own >= 0) {
        open[stop] = openNow;
        routeOf[slot] = own;
        crowdDay[stops.crowd[stop]! * days + vehicles.day[own]!]!++;
      }
    }
  }

  private note(m: number, target: number, cost: number): void {
    const row = m * MOST_ARCS;
    let n = this.arcCount[m]!;
    if (n === MOST_ARCS) {
      if (cost >= this.cost[row + n - 1]!) return;
      n--;
    }
    let k = row + n;
    while (k > row && this.cost[k - 1]! > cost) {
      this.cost[k] = this.cost[k - 1]!;
      this.target[k] = this.target[k - 1]!;
      k--;
    }
    this.cost[k] = cost;
    this.target[k] = target;
    this.arcCount[m] = n + 1;
  }
}
