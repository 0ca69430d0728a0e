import { type Service, startService } from '@deckround/api';
import { type Clock, createLogger, parseConfig } from '@deckround/platform';
import { ApiClient } from './api-client.js';
import type { TestDatabase } from './database.js';
import { PASSWORD } from './small-shop.js';

/** The API on a free port over a test database; with `redis` the work waits for workers of their own. */
export async function runningApi(
  database: TestDatabase,
  redis?: { url: string; prefix: string },
  clock?: Clock,
  port = 0,
  settings: Record<string, string> = {},
) {
  const config = parseConfig({
    PORT: String(port),
    LOG_LEVEL: 'silent',
    JOB_LEASE_SECONDS: '3',
    SWEEP_SECONDS: '1',
    ...(redis ? { REDIS_URL: redis.url, QUEUE_PREFIX: redis.prefix } : {}),
    // What a test does in a moment is not what a caller does in a minute.
    ...{ RATE_KEY_PER_MINUTE: '0', RATE_SESSION_PER_MINUTE: '0', RATE_PUBLIC_PER_MINUTE: '0' },
    ...settings,
  });
  const service: Service = await startService(config, {
    logger: createLogger('silent', 'test'),
    ...(clock && { clock }),
    database: { url: database.url, kind: 'server', stop: async () => {} },
  });
  const client = new ApiClient(service.address);
  return {
    service,
    client,
    signIn: (role: 'manager' | 'technician' | 'supervisor', shop = 'small-shop') =>
      client.signIn(`${role}@${shop}.example`, PASSWORD),
  };
}
