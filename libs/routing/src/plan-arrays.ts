export interface PlanSize {
  vehicles: number;
  /** Cells of each route: its visits at most, the start place, and the end place. */
  stride: number;
  /** Visits of all stops at most. */
  slots: number;
  stops: number;
}

/**
 * What a plan holds: all routes in flat arrays, position 0 = start place, length + 1 = end place.
 * Per position: earliest departures without and with lunch taken (`out0`, `out1`), latest arrivals with lunch still
 * to come and already taken, once with overtime (`late0`, `late1`) and once without (`reg0`, `reg1`).
 */
export class PlanArrays {
  readonly length: Int32Array;
  readonly load: Int32Array;
  /** Minutes of overtime per route. */
  readonly overtime: Int32Array;

  readonly slotAt: Int32Array;
  readonly placeAt: Int32Array;
  /** Cost of the arc to the next position; 0 in an empty route, which is not driven. */
  readonly arcAt: Int32Array;
  /** Minutes of the drive to the next position. */
  readonly driveAt: Int32Array;
  readonly out0: Int32Array;
  readonly out1: Int32Array;
  readonly late0: Int32Array;
  readonly late1: Int32Array;
  readonly reg0: Int32Array;
  readonly reg1: Int32Array;

  /** Per slot: its route (−1 = not placed), service minutes, worth and token. */
  readonly routeOf: Int32Array;
  readonly minutesOf: Int32Array;
  /** Per slot: when its service may begin, from and to; see `RouteTimes.noteBegin`. */
  readonly opensOf: Int32Array;
  readonly beginsByOf: Int32Array;
  readonly worthOf: Float64Array;
  readonly tokenOf: Int32Array;

  /** Per stop: what is open there. */
  readonly open: Int32Array;

  constructor({ vehicles, stride, slots, stops }: PlanSize) {
    const ints = (n: number) => new Int32Array(n);
    const cells = vehicles * stride;
    this.length = ints(vehicles);
    this.load = ints(vehicles);
    this.overtime = ints(vehicles);
    this.slotAt = ints(cells).fill(-1);
    this.placeAt = ints(cells);
    this.arcAt = ints(cells);
    this.driveAt = ints(cells);
    this.out0 = ints(cells);
    this.out1 = ints(cells);
    this.late0 = ints(cells);
    this.late1 = ints(cells);
    this.reg0 = ints(cells);
    this.reg1 = ints(cells);
    this.routeOf = ints(slots).fill(-1);
    this.minutesOf = ints(slots);
    this.opensOf = ints(slots);
    this.beginsByOf = ints(slots);
    this.worthOf = new Float64Array(slots);
    this.tokenOf = ints(slots);
    this.open = ints(stops);
  }
}

/** Copies one route: what is kept per vehicle, and the cells of so many visits; of a plain one, the times it has. */
export function copyRoute(
  from: PlanArrays,
  to: PlanArrays,
  v: number,
  base: number,
  length: number,
  isPlain: boolean,
): void {
  to.length[v] = from.length[v]!;
  to.load[v] = from.load[v]!;
  to.overtime[v] = from.overtime[v]!;
  const end = base + length + 1;
  copyCells(from.slotAt, to.slotAt, base, end);
  copyCells(from.placeAt, to.placeAt, base, end);
  copyCells(from.arcAt, to.arcAt, base, end);
  copyCells(from.driveAt, to.driveAt, base, end);
  copyCells(from.out1, to.out1, base, end);
  copyCells(from.late1, to.late1, base, end);
  if (isPlain) return;
  copyCells(from.out0, to.out0, base, end);
  copyCells(from.late0, to.late0, base, end);
  copyCells(from.reg0, to.reg0, base, end);
  copyCells(from.reg1, to.reg1, base, end);
}

/** A loop: for so few cells it is faster than the arrays' own copying. */
function copyCells(from: Int32Array, to: Int32Array, first: number, last: number): void {
  for (let p = first; p <= last; p++) to[p] = from[p]!;
}

export function copySlot(from: PlanArrays, to: PlanArrays, x: number): void {
  to.routeOf[x] = from.routeOf[x]!;
  to.minutesOf[x] = from.minutesOf[x]!;
  to.opensOf[x] = from.opensOf[x]!;
  to.beginsByOf[x] = from.beginsByOf[x]!;
  to.worthOf[x] = from.worthOf[x]!;
  to.tokenOf[x] = from.tokenOf[x]!;
}
