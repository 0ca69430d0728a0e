import { DrawnSet } from './drawn-set.js';
import type { WorkingPlan } from './working-plan.js';

/** What of the accepted plan can be taken out, and what could still be put in. */
export class Survey {
  /** Visits placed and not pinned, as slots. */
  readonly placed: DrawnSet;
  /** Stops where something is open and a further visit is possible. */
  readonly unserved: DrawnSet;
  private closedCount = 0;
  /** Per slot: 1 = its visit stays where it is. */
  readonly fixed: Uint8Array;
  /** Per stop: 1 = not to be offered. */
  readonly foreign: Uint8Array;

  constructor(
    private readonly plan: WorkingPlan,
    private readonly pinned: Uint8Array,
  ) {
    this.fixed = pinned.slice();
    this.foreign = new Uint8Array(plan.problem.stops.count);
    this.placed = new DrawnSet(plan.slotCount);
    this.unserved = new DrawnSet(plan.problem.stops.count);
  }

  /** To be called after visits were pinned, routes closed or stops made foreign, or any of these undone. */
  renew(): void {
    const { foreign } = this;
    const { routeOf, stopOf, closed } = this.plan;
    for (let x = 0; x < this.fixed.length; x++) {
      const v = routeOf[x]!;
      this.fixed[x] = this.pinned[x]! | (v >= 0 ? closed[v]! | foreign[stopOf[x]!]! : 0);
    }
    this.take();
  }

  /** Takes stock of the whole plan. */
  take(): void {
    const { plan, placed, unserved } = this;
    const { count } = plan.problem.stops;
    placed.clear();
    unserved.clear();
    for (let s = 0; s < count; s++) this.look(s);
    this.closedCount = 0;
    for (let v = 0; v < plan.length.length; v++) if (plan.length[v]! > 0 && plan.closed[v] === 1) this.closedCount++;
  }

  /** To be called before a change is accepted: looks at what it touches. */
  follow(): void {
    const { touchedStops, touchedStopCount } = this.plan;
    for (let k = 0; k < touchedStopCount; k++) this.look(touchedStops[k]!);
  }

  private look(s: number): void {
    const { plan, placed, fixed } = this;
    const { firstSlot, routeOf, open } = plan;
    let spare = false;
    for (let x = firstSlot[s]!; x < firstSlot[s + 1]!; x++) {
      const isPlaced = routeOf[x]! >= 0;
      if (!isPlaced) spare = true;
      placed.set(x, isPlaced && fixed[x] === 0);
    }
    this.unserved.set(s, spare && this.foreign[s] === 0 && plan.problem.menus.ceiling(s, open[s]!) > 0);
  }

  /** Routes with visits that are not closed, in the accepted plan. */
  get usedRoutes(): number {
    return this.plan.untouchedCount - this.closedCount;
  }

  /** Share of all shifts that the routes take, from leaving to being back, 0 … 1. */
  fullness(): number {
    const { plan } = this;
    const { shiftStart, shiftEnd, count } = plan.problem.vehicles;
    let used = 0;
    let all = 0;
    for (let v = 0; v < count; v++) {
      const shift = shiftEnd[v]! - shiftStart[v]!;
      all += shift;
      if (plan.length[v]! > 0) used += Math.min(shift, plan.times.backAt(v) - shiftStart[v]!);
    }
    return all > 0 ? used / all : 0;
  }
}
