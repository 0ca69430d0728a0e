import type { InsertionScan } from './insertion-scan.js';
import type { Offers } from './offers.js';
import type { Random } from './random.js';
import type { Survey } from './survey.js';
import type { WorkingPlan } from './working-plan.js';

/**
 * Swaps the ends of two routes that pass near each other, or two whole routes: what a technician does on Tuesday and on
 * Thursday, or what two of them do. Visits that find no room in the other route are offered to all.
 *
 * Taking out strings hardly ever brings this about: on the way each route would have to be torn up, and be worse.
 *
 * @source ends: J.-Y. Potvin, J.-M. Rousseau, An exchange heuristic for routeing problems with time windows, Journal of
 *         the Operational Research Society 46 (1995) 1433–1446 (from memory); whole routes: our own
 */
export class EndSwap {
  private readonly ours: Int32Array;
  private readonly theirs: Int32Array;

  constructor(
    private readonly plan: WorkingPlan,
    private readonly random: Random,
    private readonly scan: InsertionScan,
    private readonly survey: Survey,
    private readonly offers: Offers,
    /** Nearest stops of each, itself first, `reach` a row. */
    private readonly neighbours: Uint16Array,
    private readonly reach: number,
  ) {
    this.ours = new Int32Array(plan.slotCount);
    this.theirs = new Int32Array(plan.slotCount);
  }

  /** Swaps what follows a drawn visit with another route from a visit near it on. @returns whether there was such a pair */
  swapEnds(): boolean {
    const { plan, random, survey, reach } = this;
    if (survey.placed.count === 0 || reach < 2) return false;
    const slot = survey.placed.draw(random);
    const near = 1 + random.below(Math.min(reach - 1, NEAR));
    const other = plan.firstSlot[this.neighbours[plan.stopOf[slot]! * reach + near]!]!;
    const v = plan.routeOf[slot]!;
    const w = plan.routeOf[other]!;
    return w >= 0 && v !== w && this.swap(v, plan.positionOf[slot]! + 1, w, plan.positionOf[other]!);
  }

  /** Swaps two routes of different kinds: of the same kind they would stay what they are. @returns whether it drew such */
  swapRoutes(): boolean {
    const { plan, random, survey } = this;
    const { kind, count } = plan.problem.vehicles;
    if (survey.placed.count === 0) return false;
    const v = plan.routeOf[survey.placed.draw(random)]!;
    const w = random.below(count);
    return kind[v] !== kind[w] && this.swap(v, 1, w, 1);
  }

  private swap(v: number, fromV: number, w: number, fromW: number): boolean {
    const { ours, theirs, survey } = this;
    if (this.plan.closed[v] === 1 || this.plan.closed[w] === 1) return false;
    const countV = this.list(v, fromV, ours);
    const countW = this.list(w, fromW, theirs);
    for (let k = 0; k < countV; k++) if (survey.fixed[ours[k]!] === 1) return false;
    for (let k = 0; k < countW; k++) if (survey.fixed[theirs[k]!] === 1) return false;
    const lost = this.barred(ours, countV, w) + this.barred(theirs, countW, v);
    if (lost > this.random.below(BARRED)) return false;
    this.offers.clear();
    this.cut(v, fromV, countV);
    this.cut(w, fromW, countW);
    this.putIn(ours, countV, w);
    this.putIn(theirs, countW, v);
    return true;
  }

  /** Visits that the vehicle may never make: a swap that loses several hardly ever pays, and is soon told. */
  private barred(slots: Int32Array, count: number, v: number): number {
    const { stopOf, problem } = this.plan;
    const { windowList, vehicles } = problem;
    let barred = 0;
    for (let k = 0; k < count; k++) if (windowList[stopOf[slots[k]!]! * vehicles.count + v]! < 0) barred++;
    return barred;
  }

  private list(v: number, from: number, slots: Int32Array): number {
    const { plan } = this;
    const base = v * plan.stride;
    const n = plan.length[v]!;
    for (let p = from; p <= n; p++) slots[p - from] = plan.slotAt[base + p]!;
    return n - from + 1;
  }

  private cut(v: number, from: number, count: number): void {
    if (count === 0) return;
    this.plan.removeRun(v, from, count);
    this.plan.refresh(v, from, from - 1);
  }

  /**
   * Puts each at the route's end, in the order they were driven, or where that does not fit at its cheapest place. Whether
   * the round pays is told by the whole plan: of one far away no visit alone would pay for the drive.
   */
  private putIn(slots: Int32Array, count: number, v: number): void {
    const { plan, scan } = this;
    for (let k = 0; k < count; k++) {
      const slot = slots[k]!;
      const stop = plan.stopOf[slot]!;
      if (plan.admits(stop, v)) {
        scan.scan(stop, v, Infinity, plan.length[v]!);
        if (scan.position1 < 0) scan.scan(stop, v);
        if (scan.position1 >= 0) {
          plan.insert(slot, v, scan.position1, scan.option1);
          continue;
        }
      }
      this.offers.add(stop);
    }
  }
}

/** A swap may lose fewer than this many visits, by a draw. Measured. */
const BARRED = 3;
/** Neighbours drawn from. Own choice. */
const NEAR = 20;
