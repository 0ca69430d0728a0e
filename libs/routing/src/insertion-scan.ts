import type { Menu } from './menu.js';
import { arrivalAfterLunch, departureBeforeLunch, earliestDeparture, NEVER } from './schedule.js';
import type { WorkingPlan } from './working-plan.js';

/**
 * Cheapest two insertions of a stop into one route, each with the best option of the stop's menu that fits there.
 * Δ = c[i][x] + c[x][j] − c[i][j] + fixed + overtime × Δminutes − worth(option), exact.
 *
 * Fits when one of four lunch placements works (before i, on i→x, on x→j, after j); with earliest departures from i
 * and latest arrivals at j at hand, each is a comparison. Overtime is simulated along the rest of the route, and only
 * where the insertion does not fit into the regular shift.
 *
 * With a `minutePrice`, insertions without lunch, overtime and choice cost that much more for every minute by which they
 * put the next start off beyond their own service: of two with the same detour the one that uses up waiting goes first.
 *
 * The result stays in the fields until the next scan; position −1 = none. Insertions that cost `limit` or more may be
 * missing from it: most offers cannot pay, and the drives alone often tell.
 *
 * @source the next start put off as part of the criterion: M. M. Solomon, Operations Research 35 (1987) 254–265,
 *         insertion heuristic I1 (from memory)
 */
export class InsertionScan {
  cost1 = Infinity;
  position1 = -1;
  option1 = -1;
  cost2 = Infinity;
  position2 = -1;
  option2 = -1;
  /** Cost units per minute; 0 = insertions are told at their exact cost. */
  minutePrice = 0;

  constructor(private readonly plan: WorkingPlan) {}

  /** @param ahead visits of the route that stay ahead of it: 0 = any place, the route's length = its end alone */
  scan(stop: number, v: number, limit = Infinity, ahead = 0): void {
    this.cost1 = Infinity;
    this.position1 = -1;
    this.cost2 = Infinity;
    this.position2 = -1;
    const { problem } = this.plan;
    const list = problem.windowList[stop * problem.vehicles.count + v]!;
    if (list < 0) return;
    const w0 = problem.windowStart[list]!;
    const w1 = problem.windowStart[list + 1]!;
    if (w0 === w1) return;
    const { menus } = problem;
    const open = this.plan.open[stop]!;
    const isPlain = this.plan.times.isPlain[v] === 1 && w1 === w0 + 1;
    // Told without the menu's own objects, which lie all over the memory.
    if (isPlain && menus.isSingle) {
      if (open === 0) this.scanPlain(stop, v, menus.least(stop, open), menus.ceiling(stop, open), w0, ahead);
      return;
    }
    if (!menus.isPrepared(stop, open, v) && !this.mayPay(stop, v, open, limit, w0, w1)) return;
    const menu = menus.menu(stop, open, v);
    if (menu.count === 0) return;
    if (isPlain && menu.count === 1) this.scanPlain(stop, v, menu.minutes[0]!, menu.worth[0]!, w0, ahead);
    else if (this.plan.span === null) this.scanFull(stop, v, menu, limit, w0, w1, ahead);
    else throw new RangeError('a longest time away wants one option and one window');
  }

  private scanPlain(stop: number, v: number, service: number, worth: number, window: number, ahead: number): void {
    const { plan } = this;
    const { problem, placeAt, arcAt, out1, late1, span } = plan;
    const { minutePrice } = this;
    const longest = problem.vehicles.longest?.[v] ?? 0;
    const P = problem.places;
    const row = problem.stops.place[stop]! * P;
    const cls = problem.vehicles.costClass[v]!;
    const arcs = plan.costTo[cls]!;
    const costFrom = plan.costFrom[cls]!;
    const { minutesTo, minutesFrom } = plan;
    const open = problem.windowOpen[window]!;
    const lastStart = Math.min(problem.windowLast[window]!, problem.windowClose[window]! - service);
    const base = v * plan.stride;
    const end = base + plan.length[v]!;
    const constant = plan.fixedCost(stop, v) - worth;
    let cost1 = Infinity;
    let cost2 = Infinity;
    let at1 = -1;
    let at2 = -1;
    for (let p = base + ahead; p <= end; p++) {
      const out = out1[p]!;
      if (out > lastStart) break;
      const late = late1[p + 1]!;
      if (Math.max(out, open) + service > late) continue;
      const before = row + placeAt[p]!;
      const arrival = out + minutesFrom[before]!;
      if (arrival > lastStart) continue;
      const after = row + placeAt[p + 1]!;
      const onward = Math.max(arrival, open) + service + minutesTo[after]!;
      if (onward <= late) {
        let delta = costFrom[before]! + arcs[after]! - arcAt[p]!;
        if (minutePrice > 0) delta += minutePrice * (this.pushBack(p, onward) - service);
        if (delta >= cost2) continue;
        if (span !== null) {
          const least = span.leastWith(p, minutesFrom[before]!, service, open, lastStart, minutesTo[after]!);
          if (least > longest) continue;
        }
        if (delta < cost1) {
          cost2 = cost1;
          at2 = at1;
          cost1 = delta;
          at1 = p;
        } else {
          cost2 = delta;
          at2 = p;
        }
      }
    }
    if (at1 >= 0) {
      this.cost1 = cost1 + constant;
      this.position1 = at1 - base;
      this.option1 = 0;
    }
    if (at2 >= 0) {
      this.cost2 = cost2 + constant;
      this.position2 = at2 - base;
      this.option2 = 0;
    }
  }

