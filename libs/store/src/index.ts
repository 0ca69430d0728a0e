export * from './database.js';
export * from './embedded-postgres.js';
export { Prisma } from './generated/client.js';
export * from './migrator.js';
export * from './repositories/notice.repository.js';
export * from './repositories/outbox.repository.js';
export * from './repositories/reading.repository.js';
export * from './repositories/run.repository.js';
export * from './store.js';
