import { BullQueue, BullRunner, type JobRunner } from '@deckround/jobs';
import { type DynamicModule, Inject, Module, type OnApplicationShutdown } from '@nestjs/common';
import type { WorkerContext } from './context.js';
import { startDeliveries } from './deliver/ask-deliveries.js';
import { createProcessors } from './processors.js';
import { startSweep } from './runs/sweep.js';

const RUNNER = Symbol('job runner');
const STOP_SWEEP = Symbol('stop sweep');
const STOP_DELIVERIES = Symbol('stop deliveries');

/** The worker process of server mode: BullMQ processors, and the sweep of lost work. */
@Module({})
export class WorkerModule implements OnApplicationShutdown {
  constructor(
    @Inject(RUNNER) private readonly runner: JobRunner,
    @Inject(STOP_SWEEP) private readonly stopSweep: () => Promise<void>,
    @Inject(STOP_DELIVERIES) private readonly stopDeliveries: () => Promise<void>,
  ) {}

  static for(context: WorkerContext & { queue: BullQueue }): DynamicModule {
    const { config, logger } = context;
    const createRunner = () =>
      new BullRunner(
        { redisUrl: config.REDIS_URL!, prefix: config.QUEUE_PREFIX },
        config.JOB_LEASE_SECONDS,
        createProcessors(context),
        (name, runId, error) => logger.error('job.failed', { name, runId }, error),
      );
    return {
      module: WorkerModule,
      providers: [
        { provide: RUNNER, useFactory: createRunner },
        { provide: STOP_SWEEP, useFactory: () => startSweep(context) },
        { provide: STOP_DELIVERIES, useFactory: () => startDeliveries(context) },
      ],
    };
  }

  async onApplicationShutdown(): Promise<void> {
    await this.stopSweep();
    await this.stopDeliveries();
    await this.runner.close();
  }
}
