import type { RoutingProblem } from './problem.js';

/**
 * For each stop all stops by rising distance, itself first; distance = min of both directions, ties by number.
 *
 * @param reach how many neighbours to keep
 * @returns row = stop, `reach` columns; short numbers, since the beginnings of rows are read all the time
 * @throws RangeError beyond 65,536 stops
 */
export function nearestStops(problem: RoutingProblem, reach: number): Uint16Array {
  const { stops, places } = problem;
  const arcs = problem.arcCost[0]!;
  if (stops.count > 65_536) throw new RangeError('more than 65,536 stops');
  const rows = new Uint16Array(stops.count * reach);
  const order = Array.from({ length: stops.count }, (_, s) => s);
  const distance = new Float64Array(stops.count);
  for (let s = 0; s < stops.count; s++) {
    const a = stops.place[s]!;
    for (let t = 0; t < stops.count; t++) {
      const b = stops.place[t]!;
      distance[t] = t === s ? -1 : Math.min(arcs[a * places + b]!, arcs[b * places + a]!);
    }
    const sorted = order.slice().sort((x, y) => distance[x]! - distance[y]! || x - y);
    for (let k = 0; k < reach; k++) rows[s * reach + k] = sorted[k]!;
  }
  return rows;
}
