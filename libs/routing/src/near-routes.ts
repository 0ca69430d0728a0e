import type { WorkingPlan } from './working-plan.js';

/** Routes that pass near each stop and could serve it, nearest first, as they were not long ago. */
export class NearRoutes {
  /** `NEAR_KEPT` a row. */
  readonly routes: Int32Array;
  private readonly counts: Int32Array;
  /** Changes of the plan at which each row was looked up; a row with nothing in it is looked up every time. */
  private readonly since: Int32Array;
  /** Per vehicle: the latest look that has met it. */
  private readonly seenAt: Int32Array;
  private looks = 0;

  constructor(
    private readonly plan: WorkingPlan,
    /** Nearest stops of each, `reach` a row. */
    private readonly neighbours: Int32Array,
    private readonly reach: number,
  ) {
    const { stops, vehicles } = plan.problem;
    this.routes = new Int32Array(stops.count * NEAR_KEPT);
    this.counts = new Int32Array(stops.count);
    this.seenAt = new Int32Array(vehicles.count);
    this.since = new Int32Array(stops.count).fill(NEVER);
  }

  /** Where the stop's row begins. */
  first(stop: number): number {
    return stop * NEAR_KEPT;
  }

  /** Length of the stop's row, which is looked up again where it is too old. */
  count(stop: number): number {
    const { changeCount, untouchedCount } = this.plan;
    if (changeCount - this.since[stop]! > Math.max(STALE_AFTER, untouchedCount)) this.lookUp(stop);
    return this.counts[stop]!;
  }

  private lookUp(stop: number): void {
    const { plan, routes, neighbours, reach, seenAt } = this;
    const look = ++this.looks;
    const { routeOf, firstSlot } = plan;
    const { vehicles, windowList } = plan.problem;
    const first = this.first(stop);
    // More than are used would be looked for in vain.
    const end = first + Math.min(NEAR_KEPT, plan.untouchedCount + plan.touchedRouteCount);
    let free = first;
    for (let k = stop * reach; k < (stop + 1) * reach && free < end; k++) {
      const near = neighbours[k]!;
      for (let x = firstSlot[near]!; x < firstSlot[near + 1]! && free < end; x++) {
        const v = routeOf[x]!;
        if (v < 0 || seenAt[v] === look) continue;
        seenAt[v] = look;
        if (windowList[stop * vehicles.count + v]! >= 0) routes[free++] = v;
      }
    }
    this.counts[stop] = free - first;
    if (free > first) this.since[stop] = plan.changeCount;
  }
}

const NEAR_KEPT = 8;
const NEVER = -1_000_000_000;
/**
 * Routes changed until a row is looked up again, at least; where more routes are used, as many as these. Looking up every
 * time took a seventh longer on 500 stops and ended no better. Measured.
 */
const STALE_AFTER = 20;
