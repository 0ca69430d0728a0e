import { copyRoute, copySlot, PlanArrays, type PlanSize } from './plan-arrays.js';
import type { Matrix, RoutingProblem } from './problem.js';
import { isOwnTranspose, mostVisits, transpose } from './problem.js';
import { RouteRoom } from './route-room.js';
import { checkLongest, RouteSpan } from './route-span.js';
import { RouteTimes } from './route-times.js';

/** Which route and position a visit stands at, and what is done in it. */
export interface RoutedVisit {
  stop: number;
  minutes: number;
  worth: number;
  token: number;
}

/**
 * The plan under construction. A second copy of its arrays holds the last accepted plan; `rollback` and `commit` copy
 * touched routes only.
 */
export class WorkingPlan extends PlanArrays {
  readonly stride: number;
  readonly slotCount: number;
  /** First slot of each stop; slots of stop s are firstSlot[s] … firstSlot[s + 1] − 1. */
  readonly firstSlot: Int32Array;
  readonly stopOf: Int32Array;
  /** Per slot: its position in its route. */
  readonly positionOf: Int32Array;
  /** Row = crowd, column = day: visits placed. */
  readonly crowdDay: Int32Array;
  /** Per vehicle: 1 = takes no visits for now. */
  readonly closed: Uint8Array;
  /** Bumped whenever a route is committed with a change. */
  readonly version: Int32Array;

  readonly minutesTo: Matrix;
  readonly minutesFrom: Matrix;
  readonly costTo: readonly Matrix[];
  readonly costFrom: readonly Matrix[];
  /** Only where vehicles have a longest time away. */
  readonly span: RouteSpan | null;
  readonly times: RouteTimes;
  readonly room: RouteRoom;

  cost = 0;
  private committedCost = 0;
  /** Routes changed by accepted changes so far. */
  changeCount = 0;
  /** The latest of them, in turn. */
  private readonly changes: Int32Array;

  readonly touchedRoutes: Int32Array;
  touchedRouteCount = 0;
  /** Routes with visits that are as they were accepted. */
  untouchedCount = 0;
  readonly routeTouched: Uint8Array;
  readonly touchedStops: Int32Array;
  touchedStopCount = 0;
  private readonly stopTouched: Uint8Array;

  private readonly kept: PlanArrays;
  /** Where all are 0 the table is not read: it would only keep others from the processor. */
  private readonly hasFixedCosts: boolean;

  constructor(readonly problem: RoutingProblem) {
    const { stops, vehicles } = problem;
    const size = sizeOf(problem);
    super(size);
    checkLongest(vehicles);
    this.kept = new PlanArrays(size);
    this.hasFixedCosts = problem.fixedCost.some((cost) => cost !== 0);
    this.stride = size.stride;
    this.slotCount = size.slots;
    const ints = (n: number) => new Int32Array(n);
    this.firstSlot = ints(stops.count + 1);
    for (let s = 0; s < stops.count; s++) this.firstSlot[s + 1] = this.firstSlot[s]! + stops.visits[s]!;
    this.stopOf = ints(this.slotCount);
    for (let s = 0; s < stops.count; s++) this.stopOf.fill(s, this.firstSlot[s]!, this.firstSlot[s + 1]!);
    this.version = ints(vehicles.count);
    this.changes = ints(Math.max(1, vehicles.count));
    this.positionOf = ints(this.slotCount);
    this.crowdDay = ints(problem.visitsPerDay.length * problem.days);
    this.closed = new Uint8Array(vehicles.count);
    this.minutesTo = problem.minutes;
    this.minutesFrom = turned(problem.minutes, problem.places);
    this.costTo = problem.arcCost;
    this.costFrom = problem.arcCost.map((matrix) =>
      matrix === problem.minutes ? this.minutesFrom : turned(matrix, problem.places),
    );
    this.span = vehicles.longest ? new RouteSpan(this) : null;
    this.times = new RouteTimes(this);
    this.room = new RouteRoom(this);
    this.touchedRoutes = ints(vehicles.count);
    this.routeTouched = new Uint8Array(vehicles.count);
    this.touchedStops = ints(stops.count);
    this.stopTouched = new Uint8Array(stops.count);
    for (let v = 0; v < vehicles.count; v++) {
      this.layOut(v);
      this.accept(v);
    }
  }

