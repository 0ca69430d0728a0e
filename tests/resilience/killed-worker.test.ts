import { type ChildProcess, spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { type ApiClient, until } from '../support/api-client.js';
import { freshDatabase, redisUrl, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, WEEK } from '../support/small-shop.js';

const WORKER = fileURLToPath(new URL('../../apps/worker/dist/main.js', import.meta.url));

let database: TestDatabase;
let shopId: string;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;
let workers: ChildProcess[];

beforeAll(async () => {
  database = await freshDatabase();
  ({ shopId } = await createSmallShop(database.store));
  const redis = { url: redisUrl(), prefix: `test-${randomBytes(4).toString('hex')}` };
  const start = () =>
    spawn(process.execPath, [WORKER], {
      env: {
        ...process.env,
        DATABASE_URL: database.url,
        REDIS_URL: redis.url,
        QUEUE_PREFIX: redis.prefix,
        LOG_LEVEL: 'silent',
        JOB_LEASE_SECONDS: '3',
        SWEEP_SECONDS: '1',
      },
      stdio: 'ignore',
    });
  workers = [start(), start()];
  api = await runningApi(database, redis);
  manager = await api.signIn('manager');
});
afterAll(async () => {
  await api.service.stop();
  for (const worker of workers) worker.kill('SIGKILL');
  await database.drop();
});

describe('a worker killed in mid-plan', () => {
  it('leaves its plan to the other, which finishes it once', async () => {
    const asked = await manager.post('/v1/plan-runs', { weekOf: WEEK, seconds: 8 });
    const row = () =>
      database.store.inShop(shopId, (tx) => tx.planRun.findUniqueOrThrow({ where: { id: asked.body.id } }));
    const held = await until(row, (run) => run.status === 'running' && run.progress !== null);
    const pid = Number(held.leaseHolder!.split(':')[1]);
    expect(workers.map((worker) => worker.pid)).toContain(pid);
    process.kill(pid, 'SIGKILL');
    const done = await until(row, (run) => run.status !== 'running', 90);
    expect(done.status).toBe('done');
    expect(done.attempts).toBe(2);
    expect(Number(done.leaseHolder!.split(':')[1])).not.toBe(pid);
    const plan = done.plan as { visits: object[] };
    expect(plan.visits.length).toBeGreaterThan(0);
    expect(await database.store.inShop(shopId, (tx) => tx.visit.count({ where: { planRunId: asked.body.id } }))).toBe(
      plan.visits.length,
    );
  });
});
