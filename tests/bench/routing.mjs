/** Routing benchmark: plans each instance that is named and writes one line about it. */
import { appendFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { loadChoiceSolver } from '@deckround/partition';
import { maxIterations, maxRuntime, meetingEvery, sharedExchange, sharedMeeting, solve } from '@deckround/routing';
import { routingOptions } from './routing-options.mjs';
import { readVrplib } from './routing-vrplib.mjs';
import { readWeekPlan } from './routing-weekplan.mjs';

const { files, clock, combine, seconds, iterations, seed, threads, parameters, out, solutions } = routingOptions();
/** Iterations that two threads try, in those that one makes in a thirtieth of the time. Own choice. */
const TRIED = 4;
const choice = combine ? await loadChoiceSolver() : null;
/** Milliseconds; on a busy machine the processor's time is the fairer clock. */
const now =
  clock === 'cpu'
    ? () => {
        const { user, system } = process.cpuUsage();
        return (user + system) / 1000;
      }
    : () => performance.now();
for (const file of files) {
  const instance = read(file);
  if (instance === null) continue;
  const { name, problem, judge, print } = instance;
  const begin = now();
  const result = threads === 2 ? onTwoThreads(file, problem) : onOneThread(problem);
  const taken = (now() - begin) / 1000;
  const { objective, feasible } = judge(result.routes);
  const known = bestKnown(file);
  const line = JSON.stringify({
    instance: name,
    objective,
    feasible,
    seconds: Number(taken.toFixed(2)),
    iterations: result.iterations,
    ...{ clock, threads, combine, seed },
    ...(known === null ? {} : { bestKnown: known, gapPercent: Number(((objective / known - 1) * 100).toFixed(3)) }),
  });
  console.log(line);
  if (out) appendFileSync(out, `${line}\n`);
  if (solutions) {
    mkdirSync(solutions, { recursive: true });
    const ending = file.endsWith('.json') ? 'json' : 'sol';
    writeFileSync(join(solutions, `${name}.${ending}`), `${print(result.routes, objective)}\n`);
  }
}

/** Null, with a line that says why, where it cannot be read: the other instances still run. */
function read(file) {
  try {
    const text = readFileSync(file, 'utf8');
    return file.endsWith('.json') ? readWeekPlan(text) : readVrplib(text);
  } catch (error) {
    console.error(`${file}: ${error.message}`);
    process.exitCode = 1;
    return null;
  }
}

function onOneThread(problem) {
  const stop = iterations === null ? maxRuntime(seconds, now) : maxIterations(iterations);
  return solve(problem, { seed, stop, parameters, ...(choice && { choice }) });
}

/**
 * Without iterations told, a trial of both threads fixes how many fit. It takes some of that time itself: divided, they
 * are faster than one by itself, and both are slower while plans still change much.
 */
function onTwoThreads(file, problem) {
  if (iterations !== null) return sideBySide(file, problem, iterations);
  const end = performance.now() + seconds * 1000;
  const { iterations: few } = solve(problem, {
    ...{ seed, stop: maxRuntime(seconds / 30, () => performance.now()), parameters },
  });
  const begin = performance.now();
  sideBySide(file, problem, TRIED * few);
  const speed = (TRIED * few) / (performance.now() - begin);
  return sideBySide(file, problem, Math.max(1000, Math.floor((speed * (end - performance.now())) / 1000) * 1000));
}

function sideBySide(file, problem, most) {
  const meeting = sharedMeeting();
  const every = meetingEvery(most);
  const partner = new Worker(new URL('./routing-partner.mjs', import.meta.url), {
    workerData: { file, seed, iterations: most, meeting, every, parameters },
  });
  const result = solve(problem, {
    ...{ seed, stop: maxIterations(most), parameters },
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
