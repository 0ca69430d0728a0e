import { type Exchange, fromNumbers, inNumbers, WHOLE } from './exchange.js';
import { Random } from './random.js';
import type { Survey } from './survey.js';
import type { RoutedVisit, WorkingPlan } from './working-plan.js';

type Routes = readonly (readonly RoutedVisit[])[];

/** A plan and its cost. */
export interface Costed {
  readonly cost: number;
  readonly routes: RoutedVisit[][];
}

/**
 * Two searches of one large plan, each in its half of the routes until they meet again: what both have found then makes
 * one plan. A half is what lies on one side of a line drawn anew at every meeting, so that no border stays where it is.
 *
 * Routes of the other half are closed, and stops that belong there foreign: neither is touched. A crowd, whose stops share
 * a limit of visits per day, belongs to one half as a whole; what the other half already does of it stays as it is.
 */
export class Halves {
  /** The best plan at the last meeting: the same for both searches. */
  settled: Costed = { cost: Infinity, routes: [] };
  /** How often the plan was divided. */
  divided = 0;
  private division = WHOLE;
  private meetings = 0;
  /** The other has ended, and waits for what this one ends with. */
  private isAlone = false;
  private isTogether = true;

  constructor(
    private readonly plan: WorkingPlan,
    private readonly survey: Survey,
    private readonly exchange: Exchange,
  ) {}

  /**
   * @param best of this search since the last meeting
   * @returns plans to take over, one after the other: the best of both halves, then where to go on from
   */
  meet(best: Costed, isLast: boolean): Routes[] {
    const { plan, exchange } = this;
    if (this.isAlone && !isLast) return [];
    const current = plan.routes();
    const mine = {
      best: inNumbers(plan, best.cost, best.routes),
      current: inNumbers(plan, plan.cost, current),
      division: this.division,
    };
    const theirs = exchange.meet(mine, isLast);
    if (this.isAlone) return [];
    this.isAlone = theirs?.isLast === true;
    this.isTogether = theirs?.division === this.division;
    const division = this.division;
    const { closed } = plan;
    const union = (own: Routes, other: Routes) => own.map((route, v) => (closed[v] === 1 ? other[v]! : route));
    const plans: Routes[] = [];
    if (theirs !== null) {
      const theirBest = fromNumbers(plan, theirs.best);
      if (this.isTogether && division !== WHOLE) {
        plans.push(union(best.routes, theirBest), union(current, fromNumbers(plan, theirs.current)));
      } else {
        const isTheirs = theirs.best.cost < best.cost || (theirs.best.cost === best.cost && exchange.side === 1);
        plans.push(isTheirs ? theirBest : best.routes);
      }
    }
    this.undo();
    return plans;
  }

  /** All routes and stops are this search's. */
  undo(): void {
    this.division = WHOLE;
    this.plan.closed.fill(0);
    this.survey.foreign.fill(0);
    this.survey.renew();
  }

  /** Divides the accepted plan, which is the same in both searches, for the time until the next meeting. */
  divide(best: Costed): void {
    this.settled = best;
    this.meetings++;
    if (this.isAlone || !this.isTogether) return;
    this.divided++;
    const { plan } = this;
    this.division = fingerprint(this.meetings, inNumbers(plan, plan.cost, plan.routes()).visits);
    this.draw(new Random(this.meetings));
    this.survey.renew();
  }

  /** The line lies between two drawn stops, so that either side makes half of the visits. */
  private draw(random: Random): void {
    const { length, problem, closed } = this.plan;
    const { side } = this.exchange;
    const { stops, vehicles } = problem;
    const lean = this.leanings(random.below(stops.count), random.below(stops.count));
    const used: { v: number; lean: number }[] = [];
    let visits = 0;
    for (let v = 0; v < vehicles.count; v++) {
      if (length[v] === 0) {
        closed[v] = random.below(2) === side ? 0 : 1;
        continue;
      }
      used.push({ v, lean: this.meanOf(v, lean) });
      visits += length[v]!;
    }
    used.sort((one, other) => one.lean - other.lean || one.v - other.v);
    let border = Infinity;
    let before = 0;
    for (const route of used) {
      const half = 2 * before < visits ? 0 : 1;
      if (half === 1) border = Math.min(border, route.lean);
      closed[route.v] = half === side ? 0 : 1;
      before += length[route.v]!;
    }
    this.shareOutStops(lean, border);
  }

  /** How much nearer each stop lies to one stop than to another. */
  private leanings(one: number, other: number): Float64Array {
    const { places, stops, arcCost } = this.plan.problem;
    const arcs = arcCost[0]!;
    const from = stops.place[one]! * places;
    const fromOther = stops.place[other]! * places;
    return Float64Array.from(stops.place, (place) => arcs[from + place]! - arcs[fromOther + place]!);
  }

  private meanOf(v: number, lean: Float64Array): number {
    const { length, slotAt, stopOf, stride } = this.plan;
    let sum = 0;
    for (let p = 1; p <= length[v]!; p++) sum += lean[stopOf[slotAt[v * stride + p]!]!]!;
    return sum / length[v]!;
  }

  /** A crowd goes with the first route that visits it; without any, by where it lies. */
  private shareOutStops(lean: Float64Array, border: number): void {
    const { length, slotAt, stopOf, stride, problem, closed } = this.plan;
    const { stops, visitsPerDay } = problem;
    const isForeign = new Int8Array(visitsPerDay.length).fill(-1);
    for (let v = 0; v < closed.length; v++) {
      for (let p = 1; p <= length[v]!; p++) {
        const crowd = stops.crowd[stopOf[slotAt[v * stride + p]!]!]!;
        if (isForeign[crowd]! < 0) isForeign[crowd] = closed[v]!;
      }
    }
    for (let s = 0; s < stops.count; s++) {
      const crowd = stops.crowd[s]!;
      const half = lean[s]! < border ? 0 : 1;
      if (isForeign[crowd]! < 0) isForeign[crowd] = half === this.exchange.side ? 0 : 1;
      this.survey.foreign[s] = isForeign[crowd]!;
    }
  }
}

/** FNV-1a, 32 bit. */
function fingerprint(begin: number, numbers: Float64Array): number {
  let hash = 0x811c9dc5 ^ begin;
  for (const number of numbers) hash = Math.imul(hash ^ (number | 0), 0x01000193);
  return hash >>> 0;
}
