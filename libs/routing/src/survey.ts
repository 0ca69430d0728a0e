import type { WorkingPlan } from './working-plan.js';

/** What of the accepted plan can be taken out, and what could still be put in. */
export class Survey {
  /** Visits placed and not pinned, as slots. */
  readonly placed: Int32Array;
  placedCount = 0;
  /** Stops where something is open and a further visit is possible. */
  readonly unserved: Int32Array;
  unservedCount = 0;
  /** Routes with visits that are not closed. */
  usedRoutes = 0;
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
    this.placed = new Int32Array(plan.slotCount);
    this.unserved = new Int32Array(plan.problem.stops.count);
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

  /** To be called after every accepted change. */
  take(): void {
    const { plan } = this;
    const { menus, stops } = plan.problem;
    this.unservedCount = 0;
    for (let s = 0; s < stops.count; s++) {
      if (this.foreign[s] === 0 && menus.ceiling(s, plan.open[s]!) > 0 && plan.freeSlot(s) >= 0)
        this.unserved[this.unservedCount++] = s;
    }
    this.placedCount = 0;
    for (let x = 0; x < plan.slotCount; x++) {
      if (plan.routeOf[x]! >= 0 && this.fixed[x] === 0) this.placed[this.placedCount++] = x;
    }
    this.usedRoutes = 0;
    for (let v = 0; v < plan.length.length; v++) if (plan.length[v]! > 0 && plan.closed[v] === 0) this.usedRoutes++;
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
      if (plan.length[v]! > 0) used += Math.min(shift, plan.backAt(v) - shiftStart[v]!);
    }
    return all > 0 ? used / all : 0;
  }
}
