import { parentPort, workerData } from 'node:worker_threads';
import { deriveLives, learnItems, machineRecords } from '@deckround/learning';
import { loadChoiceSolver } from '@deckround/partition';
import { planWeek, searchBeside } from '@deckround/planning';
import { meetingEvery, sharedExchange } from '@deckround/routing';
import { backtest } from '@deckround/usage';
import { computeForecast } from './compute-forecast.js';
import { meetBeside, plannedIterations } from './meet-beside.js';
import type { ComputeMessage, ComputeTask } from './messages.js';

/** Between two words on how a search is getting on, milliseconds. */
const TELL_EVERY = 200;

const task = workerData as ComputeTask;
const send = (message: ComputeMessage) => parentPort!.postMessage(message);

if (task.kind === 'forecast') {
  send({ kind: 'forecast-done', result: computeForecast(task.snapshot) });
} else if (task.kind === 'backtest') {
  send({ kind: 'backtest-done', rows: backtest(task.snapshot, task.options) });
} else if (task.kind === 'lives') {
  const { register, asOf, history } = task;
  send({
    kind: 'lives-done',
    result: { lives: deriveLives(register, asOf, history), records: machineRecords(register, asOf, history.retired) },
  });
} else if (task.kind === 'learn') {
  const lives = deriveLives(task.register, task.asOf, task.history);
  send({ kind: 'learn-done', result: learnItems(task.register, lives) });
} else if (task.kind === 'search-beside') {
  const iterations = plannedIterations(task.beside);
  const flag = new Int32Array(task.cancelFlag);
  searchBeside(task.snapshot, {
    seed: task.seed,
    iterations,
    exchange: sharedExchange(task.beside.meeting, 1, meetingEvery(iterations)),
    shouldCancel: () => Atomics.load(flag, 0) !== 0,
  });
} else {
  const flag = new Int32Array(task.cancelFlag);
  let toldAt = Number.NEGATIVE_INFINITY;
  const plan = planWeek(task.snapshot, {
    snapshotHash: task.snapshotHash,
    seed: task.seed,
    stop:
      task.iterations !== null
        ? { iterations: task.iterations }
        : { seconds: task.seconds ?? 10, now: () => performance.now() },
    shouldCancel: () => Atomics.load(flag, 0) !== 0,
    ...(task.combine && { choice: await loadChoiceSolver() }),
    ...(task.beside && { beside: meetBeside(task.beside) }),
    onProgress: (progress) => {
      if (performance.now() < toldAt + TELL_EVERY) return;
      const { iterations, cost, visitsPlaced, itemsPlaced, itemsLeftOut, mustDoMissing } = progress();
      const placed = { visits: visitsPlaced, items: itemsPlaced, leftOut: itemsLeftOut, mustDoMissing };
      send({ kind: 'plan-progress', progress: { iterations, totalCents: cost.total, ...placed } });
      toldAt = performance.now();
    },
  });
  send({ kind: 'plan-done', plan });
}
