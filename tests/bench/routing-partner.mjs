// The second thread of a routing run on two threads: the same problem, another seed, shorter strings.
import { readFileSync } from 'node:fs';
import { workerData } from 'node:worker_threads';
import { maxIterations, sharedExchange, solve } from '@deckround/routing';
import { readVrplib } from './routing-vrplib.mjs';
import { readWeekPlan } from './routing-weekplan.mjs';

const { file, seed, iterations, meeting, every, parameters } = workerData;
const text = readFileSync(file, 'utf8');
const { problem } = file.endsWith('.json') ? readWeekPlan(text) : readVrplib(text);
solve(problem, {
  seed: seed + 1_000_003,
  stop: maxIterations(iterations),
  parameters: { longestString: 10, ...parameters },
  exchange: sharedExchange(meeting, 1, every),
});
