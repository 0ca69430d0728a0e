import { InsertionScan } from '../insertion-scan.js';
import type { Survey } from '../survey.js';
import type { WorkingPlan } from '../working-plan.js';
import { BestChains } from './best-chains.js';
import { TransferGraph } from './transfer-graph.js';

/** Visits that change their places at once, at most. Own choice. */
const LONGEST = 5;
/** Gains below this are rounding. */
const LEAST_GAIN = 1e-6;

/**
 * Cyclic transfers: several visits change their places at once, each taking the place of the next in another route. The
 * first may come from outside the plan or leave a gap; the last may leave the plan, go where there is room, or take the
 * first's place. Taking strings out and putting visits in one by one hardly ever brings these about.
 *
 * From each visit the cheapest beginnings are followed that cost less than nothing: a ring that pays can always be begun
 * so that it does all along. The one that saves most is made on the plan itself, and given up where it does not pay there.
 *
 * @source P. M. Thompson, H. N. Psaraftis, Cyclic transfer algorithms for multivehicle routing and scheduling problems,
 *         Operations Research 41 (1993) 935–946 (from memory); following only the cheapest beginnings is our own
 */
export class CyclicTransfers {
  private readonly scan: InsertionScan;
  private readonly graph: TransferGraph;
  private readonly chains = new BestChains(LONGEST);
  /** Per route and per slot: 1 = changed since the look began. */
  private readonly isStale: Uint8Array;
  private readonly isSpent: Uint8Array;
  /** The best exchange from a visit: who enters, in turn; the route the last one enters, and who leaves the plan, if any. */
  private saving = 0;
  private entering: number[] = [];
  private lastRoute = -1;
  private leaving = -1;

  constructor(
    private readonly plan: WorkingPlan,
    private readonly survey: Survey,
    /** Nearest stops of each, itself first, `reach` a row. */
    neighbours: Uint16Array,
    reach: number,
  ) {
    this.scan = new InsertionScan(plan);
    this.graph = new TransferGraph(plan, this.scan, survey, neighbours, reach);
    this.isStale = new Uint8Array(plan.problem.vehicles.count);
    this.isSpent = new Uint8Array(plan.slotCount);
  }

  /** Insertions tried by the latest look: what it took. */
  get trials(): number {
    return this.graph.trials;
  }

  /** Looks once from each visit of the accepted plan, and accepts the exchanges that pay. @returns how many did */
  look(): number {
    const { plan, graph, isStale, isSpent } = this;
    graph.build();
    isStale.fill(0);
    isSpent.fill(0);
    let made = 0;
    for (let m = 0; m < graph.count; m++) {
      const slot = graph.movers[m]!;
      const v = plan.routeOf[slot]!;
      if (isSpent[slot] === 1 || (v >= 0 && isStale[v] === 1)) continue;
      this.saving = LEAST_GAIN;
      if (m >= graph.placedCount) this.follow(slot, -1, 0, false);
      else {
        this.follow(slot, v, graph.without[slot]!, false);
        this.follow(slot, v, 0, true);
      }
      if (this.saving > LEAST_GAIN && this.make()) made++;
    }
    return made;
  }

  /**
   * @param cost   of taking the visit out of its route, where it leaves a gap
   * @param isRing whether the last visit has to take the first's place
   */
  private follow(slot: number, route: number, cost: number, isRing: boolean): void {
    const { graph, chains, plan, isStale } = this;
    chains.begin(slot, route, cost);
    for (let length = 1; length <= LONGEST; length++) {
      for (let k = chains.first(length); k < chains.end(length); k++) {
        const m = graph.moverOf[chains.last[k]!]!;
        for (let a = graph.first(m); a < graph.end(m); a++) {
          const total = chains.cost[k]! + graph.cost[a]!;
          if (total >= 0) break;
          const target = graph.target[a]!;
          const v = target < 0 ? -1 - target : plan.routeOf[target]!;
          if (v < 0 || isStale[v] === 1) continue;
          if (isRing && target === slot) this.consider(k, total, v, -1);
          if (chains.meets(k, v)) continue;
          if (target >= 0) {
            if (length < LONGEST) chains.add(k, target, v, total);
            if (!isRing) this.consider(k, total + plan.worthOf[target]!, v, target);
          } else if (!isRing) this.consider(k, total, v, -1);
        }
      }
    }
  }

  private consider(chain: number, cost: number, route: number, leaving: number): void {
    if (-cost <= this.saving) return;
    this.saving = -cost;
    this.entering = this.chains.visits(chain);
    this.lastRoute = route;
    this.leaving = leaving;
  }

  /** Makes the best exchange found. @returns whether it pays on the plan itself */
  private make(): boolean {
    const { plan, scan, survey, entering, leaving } = this;
    const { routeOf, stopOf } = plan;
    const before = plan.cost;
    const into = entering.map((_, k) => (k + 1 < entering.length ? routeOf[entering[k + 1]!]! : this.lastRoute));
    const moved = leaving < 0 ? entering : [...entering, leaving];
    for (const slot of moved) {
      const v = routeOf[slot]!;
      if (v < 0) continue;
      const p = plan.positionOf[slot]!;
      plan.removeRun(v, p, 1);
      plan.refresh(v, p, p - 1);
    }
    const fits = entering.every((slot, k) => {
      const v = into[k]!;
      if (!plan.admits(stopOf[slot]!, v)) return false;
      scan.scan(stopOf[slot]!, v);
      if (scan.position1 < 0) return false;
      plan.insert(slot, v, scan.position1, scan.option1);
      return true;
    });
    if (!fits || plan.cost >= before - LEAST_GAIN || !plan.isDrivable()) {
      plan.rollback();
      return false;
    }
    for (const slot of moved) this.isSpent[slot] = 1;
    for (let k = 0; k < plan.touchedRouteCount; k++) this.isStale[plan.touchedRoutes[k]!] = 1;
    survey.follow();
    plan.commit();
    return true;
  }
}
