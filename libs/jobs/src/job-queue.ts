import type { JobName, JobPayload } from './job-names.js';

/** Where work is asked for. Asking twice for one row is asking once, as long as the first is not finished. */
export interface JobQueue {
  enqueue<N extends JobName>(name: N, payload: JobPayload<N>): Promise<void>;
  /** Whether work asked for now would be taken on. */
  isReady(): Promise<boolean>;
  close(): Promise<void>;
}

/** Where work is done; `close` lets running work end. */
export interface JobRunner {
  close(): Promise<void>;
}
