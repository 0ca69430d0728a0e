import { InsertionScan } from './insertion-scan.js';
import type { WorkingPlan } from './working-plan.js';

/**
 * Remembers the two best insertions per stop and route while neither the route nor what is open at the stop changes.
 * Insertions that cost `best` or more may be missing; what is remembered holds for all cheaper than its limit.
 * Changes speed only: with the cache off the same plan comes out. The answer is in the fields of `scan`.
 */
export class InsertionCache {
  readonly scan: InsertionScan;
  private readonly version: Int32Array;
  private readonly open: Int32Array;
  private readonly limit: Float64Array;
  private readonly cost1: Float64Array;
  private readonly cost2: Float64Array;
  private readonly where: Int32Array;

  constructor(
    private readonly plan: WorkingPlan,
    private readonly enabled: boolean,
  ) {
    this.scan = new InsertionScan(plan);
    const cells = enabled ? plan.problem.stops.count * plan.problem.vehicles.count : 0;
    this.version = new Int32Array(cells).fill(-1);
    this.open = new Int32Array(cells);
    this.limit = new Float64Array(cells);
    this.cost1 = new Float64Array(cells);
    this.cost2 = new Float64Array(cells);
    this.where = new Int32Array(cells * 4);
  }

  /** @param limit at least `best`; the same for all routes a stop is offered to, so that more can be remembered */
  find(stop: number, v: number, best: number, limit: number): void {
    const { plan, scan } = this;
    if (!this.enabled || plan.routeTouched[v] === 1) {
      scan.scan(stop, v, best);
      return;
    }
    const cell = stop * plan.problem.vehicles.count + v;
    const four = cell * 4;
    if (this.version[cell] === plan.version[v] && this.open[cell] === plan.open[stop] && best <= this.limit[cell]!) {
      scan.cost1 = this.cost1[cell]!;
      scan.cost2 = this.cost2[cell]!;
      scan.position1 = this.where[four]!;
      scan.option1 = this.where[four + 1]!;
      scan.position2 = this.where[four + 2]!;
      scan.option2 = this.where[four + 3]!;
      return;
    }
    scan.scan(stop, v, limit);
    this.limit[cell] = limit;
    this.version[cell] = plan.version[v]!;
    this.open[cell] = plan.open[stop]!;
    this.cost1[cell] = scan.cost1;
    this.cost2[cell] = scan.cost2;
    this.where[four] = scan.position1;
    this.where[four + 1] = scan.option1;
    this.where[four + 2] = scan.position2;
    this.where[four + 3] = scan.option2;
  }
}
