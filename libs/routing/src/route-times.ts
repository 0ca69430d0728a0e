import {
  arrivalAfterLunch,
  departureBeforeLunch,
  earliestDeparture,
  IMPOSSIBLE,
  latestArrival,
  NEVER,
} from './schedule.js';
import type { WorkingPlan } from './working-plan.js';

/**
 * Works out the times along a route: earliest departures forwards, latest arrivals backwards, and overtime.
 *
 * @source forward and backward passes: M. W. P. Savelsbergh, The vehicle routing problem with time windows: minimizing
 *         route duration, ORSA Journal on Computing 4 (1992), from memory; extended by the lunch state
 */
export class RouteTimes {
  /** Per vehicle: 1 = no lunch and no overtime, so that one departure and one arrival per position say it all. */
  readonly isPlain: Uint8Array;

  constructor(private readonly plan: WorkingPlan) {
    const { lunchMinutes, latestReturn, shiftEnd } = plan.problem.vehicles;
    this.isPlain = Uint8Array.from(lunchMinutes, (minutes, v) =>
      minutes === 0 && latestReturn[v] === shiftEnd[v] ? 1 : 0,
    );
    plan.out0.fill(NEVER);
  }

  /**
   * Notes when a visit's service may begin, which goes by its minutes and vehicle. With several windows it goes by the
   * arrival too: then no begin is noted, and the windows are gone through each time.
   */
  noteBegin(slot: number, v: number): void {
    const { opensOf, beginsByOf, minutesOf, stopOf } = this.plan;
    const { vehicles, windowList, windowStart, windowOpen, windowLast, windowClose } = this.plan.problem;
    const list = windowList[stopOf[slot]! * vehicles.count + v]!;
    const window = windowStart[list]!;
    const isOnly = windowStart[list + 1] === window + 1;
    opensOf[slot] = isOnly ? windowOpen[window]! : NEVER;
    beginsByOf[slot] = isOnly ? Math.min(windowLast[window]!, windowClose[window]! - minutesOf[slot]!) : IMPOSSIBLE;
  }

  /**
   * @param first, last positions between which visits are new or gone: what lies before is known forwards, what lies
   *        behind backwards
   */
  refresh(v: number, first: number, last: number): void {
    const { plan } = this;
    const { shiftStart, shiftEnd, latestReturn, overtimeCost } = plan.problem.vehicles;
    const base = v * plan.stride;
    const n = plan.length[v]!;
    const isPlain = this.isPlain[v] === 1;
    if (isPlain) {
      plan.out1[base] = shiftStart[v]!;
      this.forwardPlain(v, first);
    } else {
      this.forward(v, first);
    }
    const regular = shiftEnd[v]!;
    const finish = this.backAt(v);
    const overtime = n > 0 && finish > regular ? finish - regular : 0;
    plan.cost += (overtime - plan.overtime[v]!) * overtimeCost[v]!;
    plan.overtime[v] = overtime;
    if (isPlain) {
      plan.late1[base + n + 1] = regular;
      this.backwardPlain(v, last);
      return;
    }
    const latest = latestReturn[v]!;
    this.backward(v, plan.late0, plan.late1, latest, last);
    if (latest > regular) this.backward(v, plan.reg0, plan.reg1, regular, last);
  }

  /** When the vehicle is back at the earliest; without lunch where it is back before lunch must start. */
  backAt(v: number): number {
    const { plan } = this;
    const { lunchMinutes, lunchTo } = plan.problem.vehicles;
    const end = v * plan.stride + plan.length[v]! + 1;
    const isBackFirst = lunchMinutes[v]! > 0 && plan.out0[end]! <= lunchTo[v]!;
    return isBackFirst ? plan.out0[end]! : plan.out1[end]!;
  }

  private forwardPlain(v: number, first: number): void {
    const { plan } = this;
    const { out1, slotAt, driveAt, minutesOf, opensOf, beginsByOf, positionOf } = plan;
    const base = v * plan.stride;
    const end = base + plan.length[v]! + 1;
    let out = out1[base + first - 1]!;
    for (let p = base + first; p < end; p++) {
      const slot = slotAt[p]!;
      positionOf[slot] = p - base;
      const arrival = out + driveAt[p - 1]!;
      const begin = Math.max(arrival, opensOf[slot]!);
      out = begin <= beginsByOf[slot]! ? begin + minutesOf[slot]! : this.departure(slot, v, arrival);
      out1[p] = out;
    }
    out1[end] = Math.min(out + driveAt[end - 1]!, NEVER);
  }

