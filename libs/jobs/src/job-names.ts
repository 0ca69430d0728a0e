import { z } from 'zod';

const RunIds = z.object({ shopId: z.uuid(), runId: z.uuid() });

/** Every kind of background work: the payload carries ids only, the row in PostgreSQL is the truth. */
export const JOBS = {
  forecast: RunIds,
  plan: RunIds,
  lives: RunIds,
  /** runId names the endpoint whose events are due. */
  deliver: RunIds,
  /** runId names the shop whose notices are due. */
  notify: RunIds,
  /** runId names the telematics source to be asked. */
  hear: RunIds,
} as const;

export type JobName = keyof typeof JOBS;
export type JobPayload<N extends JobName = JobName> = z.infer<(typeof JOBS)[N]>;
export const JOB_NAMES = Object.keys(JOBS) as JobName[];

/** One processor per name; each must be idempotent: it may be called again for the same row, even at the same time. */
export type Processors = { readonly [N in JobName]: (payload: JobPayload<N>) => Promise<void> };
