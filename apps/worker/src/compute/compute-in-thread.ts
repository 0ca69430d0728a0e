import { Worker } from 'node:worker_threads';
import type { LifeHistory } from '@deckround/learning';
import type { PlanningSnapshot, WeekPlan } from '@deckround/planning';
import type { Register } from '@deckround/register';
import { leaveMeeting, sharedMeeting } from '@deckround/routing';
import type { UpkeepSnapshot } from '@deckround/upkeep';
import type { BacktestOptions, BacktestRow, UsageSnapshot } from '@deckround/usage';
import type {
  ComputeMessage,
  ComputeTask,
  ForecastResult,
  LearnResult,
  LivesResult,
  PlanProgress,
} from './messages.js';
import { giveBack, THREAD, takeThread } from './waiting-thread.js';

/** Forecasts and searches run in a thread of their own, so that the process keeps answering. */
export function forecastInThread(snapshot: UpkeepSnapshot): Promise<ForecastResult> {
  return inThread({ kind: 'forecast', snapshot }, (message) =>
    message.kind === 'forecast-done' ? message.result : undefined,
  );
}

/** Past forecasts held against what was read later. */
export function backtestInThread(snapshot: UsageSnapshot, options: BacktestOptions): Promise<BacktestRow[]> {
  return inThread({ kind: 'backtest', snapshot, options }, (message) =>
    message.kind === 'backtest-done' ? message.rows : undefined,
  );
}

/** Component lives and machine records out of a shop's history. */
export function livesInThread(register: Register, asOf: string, history: LifeHistory): Promise<LivesResult> {
  return inThread({ kind: 'lives', register, asOf, history }, (message) =>
    message.kind === 'lives-done' ? message.result : undefined,
  );
}

/** Lives of parts re-fitted, and the interval changes that they propose. */
export function learnInThread(register: Register, asOf: string, history: LifeHistory): Promise<LearnResult> {
  return inThread({ kind: 'learn', register, asOf, history }, (message) =>
    message.kind === 'learn-done' ? message.result : undefined,
  );
}

export interface PlanSearch {
  readonly plan: Promise<WeekPlan>;
  /** The search answers within a moment with the best it has. */
  cancel(): void;
}

export function planInThread(
  snapshot: PlanningSnapshot,
  options: {
    snapshotHash: string;
    seed: number;
    seconds?: number;
    iterations?: number;
    threads?: number;
    combine?: boolean;
  },
  onProgress: (progress: PlanProgress) => void = () => {},
): PlanSearch {
  const cancelFlag = new SharedArrayBuffer(4);
  const beside = options.threads === 2 ? { meeting: sharedMeeting(), planned: new SharedArrayBuffer(16) } : null;
  const task: ComputeTask = {
    kind: 'plan',
    snapshot,
    snapshotHash: options.snapshotHash,
    seed: options.seed,
    seconds: options.seconds ?? null,
    iterations: options.iterations ?? null,
    combine: options.combine ?? false,
    beside,
    cancelFlag,
  };
  const partner = beside && startBeside({ kind: 'search-beside', snapshot, seed: options.seed, beside, cancelFlag });
  const plan = inThread(task, (message) => {
    if (message.kind === 'plan-progress') onProgress(message.progress);
    return message.kind === 'plan-done' ? message.plan : undefined;
  });
  return {
    plan: plan.finally(() => partner?.terminate()),
    cancel: () => {
      Atomics.store(new Int32Array(cancelFlag), 0, 1);
    },
  };
}

/**
 * Heap of the second search, megabytes: collecting its garbage earlier keeps two searches of 500 sites below 1.5 GB, and
 * takes no longer. Measured.
 */
const PARTNER_HEAP = 512;

/** The partner only gives and takes; should it fail, or its heap not be enough, the first search goes on alone. */
function startBeside(task: Extract<ComputeTask, { kind: 'search-beside' }>): Worker {
  const thread = new Worker(THREAD, { workerData: task, resourceLimits: { maxOldGenerationSizeMb: PARTNER_HEAP } });
  const leave = () => leaveMeeting(task.beside.meeting, 1);
  thread.on('error', leave);
  thread.on('exit', leave);
  return thread;
}

function inThread<T>(task: ComputeTask, answerOf: (message: ComputeMessage) => T | undefined): Promise<T> {
  return new Promise((done, failed) => {
    const thread = takeThread();
    const begun = performance.now();
    thread.on('message', (message: ComputeMessage) => {
      const answer = answerOf(message);
      if (answer === undefined) return;
      done(answer);
      giveBack(thread, performance.now() - begun);
    });
    thread.on('error', failed);
    thread.on('exit', (code) => failed(new Error(`The computing thread ended with code ${code} before it answered.`)));
    thread.postMessage(task);
  });
}