  private scanFull(stop: number, v: number, menu: Menu, limit: number, w0: number, w1: number, ahead: number): void {
    const { plan } = this;
    const { problem, placeAt, out0, out1, late0, late1 } = plan;
    const { windowClose, vehicles } = problem;
    const P = problem.places;
    const row = problem.stops.place[stop]! * P;
    const cls = vehicles.costClass[v]!;
    const arcs = plan.costTo[cls]!;
    const costFrom = plan.costFrom[cls]!;
    const lunch = vehicles.lunchMinutes[v]!;
    const from = vehicles.lunchFrom[v]!;
    const to = vehicles.lunchTo[v]!;
    const hasOvertime = vehicles.latestReturn[v]! > vehicles.shiftEnd[v]!;
    const reg0 = hasOvertime ? plan.reg0 : late0;
    const reg1 = hasOvertime ? plan.reg1 : late1;
    const rate = vehicles.overtimeCost[v]!;
    const constant = plan.fixedCost(stop, v) - plan.overtime[v]! * rate;
    const { minutes, worth } = menu;
    const most = worth[menu.count - 1]!;
    const lastStart = windowClose[w1 - 1]! - minutes[0]!;
    const base = v * plan.stride;
    const end = base + plan.length[v]!;
    for (let p = base + ahead; p <= end; p++) {
      if (Math.min(out0[p]!, out1[p]!) > lastStart) break;
      const before = placeAt[p]!;
      const after = placeAt[p + 1]!;
      const travel = constant + costFrom[row + before]! + arcs[row + after]! - plan.arcAt[p]!;
      if (travel - most >= Math.min(this.cost2, limit)) continue;
      const drive = plan.minutesFrom[row + before]!;
      const onward = plan.minutesTo[row + after]!;
      let in1 = out1[p]! + drive;
      let in0 = NEVER;
      if (lunch > 0) {
        in0 = out0[p]! + drive;
        const rested = arrivalAfterLunch(out0[p]!, drive, lunch, from, to);
        if (rested < in1) in1 = rested;
      }
      if (Math.min(in0, in1) > lastStart) continue;
      const by1 = late1[p + 1]! - onward;
      let by0 = NEVER;
      if (lunch > 0) {
        by0 = late0[p + 1]! - onward;
        const now = departureBeforeLunch(late1[p + 1]!, onward, lunch, from, to);
        if (now > by0) by0 = now;
      }
      const room = this.room(in0, in1, by0, by1, w0, w1, lunch);
      if (room < minutes[0]!) continue;
      let fits = largestWithin(minutes, menu.count, room);
      if (hasOvertime) {
        let regular = -1;
        let regularBy0 = NEVER;
        if (lunch > 0) {
          regularBy0 = reg0[p + 1]! - onward;
          const now = departureBeforeLunch(reg1[p + 1]!, onward, lunch, from, to);
          if (now > regularBy0) regularBy0 = now;
        }
        const regularRoom = this.room(in0, in1, regularBy0, reg1[p + 1]! - onward, w0, w1, lunch);
        if (regularRoom >= minutes[0]!) regular = largestWithin(minutes, menu.count, regularRoom);
        let bestOption = regular;
        let bestCost = regular >= 0 ? travel - worth[regular]! : Infinity;
        for (; fits > regular; fits--) {
          if (travel - worth[fits]! + rate >= Math.min(bestCost, limit)) break;
          const late = this.overtimeAfter(v, p, in0, in1, minutes[fits]!, onward, w0, w1);
          if (late < 0) continue;
          const cost = travel - worth[fits]! + late * rate;
          if (cost < bestCost) {
            bestCost = cost;
            bestOption = fits;
          }
        }
        if (bestOption >= 0) this.offer(bestCost, p - base, bestOption);
      } else {
        this.offer(travel - worth[fits]!, p - base, fits);
      }
    }
  }

