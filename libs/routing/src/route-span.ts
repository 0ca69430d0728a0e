import type { Vehicles } from './problem.js';
import type { WorkingPlan } from './working-plan.js';

/**
 * Time between leaving and coming back, where vehicles have a longest one and choose themselves when to leave.
 * Per position of a route: the least time of what lies before it (itself included) and after it, and the departures
 * from `…From` to `…To` for which that least time is enough. Putting two pieces together takes constant time.
 *
 * @source T. Vidal, T. G. Crainic, M. Gendreau, C. Prins, Computers & Operations Research 40 (2013) 475–489,
 *         concatenation of sequences under time windows, from memory; without time warp, since all windows hold here
 */
export class RouteSpan {
  private readonly before: Pieces;
  private readonly after: Pieces;

  constructor(private readonly plan: WorkingPlan) {
    const cells = plan.problem.vehicles.count * plan.stride;
    this.before = pieces(cells);
    this.after = pieces(cells);
  }

  /** Moves what lies behind the cells `from` to `to`. */
  shift(from: number, to: number, by: number): void {
    for (const column of [this.after.time, this.after.from, this.after.to]) column.copyWithin(from + by, from, to + 1);
  }

  /** Recomputes the pieces of a route: from position `first` on forwards, from `last` on backwards. */
  refresh(v: number, first: number, last: number): void {
    const { plan, before, after } = this;
    const { vehicles } = plan.problem;
    const base = v * plan.stride;
    const end = base + plan.length[v]! + 1;
    const leave = vehicles.shiftStart[v]!;
    const back = vehicles.latestReturn[v]!;
    set(before, base, 0, leave, back);
    set(after, end, 0, leave, back);
    for (let p = base + first; p < end; p++) {
      this.visit(p);
      join(before, p - 1, plan.driveAt[p - 1]!, this.service, this.open, this.last, before, p);
    }
    for (let p = base + last; p > base; p--) {
      this.visit(p);
      const { time, from, to } = after;
      set(after, p, this.service, this.open, this.last);
      join(after, p, plan.driveAt[p]!, time[p + 1]!, from[p + 1]!, to[p + 1]!, after, p);
    }
  }

  /** Least time of the route as it stands. */
  least(v: number): number {
    const { plan, before } = this;
    const n = plan.length[v]!;
    if (n === 0) return 0;
    const last = v * plan.stride + n;
    return this.closed(before.time[last]!, before.to[last]!, plan.driveAt[last]!, last + 1);
  }

  /** Least time with a visit of `service` begun from `open` to `last` after position p; drives to it and on from it. */
  leastWith(p: number, drive: number, service: number, open: number, last: number, onward: number): number {
    const { time, from, to } = this.before;
    const arrive = time[p]! + drive;
    const wait = Math.max(0, open - arrive - to[p]!);
    if (from[p]! + arrive > last) return Infinity;
    return this.closed(arrive + wait + service, Math.min(last - arrive, to[p]!), onward, p + 1);
  }

  private closed(time: number, to: number, drive: number, p: number): number {
    const { after } = this;
    const arrive = time + drive;
    return arrive + after.time[p]! + Math.max(0, after.from[p]! - arrive - to);
  }

  private service = 0;
  private open = 0;
  private last = 0;

  private visit(p: number): void {
    const { slotAt, minutesOf, opensOf, beginsByOf } = this.plan;
    const slot = slotAt[p]!;
    this.service = minutesOf[slot]!;
    this.open = opensOf[slot]!;
    this.last = beginsByOf[slot]!;
  }
}

/** @throws RangeError where a longest time meets what it is not worked out for */
export function checkLongest({ longest, lunchMinutes, latestReturn, shiftEnd }: Vehicles): void {
  if (longest === undefined) return;
  const isOff = longest.some((_, v) => lunchMinutes[v] !== 0 || latestReturn[v] !== shiftEnd[v]);
  if (isOff) throw new RangeError('a longest time away is for vehicles without lunch and overtime');
}

interface Pieces {
  readonly time: Int32Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
}

function pieces(cells: number): Pieces {
  return { time: new Int32Array(cells), from: new Int32Array(cells), to: new Int32Array(cells) };
}

function set({ time, from, to }: Pieces, p: number, least: number, first: number, latest: number): void {
  time[p] = least;
  from[p] = first;
  to[p] = latest;
}

/** Piece p of `head`, a drive, and another piece, put into `into` at q. */
function join(
  head: Pieces,
  p: number,
  drive: number,
  least: number,
  first: number,
  latest: number,
  into: Pieces,
  q: number,
): void {
  const arrive = head.time[p]! + drive;
  const wait = Math.max(0, first - arrive - head.to[p]!);
  const from = Math.max(first - arrive, head.from[p]!) - wait;
  const to = Math.min(latest - arrive, head.to[p]!);
  set(into, q, arrive + wait + least, from, to);
}
