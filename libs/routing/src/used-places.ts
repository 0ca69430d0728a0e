import type { Matrix, RoutingProblem } from './problem.js';

/**
 * The same problem without places where no stop and no base is, if these are most of them: planning a few days anew leaves
 * a large shop's sites out, and tables of all of them would take longer to look through than the search.
 */
export function usedPlaces(problem: RoutingProblem): RoutingProblem {
  const { places, stops, vehicles } = problem;
  const used = Int32Array.from(new Set([...stops.place, ...vehicles.startPlace, ...vehicles.endPlace])).sort();
  if (used.length * 2 > places) return problem;
  const numberOf = new Int32Array(places);
  for (const [number, place] of used.entries()) numberOf[place] = number;
  const renumbered = (at: Int32Array) => at.map((place) => numberOf[place]!);
  const cut = (matrix: Matrix) => {
    const part = new Int32Array(used.length * used.length);
    let cell = 0;
    for (const from of used) for (const to of used) part[cell++] = matrix[from * places + to]!;
    return part;
  };
  const minutes = cut(problem.minutes);
  return {
    ...problem,
    places: used.length,
    minutes,
    arcCost: problem.arcCost.map((matrix) => (matrix === problem.minutes ? minutes : cut(matrix))),
    vehicles: {
      ...vehicles,
      startPlace: renumbered(vehicles.startPlace),
      endPlace: renumbered(vehicles.endPlace),
    },
    stops: { ...stops, place: renumbered(stops.place) },
  };
}
