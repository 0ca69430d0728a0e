import type { RoutedVisit, WorkingPlan } from '../working-plan.js';
import type { ChoiceSolver } from './choice.js';
import type { PooledRoute } from './route-pool.js';

/**
 * Set partitioning over the pool: one route per vehicle (as many as there are of its kind), every unit of work at most
 * once, visits per stop and per crowd and day within their limits. What the present plan does and must be done stays done;
 * its price is left out of the costs, so that the numbers stay small.
 *
 * @returns routes of a cheaper plan, one entry per vehicle, or null
 * @source route-pool set partitioning after Subramanian, Uchoa & Ochi, Computers & OR 40 (2013), from memory
 */
export function chooseRoutes(
  plan: WorkingPlan,
  pool: readonly PooledRoute[],
  solve: ChoiceSolver,
): RoutedVisit[][] | null {
  const { problem } = plan;
  const { menus, vehicles, stops } = problem;
  const rows = new Map<string, { index: number; lower: number; upper: number }>();
  const row = (key: string, upper: number) => {
    let found = rows.get(key);
    if (!found) {
      found = { index: rows.size, lower: 0, upper };
      rows.set(key, found);
    }
    return found;
  };
  const kindSize = new Map<number, number>();
  for (const kind of vehicles.kind) kindSize.set(kind, (kindSize.get(kind) ?? 0) + 1);
  const rowsOf = ({ vehicle, visits }: { vehicle: number; visits: readonly RoutedVisit[] }) => {
    const kind = vehicles.kind[vehicle]!;
    const found = [row(`kind ${kind}`, kindSize.get(kind)!)];
    const perStop = new Map<number, number>();
    for (const { stop, token } of visits) {
      for (const unit of menus.units(stop, token)) found.push(row(`unit ${unit}`, 1));
      perStop.set(stop, (perStop.get(stop) ?? 0) + 1);
      const crowd = stops.crowd[stop]!;
      if (stops.visits[stop]! > 1) {
        found.push(row(`stop ${stop}`, stops.visits[stop]!));
        const day = vehicles.day[vehicle]!;
        found.push(row(`crowd ${crowd} ${day}`, problem.visitsPerDay[crowd]!));
      }
    }
    return found;
  };
  const priced = ({ cost, visits }: Pick<PooledRoute, 'cost' | 'visits'>) =>
    cost + visits.reduce((sum, visit) => sum + menus.mustPrice(visit.stop, visit.token), 0);

  const present: PooledRoute[] = Array.from(plan.length, (_, vehicle) => ({
    vehicle,
    cost: plan.routeCost(vehicle),
    visits: plan.route(vehicle),
  })).filter((route) => route.visits.length > 0);
  let below = 0;
  for (const route of present) {
    below += priced(route);
    rowsOf(route);
    for (const { stop, token } of route.visits) {
      for (const unit of menus.units(stop, token)) if (menus.isMust(unit)) row(`unit ${unit}`, 1).lower = 1;
    }
  }
  const columns = pool.map((route) => ({ route, rows: rowsOf(route) }));
  const start = new Int32Array(columns.length + 1);
  const indices: number[] = [];
  columns.forEach((column, j) => {
    for (const index of new Set(column.rows.map((each) => each.index))) indices.push(index);
    start[j + 1] = indices.length;
  });
  const all = [...rows.values()];
  const chosen = solve({
    cost: Float64Array.from(columns, ({ route }) => priced(route)),
    start,
    rows: Int32Array.from(indices),
    lower: Float64Array.from(all, (each) => each.lower),
    upper: Float64Array.from(all, (each) => each.upper),
    below,
  });
  if (chosen === null) return null;
  const routes: RoutedVisit[][] = Array.from(plan.length, () => []);
  const free = new Map<number, number[]>();
  for (let v = vehicles.count - 1; v >= 0; v--) {
    const kind = vehicles.kind[v]!;
    free.set(kind, [...(free.get(kind) ?? []), v]);
  }
  for (const j of chosen) {
    const { vehicle, visits } = columns[j]!.route;
    const kin = free.get(vehicles.kind[vehicle]!)!;
    const at = kin.indexOf(vehicle);
    routes[at >= 0 ? kin.splice(at, 1)[0]! : kin.pop()!] = visits;
  }
  return routes;
}
