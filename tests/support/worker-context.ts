import type { JobQueue } from '@deckround/jobs';
import { createLogger, parseConfig, systemClock } from '@deckround/platform';
import type { Store } from '@deckround/store';
import type { WorkerContext } from '@deckround/worker';

/** What processors work with when a test calls them itself. What they ask for in turn is left to the test. */
export function workerContext(store: Store, given: Partial<WorkerContext> = {}): WorkerContext {
  const queue: JobQueue = { enqueue: async () => {}, isReady: async () => true, close: async () => {} };
  const logger = createLogger('silent', 'test');
  return { config: parseConfig({}), store, logger, clock: systemClock, holder: 'test', queue, ...given };
}
