import type { Offers } from './offers.js';
import type { Random } from './random.js';
import type { SearchParameters } from './search-parameters.js';
import type { Survey } from './survey.js';
import type { WorkingPlan } from './working-plan.js';

/**
 * String ruin: takes strings of neighbouring visits out of routes near a random stop, across all days, and lists the
 * stops concerned together with a few unserved ones to be offered again.
 *
 * ls = min(L, mean route length); strings k = ⌊U(1, ks + 1)⌋; string length ⌊U(1, lmax + 1)⌋ with
 * lmax = min(route length, ls); with chance α a split string that spares one visit in its middle. The source takes
 * ks = 4c/(1 + ls) − 1, for a mean number of visits c; one ks for all did better on short routes and on long ones. Measured.
 *
 * @source J. Christiaens, G. Vanden Berghe, Slack induction by string removals for vehicle routing problems,
 *         Transportation Science 54 (2020) 417–433; formulas after three open implementations, paper not re-read
 */
export class StringRuin {
  constructor(
    private readonly plan: WorkingPlan,
    private readonly random: Random,
    private readonly parameters: SearchParameters,
    private readonly survey: Survey,
    private readonly offers: Offers,
    private readonly neighbours: Uint16Array,
    private readonly reach: number,
  ) {}

  apply(): void {
    const { plan, random, parameters, survey, offers } = this;
    const { fixed } = survey;
    offers.clear();
    if (survey.placed.count === 0) {
      offers.addUnserved(survey, random, OFFERED_TO_EMPTY);
      return;
    }
    const mean = survey.placed.count / Math.max(1, survey.usedRoutes);
    const longest = Math.max(1, Math.min(parameters.longestString, mean));
    const strings = Math.floor(1 + (random.next() / 4294967296) * parameters.moreStrings);
    const seed = plan.stopOf[survey.placed.draw(random)]!;
    const wanted = survey.unserved.count === 0 ? 0 : random.below(parameters.unservedNear + 1);
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
          if (v < 0 || routeTouched[v] === 1 || fixed[x] === 1) continue;
          if (taken >= strings) break;
          this.takeString(x, v, longest);
          taken++;
        }
      }
      if (found < wanted && !offers.has(stop) && survey.foreign[stop] === 0 && menus.ceiling(stop, open[stop]!) > 0) {
        if (plan.freeSlot(stop) >= 0) {
          offers.add(stop);
          found++;
        }
      }
    }
    offers.addUnserved(survey, random, parameters.unservedAnywhere);
  }

  private takeString(slot: number, v: number, longest: number): void {
    const { plan, random, parameters, offers } = this;
    const { fixed } = this.survey;
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
      if ((spared > 0 && p >= keepFrom && p < keepFrom + spared) || fixed[plan.slotAt[base + p]!] === 1) {
        p--;
        continue;
      }
      let q = p;
      while (
        q > begin &&
        !(spared > 0 && q - 1 >= keepFrom && q - 1 < keepFrom + spared) &&
        fixed[plan.slotAt[base + q - 1]!] === 0
      ) {
        q--;
      }
      for (let r = q; r <= p; r++) offers.add(plan.stopOf[plan.slotAt[base + r]!]!);
      plan.removeRun(v, q, p - q + 1);
      behind = lowest === 0 ? q : behind - (p - q + 1);
      lowest = q;
      p = q - 1;
    }
    if (lowest > 0) plan.refresh(v, lowest, behind - 1);
  }
}

/** Stops offered to an empty plan, at most. Own choice. */
const OFFERED_TO_EMPTY = 10;