  private layOut(v: number): void {
    const base = v * this.stride;
    this.placeAt[base] = this.problem.vehicles.startPlace[v]!;
    this.placeAt[base + this.length[v]! + 1] = this.problem.vehicles.endPlace[v]!;
    this.slotAt[base + this.length[v]! + 1] = -1;
    for (let p = base; p <= base + this.length[v]!; p++) this.setArc(v, p);
    this.refresh(v);
  }

  /** Notes the drive from cell p on; an empty route is not driven. */
  private setArc(v: number, p: number): void {
    const arc = this.placeAt[p]! * this.problem.places + this.placeAt[p + 1]!;
    this.arcAt[p] = this.length[v]! > 0 ? this.costTo[this.problem.vehicles.costClass[v]!]![arc]! : 0;
    this.driveAt[p] = this.minutesTo[arc]!;
  }

  touchRoute(v: number): void {
    if (this.routeTouched[v] === 1) return;
    this.routeTouched[v] = 1;
    if (this.length[v]! > 0) this.untouchedCount--;
    this.touchedRoutes[this.touchedRouteCount++] = v;
  }

  private touchStop(s: number): void {
    if (this.stopTouched[s] === 1) return;
    this.stopTouched[s] = 1;
    this.touchedStops[this.touchedStopCount++] = s;
  }

  /** An unused slot of the stop, or −1. */
  freeSlot(stop: number): number {
    for (let x = this.firstSlot[stop]!; x < this.firstSlot[stop + 1]!; x++) if (this.routeOf[x]! < 0) return x;
    return -1;
  }

  /** Cost of a visit whatever is done in it. */
  fixedCost(stop: number, v: number): number {
    return this.hasFixedCosts ? this.problem.fixedCost[stop * this.problem.vehicles.count + v]! : 0;
  }

  /** Whether crowd limit, capacity and "once per route" let the vehicle take another visit to the stop. */
  admits(stop: number, v: number): boolean {
    if (this.closed[v] === 1) return false;
    const { stops, vehicles, visitsPerDay, days } = this.problem;
    const crowd = stops.crowd[stop]!;
    const placed = this.crowdDay[crowd * days + vehicles.day[v]!]!;
    if (placed > 0) {
      if (placed >= visitsPerDay[crowd]!) return false;
      for (let x = this.firstSlot[stop]!; x < this.firstSlot[stop + 1]!; x++) if (this.routeOf[x] === v) return false;
    }
    return this.load[v]! + stops.load[stop]! <= vehicles.capacity[v]! && this.length[v]! + 2 < this.stride;
  }

  /** Puts a visit after `position` of the route; the caller has checked that it fits. */
  insert(slot: number, v: number, position: number, option: number): void {
    const { stops, menus, vehicles, days } = this.problem;
    const stop = this.stopOf[slot]!;
    this.touchRoute(v);
    this.touchStop(stop);
    const open = this.open[stop]!;
    if (menus.isSingle) {
      this.minutesOf[slot] = menus.least(stop, open);
      this.worthOf[slot] = menus.ceiling(stop, open);
    } else {
      const menu = menus.menu(stop, open, v);
      this.minutesOf[slot] = menu.minutes[option]!;
      this.worthOf[slot] = menu.worth[option]!;
    }
    this.tokenOf[slot] = menus.token(stop, open, v, option);
    this.open[stop] = menus.take(stop, open, this.tokenOf[slot]!);
    this.routeOf[slot] = v;
    this.times.noteBegin(slot, v);
    this.crowdDay[stops.crowd[stop]! * days + vehicles.day[v]!]!++;
    const p = v * this.stride + position;
    this.cost += this.fixedCost(stop, v) - this.worthOf[slot]! - this.arcAt[p]!;
    this.shift(v, p + 1, v * this.stride + this.length[v]! + 1, 1);
    this.slotAt[p + 1] = slot;
    this.placeAt[p + 1] = stops.place[stop]!;
    this.length[v]!++;
    this.load[v]! += stops.load[stop]!;
    this.setArc(v, p);
    this.setArc(v, p + 1);
    this.cost += this.arcAt[p]! + this.arcAt[p + 1]!;
    this.refresh(v, position + 1, position + 1);
  }

