import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { maxIterations, solve } from '@deckround/routing';
import { describe, expect, it } from '@jest/globals';

const shared = process.env['DECKROUND_SHARED'] ?? join(process.cwd(), '../shared');
const folder = join(shared, 'bench/solomon');

// Best known total distance, one-decimal truncated convention; from the .sol files beside the instances.
const instances = ['C101', 'C204', 'R104', 'R208', 'RC105', 'RC201'];

describe('Solomon instances', () => {
  if (!existsSync(folder)) {
    it('are skipped', () => {
      console.log(`no ${folder}: set DECKROUND_SHARED to the folder that holds bench/solomon`);
    });
    return;
  }
  it.each(instances)(
    '%s is solved within 3 %% of best known in 20,000 iterations, as a mean of two seeds',
    async (name) => {
      const { readVrplib } = (await import(`${process.cwd()}/tests/bench/routing-vrplib.mjs`)) as {
        readVrplib: (text: string) => {
          problem: Parameters<typeof solve>[0];
          judge: (routes: ReturnType<typeof solve>['routes']) => { objective: number; feasible: boolean };
        };
      };
      if (!existsSync(join(folder, `${name}.vrp`))) {
        console.log(`${name} is not in ${folder}`);
        return;
      }
      const { problem, judge } = readVrplib(readFileSync(join(folder, `${name}.vrp`), 'utf8'));
      const known = Number(/Cost\s+([\d.]+)/.exec(readFileSync(join(folder, `${name}.sol`), 'utf8'))![1]);
      const gaps = [1, 2].map((seed) => {
        const { objective, feasible } = judge(solve(problem, { seed, stop: maxIterations(20_000) }).routes);
        expect(feasible).toBe(true);
        expect(objective).toBeGreaterThanOrEqual(known);
        return objective / known - 1;
      });
      expect((gaps[0]! + gaps[1]!) / 2).toBeLessThanOrEqual(0.03);
    },
  );
});
