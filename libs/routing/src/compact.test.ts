import { describe, expect, it } from '@jest/globals';
import { compact } from './compact.js';
import { randomProblem } from './test-support/random-problem.js';

describe('compact', () => {
  it('keeps every drive, base and window of a problem', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const problem = randomProblem({ seed, stops: 12, vehicles: 4, days: 2, asymmetric: seed % 2 === 0 });
      const lean = compact(problem);
      const { places, stops, vehicles } = problem;
      const pairs = [
        ...[...stops.place].map((place, s) => [place, lean.stops.place[s]!]),
        ...[...vehicles.startPlace].map((place, v) => [place, lean.vehicles.startPlace[v]!]),
        ...[...vehicles.endPlace].map((place, v) => [place, lean.vehicles.endPlace[v]!]),
      ] as [number, number][];
      for (const [a, x] of pairs) {
        for (const [b, y] of pairs) {
          expect(lean.minutes[x * places + y]).toBe(problem.minutes[a * places + b]);
          problem.arcCost.forEach((matrix, k) => {
            expect(lean.arcCost[k]![x * places + y]).toBe(matrix[a * places + b]);
          });
        }
      }
      expect([...lean.windowList]).toEqual([...problem.windowList]);
    }
  });

  it('numbers places in the order in which one lies next to the other', () => {
    const at = [0, 50, 10, 40, 20, 30];
    const minutes = Int32Array.from(at.flatMap((from) => at.map((to) => Math.abs(from - to))));
    const { place } = compact(onePlaceEach(minutes, at.length)).stops;
    expect([...place]).toEqual([0, 5, 1, 4, 2, 3]);
  });

  it('takes short numbers for drives, and one table where cost and minutes are one', () => {
    const lean = compact(onePlaceEach(Int32Array.of(0, 65_535, 7, 0), 2));
    expect(lean.minutes).toBeInstanceOf(Uint16Array);
    expect(lean.arcCost[0]).toBe(lean.minutes);
    expect(compact(onePlaceEach(Int32Array.of(0, 65_536, 7, 0), 2)).minutes).toBeInstanceOf(Int32Array);
  });
});

function onePlaceEach(minutes: Int32Array, places: number) {
  const problem = randomProblem({ seed: 1, stops: places, vehicles: 1 });
  return {
    ...{ ...problem, places, minutes, arcCost: [minutes] },
    vehicles: { ...problem.vehicles, startPlace: new Int32Array(1), endPlace: new Int32Array(1) },
    stops: { ...problem.stops, place: Int32Array.from({ length: places }, (_, s) => s) },
  };
}
