/**
 * Routing benchmark. Usage, after a build:
 *   node tests/bench/routing.mjs FILES… [--seconds S | --iterations N] [--clock wall|cpu] [--seed N] [--out results.jsonl]
 *     [--solutions DIR] [--combine] [--threads 2]
 * Reads VRPLIB files (.vrp, one-decimal truncated convention) and week-plan JSON; one JSON line per run. A `.sol` file
 * beside the instance gives the best known value and the gap. `--combine` chooses among the routes met by set
 * partitioning near the end; `--threads 2` adds a second search that meets the first every so many iterations (a trial
 * by the clock fixes the iterations of both).
 */
import { appendFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import { loadChoiceSolver } from '@deckround/partition';
import { maxIterations, maxRuntime, meetingEvery, sharedExchange, sharedMeeting, solve } from '@deckround/routing';
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
    combine: { type: 'boolean', default: false },
    threads: { type: 'string', default: '1' },
  },
});
/** Two threads share caches and memory: each is slower than one alone. */
const SHARED_SPEED = 0.85;
const seed = Number(values.seed);
const choice = values.combine ? await loadChoiceSolver() : null;
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
  const parameters = JSON.parse(values.parameters);
  const result = values.threads === '2' ? onTwoThreads(file, problem, parameters) : onOneThread(problem, parameters);
  const seconds = (now() - begin) / 1000;
  const { objective, feasible } = judge(result.routes);
  const known = bestKnown(file);
  const line = {
    instance: name,
    objective,
    feasible,
    seconds: Number(seconds.toFixed(2)),
    iterations: result.iterations,
    ...{ clock: values.clock, threads: Number(values.threads), combine: values.combine, seed },
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

function onOneThread(problem, parameters) {
  const stop = values.iterations ? maxIterations(Number(values.iterations)) : maxRuntime(Number(values.seconds), now);
  return solve(problem, { seed, stop, parameters, ...(choice && { choice }) });
}

function onTwoThreads(file, problem, parameters) {
  const begin = performance.now();
  const span = Number(values.seconds) * 1000;
  let iterations = Number(values.iterations ?? 0);
  if (iterations === 0) {
    const trial = solve(problem, { seed, stop: maxRuntime(span / 20_000, () => performance.now()), parameters });
    const speed = trial.iterations / (performance.now() - begin);
    iterations = Math.floor((speed * (begin + span - performance.now()) * SHARED_SPEED) / 1000) * 1000;
  }
  const meeting = sharedMeeting();
  const every = meetingEvery(iterations);
  const partner = new Worker(new URL('./routing-partner.mjs', import.meta.url), {
    workerData: { file, seed, iterations, meeting, every, parameters },
  });
  const result = solve(problem, {
    ...{ seed, stop: maxIterations(iterations), parameters },
    ...(choice && { choice }),
    exchange: sharedExchange(meeting, 0, every),
  });
  partner.terminate();
  return result;
}

function bestKnown(file) {
  const solution = file.replace(/\.vrp$/, '.sol');
  if (solution === file || !existsSync(solution)) return null;
  const cost = /Cost:?\s+([\d.]+)/.exec(readFileSync(solution, 'utf8'));
  return cost ? Number(cost[1]) : null;
}