  /** Takes `count` visits out of the route, from `position` on. Timing is for the caller's `refresh` after the last run. */
  removeRun(v: number, position: number, count: number): void {
    const { stops, menus, vehicles, days } = this.problem;
    this.touchRoute(v);
    const base = v * this.stride;
    for (let p = position; p < position + count; p++) {
      const slot = this.slotAt[base + p]!;
      const stop = this.stopOf[slot]!;
      this.touchStop(stop);
      this.open[stop] = menus.giveBack(stop, this.open[stop]!, this.tokenOf[slot]!);
      this.cost += this.worthOf[slot]! - this.fixedCost(stop, v);
      this.routeOf[slot] = -1;
      this.crowdDay[stops.crowd[stop]! * days + vehicles.day[v]!]!--;
      this.load[v]! -= stops.load[stop]!;
    }
    for (let p = position - 1; p < position + count; p++) this.cost -= this.arcAt[base + p]!;
    this.shift(v, base + position + count, base + this.length[v]! + 1, -count);
    this.length[v]! -= count;
    this.setArc(v, base + position - 1);
    this.cost += this.arcAt[base + position - 1]!;
  }

  /** Moves what stands at cells `from` to `to` of a route, with what is known of the way on from there. */
  private shift(v: number, from: number, to: number, by: number): void {
    const { slotAt, placeAt, arcAt, driveAt, late0, late1, reg0, reg1 } = this;
    const { lunchMinutes, latestReturn, shiftEnd } = this.problem.vehicles;
    const hasLunch = lunchMinutes[v]! > 0;
    const hasOvertime = latestReturn[v]! > shiftEnd[v]!;
    const step = by > 0 ? -1 : 1;
    for (let p = by > 0 ? to : from; p >= from && p <= to; p += step) {
      const q = p + by;
      slotAt[q] = slotAt[p]!;
      placeAt[q] = placeAt[p]!;
      arcAt[q] = arcAt[p]!;
      driveAt[q] = driveAt[p]!;
      late1[q] = late1[p]!;
      if (hasLunch) late0[q] = late0[p]!;
      if (hasOvertime) {
        reg1[q] = reg1[p]!;
        if (hasLunch) reg0[q] = reg0[p]!;
      }
    }
    this.span?.shift(from, to, by);
  }

  /**
   * Recomputes timing, overtime and room of a route.
   *
   * @param first, last positions between which visits are new or gone: what lies before is known forwards, what lies
   *        behind backwards
   */
  refresh(v: number, first = 1, last = this.length[v]!): void {
    this.times.refresh(v, first, last);
    this.span?.refresh(v, first, last);
    this.room.refresh(v);
  }

  /** Whether a route as it stands can be driven. */
  isFeasible(v: number): boolean {
    const { vehicles: fleet } = this.problem;
    const end = v * this.stride + this.length[v]! + 1;
    const latest = fleet.latestReturn[v]!;
    if (this.span !== null && this.span.least(v) > fleet.longest![v]!) return false;
    if (this.out1[end]! <= latest) return true;
    return fleet.lunchMinutes[v]! > 0 && this.out0[end]! <= Math.min(latest, fleet.lunchTo[v]!);
  }

