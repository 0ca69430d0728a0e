import type { Matrix, RoutingProblem } from './problem.js';

/**
 * The same problem in less memory, with places that lie near each other numbered one after the other. A search looks up
 * drives all over the tables, and waits for them where these do not fit into the processor's nearest caches. Plans come out
 * the same, but beyond 250 places, of which `triangleGap` then samples others.
 */
export function compact(problem: RoutingProblem): RoutingProblem {
  const { vehicles, stops } = problem;
  const { minutes, numberOf } = renumberedMinutes(problem.minutes, problem.places);
  const renumbered = (places: Int32Array) => places.map((place) => numberOf[place]!);
  return {
    ...problem,
    minutes,
    arcCost: problem.arcCost.map((matrix) =>
      matrix === problem.minutes ? minutes : rearranged(matrix, problem.places, numberOf),
    ),
    vehicles: {
      ...vehicles,
      startPlace: renumbered(vehicles.startPlace),
      endPlace: renumbered(vehicles.endPlace),
    },
    stops: { ...stops, place: renumbered(stops.place) },
    windowList: problem.windowStart.length <= 32_768 ? Int16Array.from(problem.windowList) : problem.windowList,
  };
}

interface Renumbered {
  minutes: Matrix;
  /** Per place of the problem as it came. */
  numberOf: Int32Array;
}

/** By the matrix it was made of: many short searches share one. */
const known = new WeakMap<Matrix, Renumbered>();

function renumberedMinutes(matrix: Matrix, places: number): Renumbered {
  const before = known.get(matrix);
  if (before !== undefined) return before;
  const numberOf = nearNumbers(matrix, places);
  const isShort = matrix.every((minutes) => minutes >= 0 && minutes <= 65_535);
  const moved = rearranged(matrix, places, numberOf);
  const renumbered = { numberOf, minutes: isShort ? Uint16Array.from(moved) : moved };
  known.set(matrix, renumbered);
  return renumbered;
}

/** Numbers places along a way that goes on to the nearest place not yet visited; near by the shorter direction. */
function nearNumbers(matrix: Matrix, places: number): Int32Array {
  const numberOf = new Int32Array(places).fill(-1);
  let at = 0;
  for (let next = 0; next < places; next++) {
    numberOf[at] = next;
    let nearest = -1;
    let least = Infinity;
    for (let other = 0; other < places; other++) {
      if (numberOf[other]! >= 0) continue;
      const away = Math.min(matrix[at * places + other]!, matrix[other * places + at]!);
      if (away < least) {
        least = away;
        nearest = other;
      }
    }
    at = nearest;
  }
  return numberOf;
}

function rearranged(matrix: Matrix, places: number, numberOf: Int32Array): Int32Array {
  const moved = new Int32Array(matrix.length);
  for (let i = 0; i < places; i++) {
    const row = numberOf[i]! * places;
    for (let j = 0; j < places; j++) moved[row + numberOf[j]!] = matrix[i * places + j]!;
  }
  return moved;
}
