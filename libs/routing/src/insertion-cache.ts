import { InsertionScan } from './insertion-scan.js';
import type { WorkingPlan } from './working-plan.js';

/**
 * Remembers the two best insertions per stop and route while neither the route nor what is open at the stop changes.
 * One row per stop: what a loop over the routes reads lies together. `bring` forgets what the accepted changes since the
 * row's last use have made stale (NaN), `fill` looks anew.
 *
 * Insertions that cost the row's limit or more may be missing. Changes speed only: with the cache off the same plan
 * comes out.
 */
export class InsertionCache {
  readonly scan: InsertionScan;
  /** Cost of the best insertion at stop × vehicles + vehicle; NaN = not known, Infinity = none. */
  readonly cost: Float64Array;
  private readonly second: Float64Array;
  /** Four numbers a cell: position and option of the best and of the second. */
  private readonly where: Int32Array;
  /** Per stop: accepted changes taken into account, what was open, and the limit of its costs. */
  private readonly known: Int32Array;
  private readonly open: Int32Array;
  private readonly limit: Float64Array;
  private readonly routes: number;

  constructor(
    private readonly plan: WorkingPlan,
    readonly enabled: boolean,
  ) {
    this.scan = new InsertionScan(plan);
    this.routes = plan.problem.vehicles.count;
    const rows = enabled ? plan.problem.stops.count : 0;
    this.cost = new Float64Array(rows * this.routes).fill(Number.NaN);
    this.second = new Float64Array(rows * this.routes);
    this.where = new Int32Array(rows * this.routes * 4);
    this.known = new Int32Array(rows);
    this.open = new Int32Array(rows);
    this.limit = new Float64Array(rows).fill(-Infinity);
  }

  /** Makes the stop's row fit the accepted plan, for costs below `limit`. */
  bring(stop: number, limit: number): void {
    if (!this.enabled) return;
    const { plan, routes } = this;
    const row = stop * routes;
    const changes = plan.changeCount;
    const since = this.known[stop]!;
    this.known[stop] = changes;
    if (this.open[stop] !== plan.open[stop] || limit > this.limit[stop]! || changes - since > routes) {
      this.cost.fill(Number.NaN, row, row + routes);
      this.open[stop] = plan.open[stop]!;
      this.limit[stop] = limit;
      return;
    }
    for (let k = since; k < changes; k++) this.cost[row + plan.changed(k)] = Number.NaN;
  }

  /** Has every row looked up anew: the scan's prices have changed. */
  forget(): void {
    this.limit.fill(-Infinity);
  }

  /** Looks for insertions into a route as it was accepted, and remembers them. @returns cost of the best */
  fill(stop: number, v: number): number {
    const { scan } = this;
    const cell = stop * this.routes + v;
    scan.scan(stop, v, this.limit[stop]!);
    this.cost[cell] = scan.cost1;
    this.second[cell] = scan.cost2;
    this.where[cell * 4] = scan.position1;
    this.where[cell * 4 + 1] = scan.option1;
    this.where[cell * 4 + 2] = scan.position2;
    this.where[cell * 4 + 3] = scan.option2;
    return scan.cost1;
  }

  /** Puts what is remembered into the fields of `scan`. */
  recall(stop: number, v: number): void {
    const { scan, where } = this;
    const cell = stop * this.routes + v;
    scan.cost1 = this.cost[cell]!;
    scan.cost2 = this.second[cell]!;
    scan.position1 = where[cell * 4]!;
    scan.option1 = where[cell * 4 + 1]!;
    scan.position2 = where[cell * 4 + 2]!;
    scan.option2 = where[cell * 4 + 3]!;
  }
}