  /** Whether the routes changed since the accepted plan can be driven: without a stop on the way, another may be too far. */
  isDrivable(): boolean {
    for (let k = 0; k < this.touchedRouteCount; k++) if (!this.isFeasible(this.touchedRoutes[k]!)) return false;
    return true;
  }

  /** The route of the k-th accepted change; only as many as there are vehicles are remembered. */
  changed(k: number): number {
    return this.changes[k % this.changes.length]!;
  }

  /**
   * Makes the present plan the accepted one. Of the routes taken up about half end as they were.
   *
   * @returns whether any route has changed
   */
  commit(): boolean {
    const { kept } = this;
    const before = this.changeCount;
    for (let k = 0; k < this.touchedRouteCount; k++) {
      const v = this.touchedRoutes[k]!;
      this.routeTouched[v] = 0;
      if (this.length[v]! > 0) this.untouchedCount++;
      if (this.isAsAccepted(v)) continue;
      this.accept(v);
      this.changes[this.changeCount % this.changes.length] = v;
      this.version[v] = ++this.changeCount;
    }
    for (let k = 0; k < this.touchedStopCount; k++) {
      const s = this.touchedStops[k]!;
      kept.open[s] = this.open[s]!;
      for (let x = this.firstSlot[s]!; x < this.firstSlot[s + 1]!; x++) copySlot(this, kept, x);
      this.stopTouched[s] = 0;
    }
    this.touchedRouteCount = 0;
    this.touchedStopCount = 0;
    this.committedCost = this.cost;
    return this.changeCount > before;
  }

  private accept(v: number): void {
    copyRoute(this, this.kept, v, v * this.stride, this.length[v]!, this.times.isPlain[v] === 1);
    this.room.accept(v);
  }

  /** Whether the route has the same visits in the same order, with the same work, as the accepted one. */
  private isAsAccepted(v: number): boolean {
    const { kept, slotAt, minutesOf, worthOf, tokenOf } = this;
    const n = this.length[v]!;
    if (n !== kept.length[v]) return false;
    const base = v * this.stride;
    for (let p = base + 1; p <= base + n; p++) {
      const x = slotAt[p]!;
      if (x !== kept.slotAt[p] || minutesOf[x] !== kept.minutesOf[x]) return false;
      if (worthOf[x] !== kept.worthOf[x] || tokenOf[x] !== kept.tokenOf[x]) return false;
    }
    return true;
  }

  /** Returns to the accepted plan. */
  rollback(): void {
    const { kept, stride } = this;
    const { stops, vehicles, days } = this.problem;
    for (let k = 0; k < this.touchedStopCount; k++) {
      const s = this.touchedStops[k]!;
      const row = stops.crowd[s]! * days;
      this.open[s] = kept.open[s]!;
      for (let x = this.firstSlot[s]!; x < this.firstSlot[s + 1]!; x++) {
        if (this.routeOf[x]! >= 0) this.crowdDay[row + vehicles.day[this.routeOf[x]!]!]!--;
        copySlot(kept, this, x);
        if (this.routeOf[x]! >= 0) this.crowdDay[row + vehicles.day[this.routeOf[x]!]!]!++;
      }
      this.stopTouched[s] = 0;
    }
    for (let k = 0; k < this.touchedRouteCount; k++) {
      const v = this.touchedRoutes[k]!;
      const base = v * stride;
      copyRoute(kept, this, v, base, kept.length[v]!, this.times.isPlain[v] === 1);
      for (let p = 1; p <= this.length[v]!; p++) this.positionOf[this.slotAt[base + p]!] = p;
      this.span?.refresh(v, 1, this.length[v]!);
      this.room.restore(v);
      this.routeTouched[v] = 0;
      if (this.length[v]! > 0) this.untouchedCount++;
    }
    this.touchedRouteCount = 0;
    this.touchedStopCount = 0;
    this.cost = this.committedCost;
  }

