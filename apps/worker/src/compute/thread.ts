import { parentPort, workerData } from 'node:worker_threads';
import type { ComputeMessage, ComputeTask } from './messages.js';

// A thread does one task after another; each loads what it needs, and no more. That of a search beside another comes with
// the thread, which ends with it.

/** Between two words on how a search is getting on, milliseconds. */
const TELL_EVERY = 200;

type TaskOf<Kind extends ComputeTask['kind']> = Extract<ComputeTask, { kind: Kind }>;

const send = (message: ComputeMessage) => parentPort!.postMessage(message);
if (workerData) await begin(workerData);
else parentPort!.on('message', begin);

async function begin(task: ComputeTask): Promise<void> {
  if (task.kind === 'forecast') await forecast(task);
  else if (task.kind === 'backtest') await holdAgainstReadings(task);
  else if (task.kind === 'lives') await lives(task);
  else if (task.kind === 'learn') await learn(task);
  else if (task.kind === 'plan') await plan(task);
  else await searchBesideAnother(task);
}

async function forecast({ snapshot }: TaskOf<'forecast'>): Promise<void> {
  const { computeForecast } = await import('./compute-forecast.js');
  send({ kind: 'forecast-done', result: computeForecast(snapshot) });
}

async function holdAgainstReadings({ snapshot, options }: TaskOf<'backtest'>): Promise<void> {
  const { backtest } = await import('@deckround/usage');
  send({ kind: 'backtest-done', rows: backtest(snapshot, options) });
}

async function lives({ register, asOf, history }: TaskOf<'lives'>): Promise<void> {
  const { deriveLives, machineRecords } = await import('@deckround/learning');
  const records = machineRecords(register, asOf);
  send({ kind: 'lives-done', result: { lives: deriveLives(register, asOf, history), records } });
}

async function learn({ register, asOf, history }: TaskOf<'learn'>): Promise<void> {
  const { deriveLives, learnItems } = await import('@deckround/learning');
  send({ kind: 'learn-done', result: learnItems(register, deriveLives(register, asOf, history)) });
}

async function plan(task: TaskOf<'plan'>): Promise<void> {
  const [{ planWeek }, { meetBeside }] = await Promise.all([import('@deckround/planning'), import('./meet-beside.js')]);
  const choice = task.combine ? await (await import('@deckround/partition')).loadChoiceSolver() : null;
  const flag = new Int32Array(task.cancelFlag);
  let toldAt = Number.NEGATIVE_INFINITY;
  const week = planWeek(task.snapshot, {
    snapshotHash: task.snapshotHash,
    seed: task.seed,
    stop:
      task.iterations !== null
        ? { iterations: task.iterations }
        : { seconds: task.seconds ?? 10, now: () => performance.now() },
    shouldCancel: () => Atomics.load(flag, 0) !== 0,
    ...(choice && { choice }),
    ...(task.beside && { beside: meetBeside(task.beside) }),
    onProgress: (progress) => {
      if (performance.now() < toldAt + TELL_EVERY) return;
      const { iterations, cost, visitsPlaced, itemsPlaced, itemsLeftOut, mustDoMissing } = progress();
      const placed = { visits: visitsPlaced, items: itemsPlaced, leftOut: itemsLeftOut, mustDoMissing };
      send({ kind: 'plan-progress', progress: { iterations, totalCents: cost.total, ...placed } });
      toldAt = performance.now();
    },
  });
  send({ kind: 'plan-done', plan: week });
}

async function searchBesideAnother(task: TaskOf<'search-beside'>): Promise<void> {
  const [{ searchBeside }, { meetingEvery, sharedExchange }, { plannedIterations }] = await Promise.all([
    import('@deckround/planning'),
    import('@deckround/routing'),
    import('./meet-beside.js'),
  ]);
  const iterations = plannedIterations(task.beside);
  const flag = new Int32Array(task.cancelFlag);
  searchBeside(task.snapshot, {
    seed: task.seed,
    iterations,
    exchange: sharedExchange(task.beside.meeting, 1, meetingEvery(iterations)),
    shouldCancel: () => Atomics.load(flag, 0) !== 0,
  });
}
