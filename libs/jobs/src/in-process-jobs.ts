import { JOB_NAMES, JOBS, type JobName, type JobPayload, type Processors } from './job-names.js';
import type { JobQueue, JobRunner } from './job-queue.js';

/**
 * Queue and runner in this process: one piece of work at a time for each name, in order of asking. What is lost when
 * the process ends is found again by the sweep, since the rows say so.
 */
export class InProcessJobs implements JobQueue, JobRunner {
  private readonly waiting = new Map<JobName, Map<string, JobPayload>>(JOB_NAMES.map((name) => [name, new Map()]));
  private readonly running = new Map<JobName, Promise<void>>();
  private readonly processors: Processors;
  private closed = false;

  /** @param createProcessors is given this queue, for work that follows from work */
  constructor(
    createProcessors: (queue: JobQueue) => Processors,
    private readonly onFailure: (name: JobName, runId: string, error: unknown) => void,
  ) {
    this.processors = createProcessors(this);
  }

  async enqueue<N extends JobName>(name: N, payload: JobPayload<N>): Promise<void> {
    if (this.closed) return;
    const parsed = JOBS[name].parse(payload);
    this.waiting.get(name)!.set(parsed.runId, parsed);
    if (!this.running.has(name)) {
      this.running.set(
        name,
        this.drain(name).finally(() => this.running.delete(name)),
      );
    }
  }

  async isReady(): Promise<boolean> {
    return !this.closed;
  }

  async close(): Promise<void> {
    this.closed = true;
    await Promise.all(this.running.values());
  }

  private async drain(name: JobName): Promise<void> {
    const waiting = this.waiting.get(name)!;
    await Promise.resolve();
    while (waiting.size > 0 && !this.closed) {
      const [runId, payload] = waiting.entries().next().value!;
      waiting.delete(runId);
      try {
        await this.processors[name](payload);
      } catch (error) {
        this.onFailure(name, runId, error);
      }
    }
  }
}
