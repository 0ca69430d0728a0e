import type { RoutingProblem } from '../problem.js';

export interface PlainVisit {
  stop: number;
  minutes: number;
  worth: number;
}

/**
 * Cost of one route by trying every leg for lunch, and none; Infinity when it cannot be driven.
 * Written apart from the engine, minute by minute, as its oracle.
 */
export function routeCost(problem: RoutingProblem, v: number, visits: readonly PlainVisit[]): number {
  if (visits.length === 0) return 0;
  const { vehicles: fleet, stops, places } = problem;
  const path = [fleet.startPlace[v]!, ...visits.map((visit) => stops.place[visit.stop]!), fleet.endPlace[v]!];
  let cost = 0;
  for (let leg = 1; leg < path.length; leg++) {
    cost += problem.arcCost[fleet.costClass[v]!]![path[leg - 1]! * places + path[leg]!]!;
  }
  for (const visit of visits) cost += problem.fixedCost[visit.stop * fleet.count + v]! - visit.worth;
  const lunch = fleet.lunchMinutes[v]!;
  let earliest = Infinity;
  for (let lunchLeg = lunch > 0 ? -1 : 0; lunchLeg < (lunch > 0 ? path.length - 1 : 1); lunchLeg++) {
    const back = drive(problem, v, visits, path, lunch > 0 ? lunchLeg : -1);
    if (lunchLeg === -1 && lunch > 0 && back > fleet.lunchTo[v]!) continue;
    earliest = Math.min(earliest, back);
  }
  if (earliest > fleet.latestReturn[v]!) return Infinity;
  if (fleet.longest && leastAway(problem, v, visits, path) > fleet.longest[v]!) return Infinity;
  return cost + Math.max(0, earliest - fleet.shiftEnd[v]!) * fleet.overtimeCost[v]!;
}

/** Least time away over all minutes of leaving, tried one by one. */
function leastAway(problem: RoutingProblem, v: number, visits: readonly PlainVisit[], path: number[]): number {
  const { shiftStart, latestReturn } = problem.vehicles;
  let least = Infinity;
  for (let leave = shiftStart[v]!; leave <= latestReturn[v]!; leave++) {
    const back = drive(problem, v, visits, path, -1, leave);
    if (back <= latestReturn[v]!) least = Math.min(least, back - leave);
  }
  return least;
}

function drive(
  problem: RoutingProblem,
  v: number,
  visits: readonly PlainVisit[],
  path: number[],
  lunchLeg: number,
  leave = problem.vehicles.shiftStart[v]!,
) {
  const { vehicles: fleet, windowList, windowStart, windowOpen, windowLast, windowClose } = problem;
  let time = leave;
  for (let leg = 0; leg < path.length - 1; leg++) {
    const travel = problem.minutes[path[leg]! * problem.places + path[leg + 1]!]!;
    if (leg === lunchLeg) {
      if (time > fleet.lunchTo[v]!) return Infinity;
      time = Math.max(time + travel, fleet.lunchFrom[v]!) + fleet.lunchMinutes[v]!;
    } else {
      time += travel;
    }
    const visit = visits[leg];
    if (!visit) break;
    const list = windowList[visit.stop * fleet.count + v]!;
    if (list < 0) return Infinity;
    let done = Infinity;
    for (let w = windowStart[list]!; w < windowStart[list + 1]!; w++) {
      const begin = Math.max(time, windowOpen[w]!);
      if (begin <= windowLast[w]! && begin + visit.minutes <= windowClose[w]!)
        done = Math.min(done, begin + visit.minutes);
    }
    if (done === Infinity) return Infinity;
    time = done;
  }
  return time;
}

/** Cost of all routes. */
export function planCost(problem: RoutingProblem, routes: readonly (readonly PlainVisit[])[]): number {
  return routes.reduce((sum, visits, v) => sum + routeCost(problem, v, visits), 0);
}

/** Cheapest plan of all, by trying every choice of stops, vehicles, orders and options. Only for a handful of stops. */
export function cheapestPlan(problem: RoutingProblem): number {
  const { vehicles, stops, menus } = problem;
  const single: PlainVisit[][] = Array.from({ length: stops.count }, (_, stop) => {
    const menu = menus.menu(stop, 0, 0);
    return Array.from({ length: menu.count }, (_, k) => ({
      stop,
      minutes: menu.minutes[k]!,
      worth: menu.worth[k]!,
    }));
  });
  // best[v][mask]: cheapest route of vehicle v over exactly these stops.
  const best = Array.from({ length: vehicles.count }, (_, v) => {
    const cost = new Float64Array(1 << stops.count).fill(Infinity);
    cost[0] = 0;
    const extend = (mask: number, route: PlainVisit[]) => {
      for (let s = 0; s < stops.count; s++) {
        if (mask & (1 << s)) continue;
        for (const visit of single[s]!) {
          const longer = [...route, visit];
          const price = routeCost(problem, v, longer);
          if (price === Infinity && drive(problem, v, longer, pathOf(problem, v, longer), -1) === Infinity) continue;
          cost[mask | (1 << s)] = Math.min(cost[mask | (1 << s)]!, price);
          extend(mask | (1 << s), longer);
        }
      }
    };
    extend(0, []);
    return cost;
  });
  let total = best[0]!;
  for (let v = 1; v < vehicles.count; v++) {
    const next = new Float64Array(total.length).fill(Infinity);
    for (let mask = 0; mask < total.length; mask++) {
      for (let part = mask; ; part = (part - 1) & mask) {
        next[mask] = Math.min(next[mask]!, total[mask ^ part]! + best[v]![part]!);
        if (part === 0) break;
      }
    }
    total = next;
  }
  return Math.min(...total);
}

function pathOf(problem: RoutingProblem, v: number, visits: readonly PlainVisit[]): number[] {
  const { startPlace, endPlace } = problem.vehicles;
  return [startPlace[v]!, ...visits.map((visit) => problem.stops.place[visit.stop]!), endPlace[v]!];
}
