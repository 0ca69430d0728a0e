import type { Random } from './random.js';
import type { SearchParameters } from './search-parameters.js';
import type { WorkingPlan } from './working-plan.js';

/**
 * String ruin: takes strings of neighbouring visits out of routes near a random stop, across all days, and lists the
 * stops concerned together with a few unserved ones to be offered again.
 *
 * ls = min(L, mean route length); strings k = ⌊U(1, ks + 1)⌋ with ks = 4c/(1 + ls) − 1; string length ⌊U(1, lmax + 1)⌋
 * with lmax = min(route length, ls); with chance α a split string that spares one visit in its middle.
 *
 * @source J. Christiaens, G. Vanden Berghe, Slack induction by string removals for vehicle routing problems,
 *         Transportation Science 54 (2020) 417–433; formulas after three open implementations, paper not re-read
 */
export class StringRuin {
  /** Stops to be offered, after `apply`. */
  readonly offered: Int32Array;
  offeredCount = 0;
  private readonly mark: Int32Array;
  private round = 0;
  /** Stops of the accepted plan where something is open and a further visit is possible. */
  private readonly unserved: Int32Array;
  unservedCount = 0;
  private placed: Int32Array;
  private placedCount = 0;
  private usedRoutes = 0;
  private readonly removed: number;

  constructor(
    private readonly plan: WorkingPlan,
    private readonly random: Random,
    private readonly parameters: SearchParameters,
    private readonly neighbours: Int32Array,
    private readonly reach: number,
    private readonly pinned: Uint8Array,
  ) {
    const n = plan.problem.stops.count;
    this.offered = new Int32Array(n);
    this.mark = new Int32Array(n).fill(-1);
    this.unserved = new Int32Array(n);
    this.placed = new Int32Array(plan.slotCount);
    const isMany = plan.problem.vehicles.count > parameters.manyRoutes;
    this.removed = isMany ? parameters.meanRemovedOfMany : parameters.meanRemoved;
  }

  /** To be called after every accepted change. */
  survey(): void {
    const { plan } = this;
    const { menus, stops } = plan.problem;
    this.unservedCount = 0;
    for (let s = 0; s < stops.count; s++) {
      if (menus.ceiling(s, plan.open[s]!) > 0 && plan.freeSlot(s) >= 0) this.unserved[this.unservedCount++] = s;
    }
    this.placedCount = 0;
    for (let x = 0; x < plan.slotCount; x++) {
      if (plan.routeOf[x]! >= 0 && this.pinned[x] === 0) this.placed[this.placedCount++] = x;
    }
    this.usedRoutes = 0;
    for (let v = 0; v < plan.length.length; v++) if (plan.length[v]! > 0) this.usedRoutes++;
  }

  apply(): void {
    const { plan, random, parameters } = this;
    this.round++;
    this.offeredCount = 0;
    if (this.placedCount === 0) {
      for (let k = 0; k < 10 && this.unservedCount > 0; k++)
        this.offer(this.unserved[random.below(this.unservedCount)]!);
      return;
    }
    const mean = this.placedCount / Math.max(1, this.usedRoutes);
    const longest = Math.max(1, Math.min(parameters.longestString, mean));
    const strings = Math.floor(1 + (random.next() / 4294967296) * ((4 * this.removed) / (1 + longest) - 1));
    const seed = plan.stopOf[this.placed[random.below(this.placedCount)]!]!;
    const wanted = this.unservedCount === 0 ? 0 : random.below(parameters.unservedNear + 1);
    let taken = 0;
    let found = 0;
    const row = seed * this.reach;
    const { routeOf, firstSlot, open, routeTouched } = plan;
    const { menus } = plan.problem;
    for (let k = 0; k < this.reach && (taken < strings || (found < wanted && k < 60)); k++) {
      const stop = this.neighbours[row + k]!;
      if (taken < strings) {
        for (let x = firstSlot[stop]!; x < firstSlot[stop + 1]!; x++) {
          const v = routeOf[x]!;
          if (v < 0 || routeTouched[v] === 1 || this.pinned[x] === 1) continue;
          if (taken >= strings) break;
          this.takeString(x, v, longest);
          taken++;
        }
      }
      if (found < wanted && this.mark[stop] !== this.round && menus.ceiling(stop, open[stop]!) > 0) {
        if (plan.freeSlot(stop) >= 0) {
          this.offer(stop);
          found++;
        }
      }
    }
    if (this.unservedCount > 0) {
      for (let k = random.below(parameters.unservedAnywhere + 1); k > 0; k--) {
        this.offer(this.unserved[random.below(this.unservedCount)]!);
      }
    }
  }

  private offer(stop: number): void {
    if (this.mark[stop] === this.round) return;
    this.mark[stop] = this.round;
    this.offered[this.offeredCount++] = stop;
  }

  private takeString(slot: number, v: number, longest: number): void {
    const { plan, random, parameters } = this;
    const n = plan.length[v]!;
    const limit = Math.max(1, Math.floor(Math.min(n, longest)));
    const length = 1 + random.below(limit);
    let spared = 0;
    if (length > 1 && length < n && random.chance(parameters.splitShare)) {
      spared = 1;
      while (length + spared < n && random.chance(parameters.splitGrowth)) spared++;
    }
    const span = length + spared;
    const at = plan.positionOf[slot]!;
    const first = Math.max(1, at - span + 1);
    const last = Math.min(at, n - span + 1);
    const begin = first + random.below(last - first + 1);
    const keepFrom = spared > 0 ? begin + 1 + random.below(length - 1) : 0;
    plan.touchRoute(v);
    const base = v * plan.stride;
    let p = begin + span - 1;
    let lowest = 0;
    let behind = 0;
    while (p >= begin) {
      if ((spared > 0 && p >= keepFrom && p < keepFrom + spared) || this.pinned[plan.slotAt[base + p]!] === 1) {
        p--;
        continue;
      }
      let q = p;
      while (
        q > begin &&
        !(spared > 0 && q - 1 >= keepFrom && q - 1 < keepFrom + spared) &&
        this.pinned[plan.slotAt[base + q - 1]!] === 0
      ) {
        q--;
      }
      for (let r = q; r <= p; r++) this.offer(plan.stopOf[plan.slotAt[base + r]!]!);
      plan.removeRun(v, q, p - q + 1);
      behind = lowest === 0 ? q : behind - (p - q + 1);
      lowest = q;
      p = q - 1;
    }
    if (lowest > 0) plan.refresh(v, lowest, behind - 1);
  }
}