  private backwardPlain(v: number, last: number): void {
    const { plan } = this;
    const { late1, slotAt, driveAt, minutesOf, opensOf, beginsByOf } = plan;
    const base = v * plan.stride;
    let late = late1[base + last + 1]!;
    for (let p = base + last; p > base; p--) {
      const slot = slotAt[p]!;
      const leave = late - driveAt[p]!;
      const begin = Math.min(leave - minutesOf[slot]!, beginsByOf[slot]!);
      late = begin >= opensOf[slot]! ? begin : this.arrival(slot, v, leave);
      late1[p] = late;
    }
  }

  private forward(v: number, first: number): void {
    const { plan } = this;
    const { vehicles } = plan.problem;
    const { out0, out1, slotAt, driveAt, minutesOf, opensOf, beginsByOf, positionOf } = plan;
    const base = v * plan.stride;
    const end = base + plan.length[v]! + 1;
    const lunch = vehicles.lunchMinutes[v]!;
    const from = vehicles.lunchFrom[v]!;
    const to = vehicles.lunchTo[v]!;
    if (lunch > 0) out0[base] = vehicles.shiftStart[v]!;
    out1[base] = lunch > 0 ? NEVER : vehicles.shiftStart[v]!;
    for (let p = base + first; p <= end; p++) {
      const drive = driveAt[p - 1]!;
      let in0 = NEVER;
      let in1 = out1[p - 1]! + drive;
      if (lunch > 0) {
        in0 = out0[p - 1]! + drive;
        const rested = arrivalAfterLunch(out0[p - 1]!, drive, lunch, from, to);
        if (rested < in1) in1 = rested;
      }
      const slot = slotAt[p]!;
      if (slot < 0) {
        if (lunch > 0) out0[p] = Math.min(in0, NEVER);
        out1[p] = Math.min(in1, NEVER);
        continue;
      }
      positionOf[slot] = p - base;
      const open = opensOf[slot]!;
      const by = beginsByOf[slot]!;
      if (lunch > 0) {
        const begin0 = Math.max(in0, open);
        out0[p] = begin0 <= by ? begin0 + minutesOf[slot]! : this.departure(slot, v, in0);
      }
      const begin1 = Math.max(in1, open);
      out1[p] = begin1 <= by ? begin1 + minutesOf[slot]! : this.departure(slot, v, in1);
    }
  }

  /** Latest arrivals for a return by `by`. A route that is back before lunch must start needs none. */
  private backward(v: number, wait0: Int32Array, wait1: Int32Array, by: number, last: number): void {
    const { plan } = this;
    const { slotAt, driveAt, minutesOf, opensOf, beginsByOf } = plan;
    const { lunchMinutes, lunchFrom, lunchTo } = plan.problem.vehicles;
    const base = v * plan.stride;
    const lunch = lunchMinutes[v]!;
    const from = lunchFrom[v]!;
    const to = lunchTo[v]!;
    const end = base + plan.length[v]! + 1;
    wait1[end] = by;
    if (lunch > 0) wait0[end] = Math.min(to, by);
    for (let p = base + last; p > base; p--) {
      const slot = slotAt[p]!;
      const drive = driveAt[p]!;
      const service = minutesOf[slot]!;
      const open = opensOf[slot]!;
      const beginBy = beginsByOf[slot]!;
      const leave1 = wait1[p + 1]! - drive;
      const begin1 = Math.min(leave1 - service, beginBy);
      wait1[p] = begin1 >= open ? begin1 : this.arrival(slot, v, leave1);
      if (lunch === 0) continue;
      const leave0 = Math.max(wait0[p + 1]! - drive, departureBeforeLunch(wait1[p + 1]!, drive, lunch, from, to));
      const begin0 = Math.min(leave0 - service, beginBy);
      wait0[p] = begin0 >= open ? begin0 : this.arrival(slot, v, leave0);
    }
  }

  /** Earliest departure of a visit with several windows, or that comes too late. */
  private departure(slot: number, v: number, arrival: number): number {
    if (arrival >= NEVER) return NEVER;
    const { windowList, windowStart, windowOpen, windowLast, windowClose, vehicles } = this.plan.problem;
    const list = windowList[this.plan.stopOf[slot]! * vehicles.count + v]!;
    const service = this.plan.minutesOf[slot]!;
    const from = windowStart[list]!;
    return earliestDeparture(arrival, service, windowOpen, windowLast, windowClose, from, windowStart[list + 1]!);
  }

  /** Latest arrival at a visit with several windows, or that has to go before it can begin. */
  private arrival(slot: number, v: number, leave: number): number {
    const { windowList, windowStart, windowOpen, windowLast, windowClose, vehicles } = this.plan.problem;
    const list = windowList[this.plan.stopOf[slot]! * vehicles.count + v]!;
    const service = this.plan.minutesOf[slot]!;
    const from = windowStart[list]!;
    return latestArrival(leave, service, windowOpen, windowLast, windowClose, from, windowStart[list + 1]!);
  }
}
