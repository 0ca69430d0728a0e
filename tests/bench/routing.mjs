/**
 * Routing benchmark. Usage, after a build:
 *   node tests/bench/routing.mjs FILES… [--seconds S | --iterations N] [--clock wall|cpu] [--seed N] [--out results.jsonl] [--solutions DIR]
 * Reads VRPLIB files (.vrp, one-decimal truncated convention) and week-plan JSON; one JSON line per run. A `.sol` file
 * beside the instance gives the best known value and the gap.
 */
import { appendFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { maxIterations, maxRuntime, solve } from '@deckround/routing';
import { readVrplib } from './routing-vrplib.mjs';
import { readWeekPlan } from './routing-weekplan.mjs';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    seconds: { type: 'string', default: '10' },
    iterations: { type: 'string' },
    clock: { type: 'string', default: 'wall' },
    seed: { type: 'string', default: '1' },
    out: { type: 'string' },
    solutions: { type: 'string' },
    parameters: { type: 'string', default: '{}' },
  },
});
const seed = Number(values.seed);
/** Milliseconds; on a busy machine the processor's time is the fairer clock. */
const now =
  values.clock === 'cpu'
    ? () => {
        const { user, system } = process.cpuUsage();
        return (user + system) / 1000;
      }
    : () => performance.now();
for (const file of positionals) {
  const text = readFileSync(file, 'utf8');
  const { name, problem, judge, print } = file.endsWith('.json') ? readWeekPlan(text) : readVrplib(text);
  const begin = now();
  const stop = values.iterations ? maxIterations(Number(values.iterations)) : maxRuntime(Number(values.seconds), now);
  const result = solve(problem, { seed, stop, parameters: JSON.parse(values.parameters) });
  const seconds = (now() - begin) / 1000;
  const { objective, feasible } = judge(result.routes);
  const known = bestKnown(file);
  const line = {
    instance: name,
    objective,
    feasible,
    seconds: Number(seconds.toFixed(2)),
    iterations: result.iterations,
    clock: values.clock,
    seed,
    ...(known === null ? {} : { bestKnown: known, gapPercent: Number(((objective / known - 1) * 100).toFixed(3)) }),
  };
  console.log(JSON.stringify(line));
  if (values.out) appendFileSync(values.out, `${JSON.stringify(line)}\n`);
  if (values.solutions) {
    mkdirSync(values.solutions, { recursive: true });
    const ending = file.endsWith('.json') ? 'json' : 'sol';
    writeFileSync(join(values.solutions, `${name}.${ending}`), `${print(result.routes, objective)}\n`);
  }
}

function bestKnown(file) {
  const solution = file.replace(/\.vrp$/, '.sol');
  if (solution === file || !existsSync(solution)) return null;
  const cost = /Cost\s+([\d.]+)/.exec(readFileSync(solution, 'utf8'));
  return cost ? Number(cost[1]) : null;
}
