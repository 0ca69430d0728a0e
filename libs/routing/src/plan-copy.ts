/** What a plan holds per route and position. */
export interface RouteArrays {
  length: Int32Array;
  load: Int32Array;
  overtime: Int32Array;
  slotAt: Int32Array;
  placeAt: Int32Array;
  arcAt: Int32Array;
  out0: Int32Array;
  out1: Int32Array;
  late0: Int32Array;
  late1: Int32Array;
  reg0: Int32Array;
  reg1: Int32Array;
}

/** Copies one route's cells, so many visits long, and what is kept per vehicle. */
export function copyRoute(from: RouteArrays, to: RouteArrays, v: number, stride: number, length: number): void {
  to.length[v] = from.length[v]!;
  to.load[v] = from.load[v]!;
  to.overtime[v] = from.overtime[v]!;
  const base = v * stride;
  for (let p = base; p <= base + length + 1; p++) {
    to.slotAt[p] = from.slotAt[p]!;
    to.placeAt[p] = from.placeAt[p]!;
    to.arcAt[p] = from.arcAt[p]!;
    to.out0[p] = from.out0[p]!;
    to.out1[p] = from.out1[p]!;
    to.late0[p] = from.late0[p]!;
    to.late1[p] = from.late1[p]!;
    to.reg0[p] = from.reg0[p]!;
    to.reg1[p] = from.reg1[p]!;
  }
}

/** What a plan holds per visit. */
export interface SlotArrays {
  routeOf: Int32Array;
  minutesOf: Int32Array;
  worthOf: Float64Array;
  tokenOf: Int32Array;
}

export function copySlot(from: SlotArrays, to: SlotArrays, x: number): void {
  to.routeOf[x] = from.routeOf[x]!;
  to.minutesOf[x] = from.minutesOf[x]!;
  to.worthOf[x] = from.worthOf[x]!;
  to.tokenOf[x] = from.tokenOf[x]!;
}
