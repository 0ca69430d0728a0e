import { describe, expect, it } from '@jest/globals';
import { solve } from './search.js';
import { maxIterations } from './stop/max-iterations.js';
import { randomProblem } from './test-support/random-problem.js';
import { usedPlaces } from './used-places.js';

/** The problem among ten times as many places, its own scattered over them. */
function amongMany(problem: ReturnType<typeof randomProblem>) {
  const { stops, vehicles } = problem;
  const places = problem.places * 10;
  const spread = (at: Int32Array) => at.map((place) => place * 10 + 3);
  const wide = (matrix: ArrayLike<number>) => {
    const all = new Int32Array(places * places).fill(1);
    for (let i = 0; i < problem.places; i++) {
      for (let j = 0; j < problem.places; j++) {
        all[(i * 10 + 3) * places + j * 10 + 3] = matrix[i * problem.places + j]!;
      }
    }
    return all;
  };
  return {
    ...problem,
    ...{ places, minutes: wide(problem.minutes), arcCost: problem.arcCost.map(wide) },
    vehicles: { ...vehicles, startPlace: spread(vehicles.startPlace), endPlace: spread(vehicles.endPlace) },
    stops: { ...stops, place: spread(stops.place) },
  };
}

describe('usedPlaces', () => {
  it('leaves out where nothing is, with all drives between the rest', () => {
    for (let seed = 1; seed <= 10; seed++) {
      const problem = randomProblem({ seed, stops: 12, vehicles: 4, days: 2, asymmetric: seed % 2 === 0 });
      const cut = usedPlaces(amongMany(problem));
      const { places, stops, vehicles } = problem;
      const at = [...stops.place, ...vehicles.startPlace, ...vehicles.endPlace];
      const now = [...cut.stops.place, ...cut.vehicles.startPlace, ...cut.vehicles.endPlace];
      expect(cut.places).toBe(new Set(at).size);
      for (const [a, from] of at.entries()) {
        for (const [b, to] of at.entries()) {
          const cell = now[a]! * cut.places + now[b]!;
          expect(cut.minutes[cell]).toBe(problem.minutes[from * places + to]);
          for (const [k, costs] of problem.arcCost.entries()) {
            expect(cut.arcCost[k]![cell]).toBe(costs[from * places + to]);
          }
        }
      }
    }
  });

  it('keeps a problem whose places are mostly used as it is', () => {
    const problem = randomProblem({ seed: 1, stops: 12, vehicles: 4, days: 2 });
    expect(usedPlaces(problem)).toBe(problem);
  });

  it('ends at a plan of the same cost as the problem among the places it uses', () => {
    const problem = randomProblem({ seed: 4, stops: 20, vehicles: 4, days: 2, lunch: true });
    const options = () => ({ seed: 1, stop: maxIterations(3000) });
    expect(solve(amongMany(problem), options()).cost).toBe(solve(problem, options()).cost);
  });
});
