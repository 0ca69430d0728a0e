export * from './embedded-postgres.js';
export { Prisma } from './generated/client.js';
export * from './migrator.js';
export * from './store.js';
