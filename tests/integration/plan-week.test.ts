import { type ChildProcess, spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import { checkPlan } from '@deckround/planning';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { type ApiClient, until } from '../support/api-client.js';
import { freshDatabase, redisUrl, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop, WEEK } from '../support/small-shop.js';

const WORKER = fileURLToPath(new URL('../../apps/worker/dist/main.js', import.meta.url));

// The same story in both modes: jobs in this process, and BullMQ on a real Redis with a worker process.
describe.each(['in process', 'BullMQ'] as const)('a week, planned %s', (mode) => {
  let database: TestDatabase;
  let shop: SmallShop;
  let api: Awaited<ReturnType<typeof runningApi>>;
  let manager: ApiClient;
  let worker: ChildProcess | undefined;

  beforeAll(async () => {
    database = await freshDatabase();
    shop = await createSmallShop(database.store);
    if (mode === 'BullMQ') {
      const redis = { url: redisUrl(), prefix: `test-${randomBytes(4).toString('hex')}` };
      worker = spawn(process.execPath, [WORKER], {
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
      api = await runningApi(database, redis);
    } else {
      api = await runningApi(database);
    }
    manager = await api.signIn('manager');
  });
  afterAll(async () => {
    await api.service.stop();
    worker?.kill('SIGTERM');
    await database.drop();
  });

  it('is forecast, each date with its reason', async () => {
    const asked = await manager.post('/v1/forecast-runs', { asOf: '2026-06-07', costFrom: WEEK, costDays: 14 });
    expect(asked.status).toBe(201);
    const run = await until(
      () => manager.get(`/v1/forecast-runs/${asked.body.id}`),
      ({ body }) => ['done', 'failed'].includes(body.status),
    );
    expect(run.body).toMatchObject({ status: 'done', machines: 6, error: null });
    const due = await manager.get(`/v1/due?machineId=${shop.machineIds.get('M1')}&code=sharpen-blades`);
    expect(due.body.items).toHaveLength(1);
    // 200 h + 38 weeks × 6 h = 428 h at the last sharpening, due 40 h later: 13 weeks before the 506 h of 1 June.
    expect(due.body.items[0].sentence).toMatch(/468(\.0)? h/);
    expect(due.body.items[0].probabilityOverdue[0]).toBe(1);
    const usage = await manager.get(`/v1/machines/${shop.machineIds.get('M1')}/usage`);
    expect(usage.body.p50).toHaveLength(usage.body.p90.length);
    const supervisor = await api.signIn('supervisor');
    const own = await supervisor.get('/v1/due?limit=500');
    expect(own.body.items[0]).toMatchObject({ timingCostCents: null, deferralCents: null, why: null });
    expect(own.body.items[0].sentence).toMatch(/due/);
    const made = await manager.post('/v1/integration-keys', { name: 'reader', scopes: ['read'] });
    const read = await fetch(`${api.service.address}/v1/due?limit=1`, {
      headers: { authorization: `Bearer ${made.body.key}` },
    });
    expect((await read.json()).items[0]).toMatchObject({ why: null, sentence: expect.stringMatching(/due/) });
    expect(due.body.items[0].why).toMatchObject({ sentence: due.body.items[0].sentence });
    expect(new Set(own.body.items.map((item: { siteId: string }) => item.siteId))).toEqual(
      new Set([shop.siteIds.get('S1')]),
    );
  });

  it('is planned with progress, checked, confirmed, kept on planning again, and finished', async () => {
    const asked = await manager.post('/v1/plan-runs', { weekOf: WEEK, iterations: 3000 });
    expect(asked.body).toMatchObject({ status: 'asked', weekOf: WEEK, days: 7 });
    const stream = await manager.get(`/v1/plan-runs/${asked.body.id}/progress`);
    expect(stream.headers.get('content-type')).toMatch(/text\/event-stream/);
    expect(stream.body).toMatch(/event: progress\n/);
    expect(stream.body).toMatch(/event: end\ndata: \{.*"status":"done"/);
    const snapshot = (await manager.get(`/v1/plan-runs/${asked.body.id}/snapshot`)).body;
    const plan = (await manager.get(`/v1/plan-runs/${asked.body.id}/plan`)).body;
    expect(checkPlan(snapshot, plan)).toEqual([]);
    expect(plan.visits.length).toBeGreaterThan(0);

    const week = await manager.get(`/v1/week?weekOf=${WEEK}`);
    const visits = week.body.routes.flatMap((route: { visits: object[] }) => route.visits);
    expect(visits).toHaveLength(plan.visits.length);
    expect(visits[0].items[0].reason).not.toBe('');

    const [first] = visits;
    const later = (minutes: number) => new Date(Date.parse(first.startAt) + minutes * 60_000).toISOString();
    const wrong = { state: 'confirmed', promisedFrom: later(10), promisedTo: later(70) };
    const refused = await manager.patch(`/v1/visits/${first.id}`, wrong, `"${first.version}"`);
    expect(refused.status).toBe(422);
    expect(refused.body.errors).toMatchObject([{ pointer: '/promisedFrom' }]);
    expect((await manager.get(`/v1/visits/${first.id}`)).body.state).toBe('proposed');

    expect((await manager.post('/v1/week/confirm', { weekOf: WEEK })).body).toEqual({ confirmed: visits.length });
    const again = await manager.post('/v1/plan-runs', { weekOf: WEEK, iterations: 2000, seed: 7 });
    await until(
      () => manager.get(`/v1/plan-runs/${again.body.id}`),
      ({ body }) => ['done', 'failed'].includes(body.status),
    );
    const after = await manager.get(`/v1/visits?from=${WEEK}&state=confirmed`);
    const key = (visit: { id: string; date: string; technicianId: string }) =>
      `${visit.id} ${visit.date} ${visit.technicianId}`;
    expect(after.body.items.map(key).sort()).toEqual(visits.map(key).sort());
    for (const visit of after.body.items) {
      expect(visit.startAt >= visit.promisedFrom && visit.startAt <= visit.promisedTo).toBe(true);
    }

    const supervisor = await api.signIn('supervisor');
    for (const seen of (await supervisor.get('/v1/visits')).body.items) {
      expect(seen).toMatchObject({ siteId: shop.siteIds.get('S1'), marginalCents: null, reason: null });
      expect(JSON.stringify(seen)).not.toMatch(/USD/);
    }

    const technician = await api.signIn('technician');
    const [visit] = after.body.items;
    const machineId = visit.items[0].machineId;
    const finished = await technician.post(`/v1/visits/${visit.id}/finish`, {
      finishedAt: visit.endAt,
      signedBy: 'Linnet',
      done: visit.items.map((item: { id: string }) => item.id),
      readings: [{ machineId, hours: '700' }],
    });
    expect(finished.body.state).toBe('done');
    const completions = await technician.get(`/v1/completions?machineId=${machineId}&limit=500`);
    expect(
      completions.body.items.filter((each: { visitId: string }) => each.visitId === visit.id).length,
    ).toBeGreaterThan(0);
    expect((await technician.post(`/v1/visits/${visit.id}/finish`, { finishedAt: visit.endAt, done: [] })).status).toBe(
      409,
    );
  });

  it('tells of the dearest that waits, and of the rest when asked', async () => {
    const leftOut = Array.from({ length: 30 }, (_, k) => ({
      ...{ itemId: `${k}/x`, cents: (k * 7919) % 1000, mustDo: k === 17, code: 'time', reason: 'no room' },
    }));
    const far = '2031-01-06';
    await database.store.inShop(shop.shopId, async (tx) => {
      const { id: _, ...run } = await tx.planRun.findFirstOrThrow({ where: { status: 'done' } });
      await tx.planRun.create({ data: { ...run, weekOf: new Date(far), snapshot: {}, plan: { leftOut } } as never });
    });
    const week = (await manager.get(`/v1/week?weekOf=${far}`)).body;
    const told: typeof leftOut = [...week.leftOut];
    expect(told.length).toBeLessThan(30);
    expect(week).toMatchObject({ leftOutCount: 30, leftOutCents: leftOut.reduce((sum, { cents }) => sum + cents, 0) });
    for (let next: string | null = week.leftOutNext; next !== null; ) {
      const page = await manager.get(`/v1/week/left-out?weekOf=${far}&limit=7&cursor=${next}`);
      expect(page.body.items.length).toBeLessThanOrEqual(7);
      told.push(...page.body.items);
      next = page.body.next;
    }
    expect(new Set(told.map(({ itemId }) => itemId)).size).toBe(30);
    const [first, ...others] = told;
    expect(first!.itemId).toBe('17/x');
    expect(others.map(({ cents }) => cents)).toEqual(others.map(({ cents }) => cents).toSorted((x, y) => y - x));
    expect((await manager.get(`/v1/week/left-out?weekOf=${far}&limit=500`)).body.items).toEqual(told);
    for (const cursor of ['x', week.leftOutNext])
      expect((await manager.get(`/v1/week/left-out?weekOf=2030-01-07&cursor=${cursor}`)).status).toBe(422);
  });

  it('stops searching when asked, with a plan that stands', async () => {
    const asked = await manager.post('/v1/plan-runs', { weekOf: '2026-06-15', seconds: 300 });
    await until(
      () => manager.get(`/v1/plan-runs/${asked.body.id}`),
      ({ body }) => body.progress !== null,
    );
    expect((await manager.post(`/v1/plan-runs/${asked.body.id}/cancel`, {})).status).toBe(202);
    const run = await until(
      () => manager.get(`/v1/plan-runs/${asked.body.id}`),
      ({ body }) => !['asked', 'running'].includes(body.status),
      20,
    );
    expect(run.body).toMatchObject({ status: 'done', cancelAsked: true });
    const snapshot = (await manager.get(`/v1/plan-runs/${asked.body.id}/snapshot`)).body;
    const plan = (await manager.get(`/v1/plan-runs/${asked.body.id}/plan`)).body;
    expect(checkPlan(snapshot, plan)).toEqual([]);
  });
});
