import { Queue, Worker } from 'bullmq';
import { Redis } from 'ioredis';
import { JOB_NAMES, JOBS, type JobName, type JobPayload, type Processors } from './job-names.js';
import type { JobQueue, JobRunner } from './job-queue.js';

export interface BullOptions {
  redisUrl: string;
  /** Prefix of every key, so that several installations can share one Redis. */
  prefix: string;
}

function connect(redisUrl: string, forWorker: boolean): Redis {
  // Workers wait for Redis as long as it takes; those who ask want an answer.
  const redis = new Redis(redisUrl, { maxRetriesPerRequest: forWorker ? null : 3, enableOfflineQueue: forWorker });
  redis.on('error', () => {}); // reported by readiness and by failing calls; without a listener it would end the process
  return redis;
}

/** Asks for work through Redis. The job id is the row's id: a second asking finds the first. */
export class BullQueue implements JobQueue {
  private readonly redis: Redis;
  private readonly queues: ReadonlyMap<JobName, Queue>;

  constructor({ redisUrl, prefix }: BullOptions) {
    this.redis = connect(redisUrl, false);
    this.queues = new Map(JOB_NAMES.map((name) => [name, new Queue(name, { connection: this.redis, prefix })]));
    for (const queue of this.queues.values()) queue.on('error', () => {});
  }

  async enqueue<N extends JobName>(name: N, payload: JobPayload<N>): Promise<void> {
    const parsed = JOBS[name].parse(payload);
    // Finished work leaves no trace here, so that the sweep can ask again for the same row.
    await this.queues.get(name)!.add(name, parsed, { jobId: parsed.runId, removeOnComplete: true, removeOnFail: true });
  }

  async isReady(): Promise<boolean> {
    try {
      return (await this.redis.ping()) === 'PONG';
    } catch {
      return false;
    }
  }

  async close(): Promise<void> {
    await Promise.all([...this.queues.values()].map((queue) => queue.close()));
    this.redis.disconnect();
  }
}

/** Does the work that was asked for through Redis; any number of processes may. */
export class BullRunner implements JobRunner {
  private readonly redis: Redis;
  private readonly workers: readonly Worker[];

  constructor(
    { redisUrl, prefix }: BullOptions,
    leaseSeconds: number,
    processors: Processors,
    onFailure: (name: JobName, runId: string, error: unknown) => void,
  ) {
    const missing = JOB_NAMES.filter((name) => !processors[name]);
    if (missing.length > 0) throw new Error(`No processor for these jobs: ${missing.join(', ')}`);
    this.redis = connect(redisUrl, true);
    this.workers = JOB_NAMES.map((name) => {
      const worker = new Worker(
        name,
        async (job) => {
          const payload = JOBS[name].parse(job.data);
          await processors[name](payload);
        },
        {
          connection: this.redis,
          prefix,
          concurrency: 1,
          lockDuration: leaseSeconds * 1000,
          stalledInterval: Math.max(1000, (leaseSeconds * 1000) / 2),
          maxStalledCount: 5,
        },
      );
      worker.on('failed', (job, error) => onFailure(name, String(job?.id), error));
      worker.on('error', () => {});
      return worker;
    });
  }

  async close(): Promise<void> {
    await Promise.all(this.workers.map((worker) => worker.close()));
    this.redis.disconnect();
  }
}
