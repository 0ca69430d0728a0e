import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';

// Always the built file: threads cannot be started from TypeScript sources, where tests run.
export const THREAD = fileURLToPath(new URL('../../dist/compute/thread.js', import.meta.url));

/**
 * A thread whose code is loaded and warm does a small shop's forecast or plan in a fifth of the time. So the last one
 * waits this long for another task, milliseconds. Own choice.
 */
const WAITS = 10_000;
/** What took longer may have filled its thread's memory, which goes back at once. */
const SMALL = 5000;

let waiting: { thread: Worker; end: NodeJS.Timeout } | null = null;

/** The thread that waits, or a new one. It takes one task, by `postMessage`. */
export function takeThread(): Worker {
  if (waiting === null) return new Worker(THREAD);
  const { thread, end } = waiting;
  waiting = null;
  clearTimeout(end);
  noLongerHeard(thread);
  thread.ref();
  return thread;
}

/** Call when the thread has answered. */
export function giveBack(thread: Worker, took: number): void {
  noLongerHeard(thread);
  thread.on('error', () => {}); // it has answered; without a listener it would end the process
  if (waiting !== null || took > SMALL) {
    void thread.terminate();
    return;
  }
  const forget = () => {
    if (waiting?.thread === thread) waiting = null;
  };
  const end = setTimeout(() => {
    forget();
    void thread.terminate();
  }, WAITS).unref();
  thread.on('exit', forget);
  thread.unref();
  waiting = { thread, end };
}

/** Not all listeners at once: Node has its own among them. */
function noLongerHeard(thread: Worker): void {
  for (const event of ['message', 'error', 'exit']) thread.removeAllListeners(event);
}
