import { randomUUID } from 'node:crypto';
import { hostname } from 'node:os';
import { BullQueue, InProcessJobs, type JobQueue } from '@deckround/jobs';
import { type Clock, type Config, createLogger, type Logger, portTaken, systemClock } from '@deckround/platform';
import { type Database, openDatabase, Store } from '@deckround/store';
import { createProcessors, startDeliveries, startSweep } from '@deckround/worker';
import { createApi } from './create-api.js';
import { MemoryRateLimiter, RedisRateLimiter } from './rate-limits/rate-limiter.js';

export interface Service {
  readonly address: string;
  readonly store: Store;
  readonly queue: JobQueue;
  readonly database: Database['kind'];
  readonly jobs: 'in this process' | 'in workers';
  stop(): Promise<void>;
}

/**
 * Starts the API on this machine. Without DATABASE_URL it brings its own PostgreSQL; without REDIS_URL it does the
 * background work itself. One code path: only the queue has two runners.
 */
export async function startService(
  config: Config,
  options: { clock?: Clock; logger?: Logger; database?: Database } = {},
): Promise<Service> {
  const clock = options.clock ?? systemClock;
  const logger = options.logger ?? createLogger(config.LOG_LEVEL, 'api');
  const database =
    options.database ?? (await openDatabase({ url: config.DATABASE_URL, folder: config.DECKROUND_DATA }));
  const store = Store.open(database.url, config.DATABASE_POOL);
  const holder = `${hostname()}:${process.pid}:${randomUUID().slice(0, 8)}`;
  const context = { config, store, logger, clock, holder };
  const inProcess = config.REDIS_URL === undefined;
  const queue =
    config.REDIS_URL === undefined
      ? new InProcessJobs(
          (queue) => createProcessors({ ...context, queue }),
          (name, runId, error) => logger.error('job.failed', { name, runId }, error),
        )
      : new BullQueue({ redisUrl: config.REDIS_URL, prefix: config.QUEUE_PREFIX });
  const limiter =
    config.REDIS_URL === undefined
      ? new MemoryRateLimiter()
      : new RedisRateLimiter(config.REDIS_URL, config.QUEUE_PREFIX, logger);
  const app = await createApi({ config, store, queue, clock, logger, limiter });
  try {
    await app.listen(config.PORT, config.HOST);
  } catch (error) {
    await Promise.allSettled([app.close(), queue.close(), limiter.close(), store.close()]);
    if (!options.database) await database.stop();
    if ((error as NodeJS.ErrnoException).code === 'EADDRINUSE') throw portTaken(config.PORT, config.HOST);
    throw error;
  }
  // Only now: work begun before would be cut off where the port is taken.
  const stopSweep = inProcess ? startSweep({ ...context, queue }) : async () => {};
  const stopDeliveries = inProcess ? startDeliveries({ ...context, queue }) : async () => {};
  const address = (await app.getUrl()).replace('[::1]', 'localhost');
  logger.info('api.ready', { address, database: database.kind, inProcess });
  return {
    address,
    store,
    queue,
    database: database.kind,
    jobs: inProcess ? 'in this process' : 'in workers',
    stop: async () => {
      await stopSweep();
      await stopDeliveries();
      await app.close();
      await queue.close();
      await limiter.close();
      await store.close();
      if (!options.database) await database.stop();
    },
  };
}