  /** Routes in driving order, as plain objects. */
  routes(): RoutedVisit[][] {
    return Array.from(this.length, (_, v) => this.route(v));
  }

  route(v: number): RoutedVisit[] {
    return Array.from({ length: this.length[v]! }, (_, p) => {
      const slot = this.slotAt[v * this.stride + p + 1]!;
      return {
        stop: this.stopOf[slot]!,
        minutes: this.minutesOf[slot]!,
        worth: this.worthOf[slot]!,
        token: this.tokenOf[slot]!,
      };
    });
  }

  /** Arcs, fixed costs and overtime of one route, less the worth of what is done. */
  routeCost(v: number): number {
    const n = this.length[v]!;
    if (n === 0) return 0;
    const { vehicles } = this.problem;
    const base = v * this.stride;
    let cost = this.overtime[v]! * vehicles.overtimeCost[v]!;
    for (let p = base; p <= base + n; p++) cost += this.arcAt[p]!;
    for (let p = base + 1; p <= base + n; p++) {
      const slot = this.slotAt[p]!;
      cost += this.fixedCost(this.stopOf[slot]!, v) - this.worthOf[slot]!;
    }
    return cost;
  }

  /**
   * Puts other routes in place of the present ones and accepts them. Visits that stay in their vehicle keep their slot.
   */
  replaceRoutes(routes: readonly (readonly RoutedVisit[])[]): void {
    const { stops, vehicles, days, menus } = this.problem;
    this.rollback();
    const wasIn = this.routeOf.slice();
    for (let v = 0; v < vehicles.count; v++) {
      if (this.length[v]! === 0) continue;
      this.touchRoute(v);
      this.removeRun(v, 1, this.length[v]!);
      this.refresh(v);
    }
    const taken = new Uint8Array(this.slotCount);
    const slotFor = (stop: number, v: number): number => {
      let spare = -1;
      for (let x = this.firstSlot[stop]!; x < this.firstSlot[stop + 1]!; x++) {
        if (taken[x] === 1) continue;
        if (wasIn[x] === v) return x;
        if (spare < 0) spare = x;
      }
      return spare;
    };
    routes.forEach((visits, v) => {
      if (visits.length === 0) return;
      this.touchRoute(v);
      const base = v * this.stride;
      visits.forEach(({ stop, minutes, worth, token }, k) => {
        const slot = slotFor(stop, v);
        taken[slot] = 1;
        this.touchStop(stop);
        this.minutesOf[slot] = minutes;
        this.worthOf[slot] = worth;
        this.tokenOf[slot] = token;
        this.open[stop] = menus.take(stop, this.open[stop]!, token);
        this.routeOf[slot] = v;
        this.times.noteBegin(slot, v);
        this.crowdDay[stops.crowd[stop]! * days + vehicles.day[v]!]!++;
        this.load[v]! += stops.load[stop]!;
        this.slotAt[base + k + 1] = slot;
        this.placeAt[base + k + 1] = stops.place[stop]!;
        this.cost += this.fixedCost(stop, v) - worth;
      });
      this.length[v] = visits.length;
      this.layOut(v);
      for (let p = base; p <= base + visits.length; p++) this.cost += this.arcAt[p]!;
    });
    this.commit();
  }
}

function sizeOf(problem: RoutingProblem): PlanSize {
  const { stops, vehicles } = problem;
  const most = Math.max(60, Math.floor(8_000_000 / Math.max(1, vehicles.count)));
  return {
    vehicles: vehicles.count,
    stride: Math.min(mostVisits(problem), most) + 2,
    slots: stops.visits.reduce((sum, visits) => sum + visits, 0),
    stops: stops.count,
  };
}

/** The transposed matrix; a symmetric one is its own, and one copy of it stays closer to the processor than two. */
function turned(matrix: Matrix, n: number): Matrix {
  return isOwnTranspose(matrix, n) ? matrix : transpose(matrix, n);
}