  /** Whether the shortest service fits anywhere in the route where the most it can be worth pays for the detour. */
  private mayPay(stop: number, v: number, open: number, limit: number, w0: number, w1: number): boolean {
    const { plan } = this;
    const { vehicles, stops, menus, places: P } = plan.problem;
    const row = stops.place[stop]! * P;
    const cls = vehicles.costClass[v]!;
    const arcs = plan.costTo[cls]!;
    const costFrom = plan.costFrom[cls]!;
    const saved = plan.overtime[v]! * vehicles.overtimeCost[v]!;
    const most = menus.ceilingOn(stop, open, v) + saved - plan.fixedCost(stop, v);
    const least = menus.least(stop, open);
    const lunch = vehicles.lunchMinutes[v]!;
    const from = vehicles.lunchFrom[v]!;
    const to = vehicles.lunchTo[v]!;
    const base = v * plan.stride;
    const end = base + plan.length[v]!;
    for (let p = base; p <= end; p++) {
      const before = plan.placeAt[p]!;
      const after = plan.placeAt[p + 1]!;
      if (costFrom[row + before]! + arcs[row + after]! - plan.arcAt[p]! - most >= limit) continue;
      const drive = plan.minutesFrom[row + before]!;
      const onward = plan.minutesTo[row + after]!;
      let in1 = plan.out1[p]! + drive;
      let in0 = NEVER;
      let by0 = NEVER;
      if (lunch > 0) {
        in0 = plan.out0[p]! + drive;
        in1 = Math.min(in1, arrivalAfterLunch(plan.out0[p]!, drive, lunch, from, to));
        const now = departureBeforeLunch(plan.late1[p + 1]!, onward, lunch, from, to);
        by0 = Math.max(plan.late0[p + 1]! - onward, now);
      }
      if (this.room(in0, in1, by0, plan.late1[p + 1]! - onward, w0, w1, lunch) >= least) return true;
    }
    return false;
  }

  /** Minutes by which an arrival at the place after p puts the start there off. */
  private pushBack(p: number, arrival: number): number {
    const { slotAt, minutesOf, out1 } = this.plan;
    const slot = slotAt[p + 1]!;
    return Math.max(0, arrival - out1[p + 1]! + (slot < 0 ? 0 : minutesOf[slot]!));
  }

  private offer(cost: number, position: number, option: number): void {
    if (cost < this.cost1) {
      this.cost2 = this.cost1;
      this.position2 = this.position1;
      this.option2 = this.option1;
      this.cost1 = cost;
      this.position1 = position;
      this.option1 = option;
    } else if (cost < this.cost2) {
      this.cost2 = cost;
      this.position2 = position;
      this.option2 = option;
    }
  }

  /** Longest service that fits: max over windows and lunch states of min(close, by) − max(arrival, open). */
  private room(in0: number, in1: number, by0: number, by1: number, w0: number, w1: number, lunch: number): number {
    const { windowOpen, windowLast, windowClose } = this.plan.problem;
    let most = -1;
    for (let w = w0; w < w1; w++) {
      const open = windowOpen[w]!;
      const close = windowClose[w]!;
      const begin1 = Math.max(in1, open);
      if (begin1 <= windowLast[w]!) most = Math.max(most, Math.min(close, by1) - begin1);
      if (lunch > 0) {
        const begin0 = Math.max(in0, open);
        if (begin0 <= windowLast[w]!) most = Math.max(most, Math.min(close, by0) - begin0);
      }
    }
    return most;
  }

  /** Overtime minutes of the route with the visit inserted after position p; −1 when it cannot be driven at all. */
  private overtimeAfter(
    v: number,
    p: number,
    in0: number,
    in1: number,
    service: number,
    onward: number,
    w0: number,
    w1: number,
  ): number {
    const { plan } = this;
    const { windowOpen, windowLast, windowClose, windowStart, windowList, vehicles, places: P } = plan.problem;
    const lunch = vehicles.lunchMinutes[v]!;
    const from = vehicles.lunchFrom[v]!;
    const to = vehicles.lunchTo[v]!;
    const end = v * plan.stride + plan.length[v]! + 1;
    let dep0 = lunch > 0 ? earliestDeparture(in0, service, windowOpen, windowLast, windowClose, w0, w1) : NEVER;
    let dep1 = earliestDeparture(in1, service, windowOpen, windowLast, windowClose, w0, w1);
    let travel = onward;
    for (let q = p + 1; ; q++) {
      let at0 = NEVER;
      let at1 = dep1 + travel;
      if (lunch > 0) {
        at0 = dep0 + travel;
        const rested = arrivalAfterLunch(dep0, travel, lunch, from, to);
        if (rested < at1) at1 = rested;
      }
      if (q === end) {
        const finish = lunch > 0 && at0 <= to ? at0 : at1;
        if (finish > vehicles.latestReturn[v]!) return -1;
        return finish > vehicles.shiftEnd[v]! ? finish - vehicles.shiftEnd[v]! : 0;
      }
      const slot = plan.slotAt[q]!;
      const list = windowList[plan.stopOf[slot]! * vehicles.count + v]!;
      const u0 = windowStart[list]!;
      const u1 = windowStart[list + 1]!;
      const minutes = plan.minutesOf[slot]!;
      dep0 = at0 >= NEVER ? NEVER : earliestDeparture(at0, minutes, windowOpen, windowLast, windowClose, u0, u1);
      dep1 = at1 >= NEVER ? NEVER : earliestDeparture(at1, minutes, windowOpen, windowLast, windowClose, u0, u1);
      if (dep0 >= NEVER && dep1 >= NEVER) return -1;
      travel = plan.minutesTo[plan.placeAt[q]! * P + plan.placeAt[q + 1]!]!;
    }
  }
}

/** Index of the longest option of at most `room` minutes; the caller knows that the first one fits. */
function largestWithin(minutes: Int32Array, count: number, room: number): number {
  let low = 0;
  let high = count - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (minutes[middle]! <= room) low = middle;
    else high = middle - 1;
  }
  return low;
}
