import 'reflect-metadata';
import { randomUUID } from 'node:crypto';
import { hostname } from 'node:os';
import { BullQueue } from '@deckround/jobs';
import { createLogger, hideDriverNotice, parseConfig, systemClock } from '@deckround/platform';
import { Store } from '@deckround/store';
import { NestFactory } from '@nestjs/core';
import { WorkerModule } from './worker.module.js';

hideDriverNotice();
const config = parseConfig(process.env);
const logger = createLogger(config.LOG_LEVEL, 'worker');
if (!config.DATABASE_URL || !config.REDIS_URL) {
  process.stderr.write(
    'A worker of its own needs DATABASE_URL and REDIS_URL. Without them, start the API alone: it works in one process.\n',
  );
  process.exit(2);
}
const store = Store.open(config.DATABASE_URL, config.DATABASE_POOL);
const queue = new BullQueue({ redisUrl: config.REDIS_URL, prefix: config.QUEUE_PREFIX });
const holder = `${hostname()}:${process.pid}:${randomUUID().slice(0, 8)}`;
const app = await NestFactory.createApplicationContext(
  WorkerModule.for({ config, store, logger, clock: systemClock, holder, queue }),
  { logger: false },
);
logger.info('worker.ready', { holder });

let stopping = false;
const stop = async (signal: string) => {
  if (stopping) return;
  stopping = true;
  logger.info('worker.stopping', { signal });
  await app.close();
  await queue.close();
  await store.close();
  process.exit(0);
};
process.on('SIGTERM', () => void stop('SIGTERM'));
process.on('SIGINT', () => void stop('SIGINT'));
