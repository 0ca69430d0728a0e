import type { MenuBook } from './menu.js';

/** Row = from, column = to. */
export type Matrix = Int32Array | Uint16Array;

/** One entry per vehicle (a technician-day). Minutes count from one common instant. */
export interface Vehicles {
  readonly count: number;
  readonly startPlace: Int32Array;
  readonly endPlace: Int32Array;
  readonly shiftStart: Int32Array;
  readonly shiftEnd: Int32Array;
  /** Shift end plus the overtime allowed. */
  readonly latestReturn: Int32Array;
  /** 0 = no lunch; else lunch starts within [lunchFrom, lunchTo]. */
  readonly lunchMinutes: Int32Array;
  readonly lunchFrom: Int32Array;
  readonly lunchTo: Int32Array;
  /** Which arc-cost matrix applies. */
  readonly costClass: Int32Array;
  /** Vehicles of one kind are interchangeable while empty. */
  readonly kind: Int32Array;
  /** Cost units per minute of return past the shift end. */
  readonly overtimeCost: Int32Array;
  readonly capacity: Int32Array;
  readonly day: Int32Array;
  /**
   * Minutes between leaving and coming back, at most; the time of leaving is free within the shift. Left out = the shift
   * alone counts. Only for vehicles without lunch and overtime, and stops of one option and one window there.
   */
  readonly longest?: Int32Array;
}

/** One entry per stop. */
export interface Stops {
  readonly count: number;
  readonly place: Int32Array;
  readonly load: Int32Array;
  /** How many visits the stop may get at most. */
  readonly visits: Int32Array;
  /** Stops of one crowd share a limit on visits per day. */
  readonly crowd: Int32Array;
}

/**
 * A routing problem with optional stops: minimise arc cost + fixed cost of visits + overtime − worth of what is done.
 * All costs are integers in one unit of the caller's choice; all times are integer minutes (or any integer unit).
 */
export interface RoutingProblem {
  readonly places: number;
  /** May be asymmetric. */
  readonly minutes: Matrix;
  /** One matrix per cost class. */
  readonly arcCost: readonly Matrix[];
  readonly vehicles: Vehicles;
  readonly stops: Stops;
  readonly days: number;
  /** One entry per crowd: visits allowed on one day. */
  readonly visitsPerDay: Int32Array;
  /** Row = stop, column = vehicle: which window list applies, −1 = this vehicle cannot serve the stop. */
  readonly windowList: Int32Array | Int16Array;
  /** List l holds windows windowStart[l] … windowStart[l + 1] − 1, in order of time, not overlapping. */
  readonly windowStart: Int32Array;
  readonly windowOpen: Int32Array;
  /** Service begins at the latest then; equal to the close where only the end of service matters. */
  readonly windowLast: Int32Array;
  readonly windowClose: Int32Array;
  /** Row = stop, column = vehicle: cost of a visit whatever is done in it. */
  readonly fixedCost: Int32Array;
  readonly menus: MenuBook;
}

/** @returns the matrix with rows and columns exchanged */
export function transpose(matrix: Matrix, size: number): Matrix {
  const flipped = matrix.slice();
  for (let i = 0; i < size; i++) for (let j = 0; j < size; j++) flipped[j * size + i] = matrix[i * size + j]!;
  return flipped;
}

/** Whether every way costs as much as the way back. */
export function isOwnTranspose(matrix: Matrix, size: number): boolean {
  for (let i = 0; i < size; i++) {
    for (let j = i + 1; j < size; j++) if (matrix[i * size + j] !== matrix[j * size + i]) return false;
  }
  return true;
}

const gaps = new WeakMap<Matrix, number>();
/** Places from which on only some of them are looked at as the third. */
const MANY_PLACES = 250;

/** No route has more visits: so many of the shortest fill the longest shift without any drive. */
export function mostVisits({ stops, vehicles, menus }: RoutingProblem): number {
  const shortest = Array.from({ length: stops.count }, (_, s) =>
    Array<number>(stops.visits[s]!).fill(menus.least(s, 0)),
  )
    .flat()
    .sort((a, b) => a - b);
  let left = 0;
  for (let v = 0; v < vehicles.count; v++) left = Math.max(left, vehicles.latestReturn[v]! - vehicles.shiftStart[v]!);
  const tooMany = shortest.findIndex((minutes) => {
    left -= minutes;
    return left < 0;
  });
  return tooMany < 0 ? shortest.length : tooMany;
}

/** What a minute's drive costs, over all pairs of places; 1 where nothing takes time. */
export function costPerMinute({ minutes, arcCost }: RoutingProblem): number {
  const all = sumOf(minutes);
  return all > 0 ? sumOf(arcCost[0]!) / all : 1;
}

function sumOf(matrix: Matrix): number {
  let sum = 0;
  for (let k = 0; k < matrix.length; k++) sum += matrix[k]!;
  return sum;
}

/**
 * By how much a detour over a third place can be cheaper than the direct arc, at most:
 * max over i, k, j of c[i][j] − c[i][k] − c[k][j]; 0 when the triangle inequality holds. Beyond 250 places k runs over
 * 250 of them, evenly spread: the search may then give up a little too early now and then. Remembered by the matrix.
 */
export function triangleGap(cost: Matrix, size: number): number {
  const known = gaps.get(cost);
  if (known !== undefined) return known;
  let gap = 0;
  const step = Math.max(1, size / MANY_PLACES);
  const isSymmetric = isOwnTranspose(cost, size);
  for (let at = 0; at < size; at += step) {
    const k = Math.floor(at);
    for (let i = 0; i < size; i++) {
      const from = i * size;
      const over = k * size;
      let most = -Infinity;
      // There and back cost the same in a symmetric matrix: one of the two will do.
      for (let j = isSymmetric ? i + 1 : 0; j < size; j++) {
        const saved = cost[from + j]! - cost[over + j]!;
        if (saved > most) most = saved;
      }
      gap = Math.max(gap, most - cost[from + k]!);
    }
  }
  gaps.set(cost, gap);
  return gap;
}
