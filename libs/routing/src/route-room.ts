import { DrawnSet } from './drawn-set.js';
import { triangleGap } from './problem.js';
import type { WorkingPlan } from './working-plan.js';

/**
 * How long a visit a route could still take in, from above: the largest of latest arrival − earliest departure − drive
 * over its arcs, since a detour takes no less time than the arc itself, but for the shortcuts of a matrix without
 * triangle inequality. On full days it tells at once of nearly every route that a stop finds no place in it.
 */
export class RouteRoom {
  /** Per vehicle: no visit of more minutes fits in anywhere. */
  readonly most: Int32Array;
  /** Vehicles whose accepted route has room for the shortest visit of all. */
  readonly roomy: DrawnSet;
  private readonly kept: Int32Array;
  private readonly shortest: number;
  private readonly shortcut: number;

  constructor(private readonly plan: WorkingPlan) {
    const { vehicles, stops, menus, minutes, places } = plan.problem;
    this.most = new Int32Array(vehicles.count);
    this.kept = new Int32Array(vehicles.count);
    this.roomy = new DrawnSet(vehicles.count);
    this.shortest = Array.from({ length: stops.count }, (_, s) => menus.least(s, 0)).reduce(
      (a, b) => Math.min(a, b),
      Infinity,
    );
    this.shortcut = triangleGap(minutes, places);
  }

  /** To be called when the route's times are known anew. */
  refresh(v: number): void {
    const { plan, most } = this;
    const { out0, out1, late0, late1, driveAt } = plan;
    const { vehicles } = plan.problem;
    const hasLunch = vehicles.lunchMinutes[v]! > 0;
    if (plan.length[v]! > LONG) {
      most[v] = vehicles.latestReturn[v]! - vehicles.shiftStart[v]!;
      return;
    }
    const base = v * plan.stride;
    const end = base + plan.length[v]!;
    let largest = -1;
    for (let p = base; p <= end; p++) {
      const from = hasLunch ? Math.min(out0[p]!, out1[p]!) : out1[p]!;
      const by = hasLunch ? Math.max(late0[p + 1]!, late1[p + 1]!) : late1[p + 1]!;
      const spare = by - from - driveAt[p]!;
      if (spare > largest) largest = spare;
    }
    most[v] = largest + this.shortcut;
  }

  /** Makes the route's present room that of the accepted route. */
  accept(v: number): void {
    this.kept[v] = this.most[v]!;
    this.roomy.set(v, this.most[v]! >= this.shortest);
  }

  /** Returns to the accepted route's room. */
  restore(v: number): void {
    this.most[v] = this.kept[v]!;
  }
}

/** Routes of more visits are not gone through: the longer they are, the longer that takes and the less it tells. Own choice. */
const LONG = 25;
