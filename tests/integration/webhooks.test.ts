import { type ChildProcess, spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import { emitEvent } from '@deckround/store';
import { isPublic, pauseSeconds, post, signedHeaders } from '@deckround/worker';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { Webhook } from 'standardwebhooks';
import { type ApiClient, until } from '../support/api-client.js';
import { freshDatabase, redisUrl, type TestDatabase } from '../support/database.js';
import { draftOf } from '../support/finished-visit.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop } from '../support/small-shop.js';

const WORKER = fileURLToPath(new URL('../../apps/worker/dist/main.js', import.meta.url));
const EVENTS = 10;

describe('signing', () => {
  // Known answer of Standard Webhooks 1.0.0 (reference library's test).
  it('gives the published signature', () => {
    const secret = 'whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw';
    const id = 'msg_p5jXN8AQM9LWM0D4loKWxJek';
    expect(signedHeaders(id, '{"test": 2432232314}', [secret], new Date(1614265330_000))).toEqual({
      'webhook-id': id,
      'webhook-timestamp': '1614265330',
      'webhook-signature': 'v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=',
    });
  });

  it('pauses as the standard lists, then daily', () => {
    const pauses = Array.from({ length: 11 }, (_, index) => pauseSeconds(index + 1, 5, 0));
    expect(pauses).toEqual([5, 300, 1800, 7200, 18_000, 36_000, 50_400, 72_000, 86_400, 86_400, 86_400]);
  });
});

describe('addresses', () => {
  it.each([
    '127.0.0.1',
    '10.1.2.3',
    '172.16.0.1',
    '192.168.1.1',
    '169.254.169.254',
    '100.64.0.1',
    '0.0.0.0',
    '224.0.0.1',
    '::1',
    'fe80::1',
    'fd00::1',
    '::ffff:10.0.0.1',
  ])('%s is refused', (address) => expect(isPublic(address)).toBe(false));
  it.each(['8.8.8.8', '2606:4700::1111'])('%s is public', (address) => expect(isPublic(address)).toBe(true));

  it('are judged after resolving: a name that leads home is not called', async () => {
    const answer = await post('https://localhost/hook', '{}', {}, { timeoutSeconds: 2, mayBePrivate: false });
    expect(answer).toMatchObject({ status: null, error: expect.stringMatching(/not a public address/) });
  });
});

describe('events', () => {
  let database: TestDatabase;
  let shop: SmallShop;
  let api: Awaited<ReturnType<typeof runningApi>>;
  let manager: ApiClient;
  let receiver: Server;
  let worker: ChildProcess;
  let hook: string;
  const seen = new Map<string, { type: string; times: number }>();
  let requests = 0;
  let webhook: Webhook;

  const startWorker = (prefix: string) =>
    spawn(process.execPath, [WORKER], {
      env: {
        ...process.env,
        ...{ DATABASE_URL: database.url, REDIS_URL: redisUrl(), QUEUE_PREFIX: prefix, LOG_LEVEL: 'silent' },
        ...{ JOB_LEASE_SECONDS: '2', SWEEP_SECONDS: '1', DELIVER_SECONDS: '0.1' },
        ...{ WEBHOOK_PRIVATE: 'yes', WEBHOOK_TIMEOUT_SECONDS: '0.5', WEBHOOK_PAUSE_SECONDS: '0.01' },
      },
      stdio: 'ignore',
    });
  const prefix = `test-${randomBytes(4).toString('hex')}`;

  beforeAll(async () => {
    database = await freshDatabase();
    shop = await createSmallShop(database.store);
    // Fails 9 times in 10: with errors, redirects, too late, or after having taken the event in.
    receiver = createServer((request, response) => {
      let body = '';
      request.on('data', (chunk) => {
        body += chunk;
      });
      request.on('end', () => {
        requests += 1;
        const event = webhook.verify(body, request.headers as Record<string, string>) as { type: string };
        const id = String(request.headers['webhook-id']);
        const take = () => {
          const times = (seen.get(id)?.times ?? 0) + 1;
          seen.set(id, { type: event.type, times });
        };
        const turn = requests % 10;
        if (turn === 0) {
          take();
          response.writeHead(204).end();
        } else if (turn === 1) {
          take(); // taken in, but the answer says otherwise: it comes again
          response.writeHead(500).end();
        } else if (turn === 2) setTimeout(() => response.writeHead(204).end(), 900);
        else if (turn === 3) response.writeHead(302, { location: hook }).end();
        else response.writeHead(503).end();
      });
    });
    await new Promise<void>((done) => receiver.listen(0, '127.0.0.1', done));
    hook = `http://127.0.0.1:${(receiver.address() as AddressInfo).port}/hook`;
    api = await runningApi(database, { url: redisUrl(), prefix });
    manager = await api.signIn('manager');
    worker = startWorker(prefix);
  });
  afterAll(async () => {
    worker.kill('SIGKILL');
    await api.service.stop();
    receiver.closeAllConnections();
    receiver.close();
    await database.drop();
  });

  it('go to public https addresses only', async () => {
    for (const url of ['http://example.org/', 'https://127.0.0.1/', 'https://[::1]/', 'https://localhost/'])
      expect((await manager.post('/v1/webhook-endpoints', { url })).status).toBe(422);
  });

  // With more of them, and everything killed meanwhile: tests/resilience/killed-deliveries.test.ts.
  it('reach a receiver that fails nine times in ten exactly once by id', async () => {
    const created = await manager.post('/v1/webhook-endpoints', { url: 'https://receiver.example/hook' });
    expect(created.body.secret).toMatch(/^whsec_/);
    webhook = new Webhook(created.body.secret);
    const { id } = created.body;
    await database.store.inShop(shop.shopId, async (tx) => {
      await tx.webhookEndpoint.update({ where: { id }, data: { url: hook } });
      for (let each = 0; each < EVENTS; each += 1)
        await emitEvent(tx, shop.shopId, 'visit.promised', { number: each }, new Date());
    });
    const waiting = () =>
      database.store.inShop(shop.shopId, (tx) => tx.webhookDelivery.count({ where: { state: 'waiting' } }));
    // The pauses grow with the standard's steps; waiting for hours is not what is tried here.
    const hurry = setInterval(
      () => void manager.post(`/v1/webhook-endpoints/${id}/retry`, {}).catch(() => undefined),
      300,
    );
    try {
      await until(waiting, (count) => count === 0);
    } finally {
      clearInterval(hurry);
    }
    const events = await database.store.inShop(shop.shopId, (tx) => tx.outboxEvent.findMany());
    expect([...seen.keys()].sort()).toEqual(events.map((event) => `msg_${event.id}`).sort());
    expect([...seen.values()].some((each) => each.times > 1)).toBe(true); // at least once: doubles share one id
    const deliveries = (await manager.get(`/v1/webhook-endpoints/${id}/deliveries?limit=500`)).body.items;
    expect(deliveries[0]).toMatchObject({ state: 'delivered', type: 'visit.promised', lastStatus: 204 });
  });

  it('are told with what made them true, and not when that fails', async () => {
    const types = async () =>
      (
        await database.store.inShop(shop.shopId, (tx) =>
          tx.outboxEvent.findMany({ where: { type: { not: 'visit.promised' } } }),
        )
      ).map((event) => event.type);
    const { draft } = await draftOf(database.store, shop, manager, '2026-06-08');
    expect((await manager.post(`/v1/charge-documents/${draft.id}/issue`, {})).status).toBe(409);
    expect(await types()).toEqual(['visit.done']);
    const settings = await manager.get('/v1/charge-settings');
    await manager.patch(
      '/v1/charge-settings',
      { seller: { legalName: 'Small shop LLC' } },
      settings.headers.get('etag'),
    );
    await manager.patch(`/v1/charge-documents/${draft.id}`, {}, '"1"');
    expect((await manager.post(`/v1/charge-documents/${draft.id}/issue`, {})).status).toBe(201);
    expect((await manager.post(`/v1/charge-documents/${draft.id}/credit`, { reason: 'no' })).status).toBe(201);
    expect((await types()).sort()).toEqual(['document.credited', 'document.issued', 'visit.done']);
  });

  it('are signed by both secrets while a rotation overlaps', async () => {
    const [{ id }] = (await manager.get('/v1/webhook-endpoints')).body.items;
    const rotated = await manager.post(`/v1/webhook-endpoints/${id}/rotate-secret`, {});
    expect(rotated.body.secret).toMatch(/^whsec_/);
    // The receiver still verifies with the old secret: what waits arrives all the same.
    expect((await manager.post(`/v1/webhook-endpoints/${id}/test`, {})).body).toEqual({ asked: 1 });
    const hurry = setInterval(
      () => void manager.post(`/v1/webhook-endpoints/${id}/retry`, {}).catch(() => undefined),
      300,
    );
    try {
      await until(
        async () => [...seen.values()].map((each) => each.type),
        (types) => types.includes('endpoint.test'),
        60,
      );
    } finally {
      clearInterval(hurry);
    }
  });
});
