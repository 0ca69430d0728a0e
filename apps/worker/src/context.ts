import type { JobQueue } from '@deckround/jobs';
import type { Clock, Config, Logger } from '@deckround/platform';
import type { Store } from '@deckround/store';

/** What the processors work with; made once at start-up. */
export interface WorkerContext {
  readonly config: Config;
  readonly store: Store;
  readonly logger: Logger;
  readonly clock: Clock;
  /** Names this process among those that share the work. */
  readonly holder: string;
  /** Where work that follows from work is asked for. */
  readonly queue: JobQueue;
}
