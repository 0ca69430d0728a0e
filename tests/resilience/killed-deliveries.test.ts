import { randomBytes } from 'node:crypto';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { Webhook } from 'standardwebhooks';
import { ApiClient, until } from '../support/api-client.js';
import { ChildService } from '../support/child-service.js';
import { freshDatabase, redisUrl, type TestDatabase } from '../support/database.js';
import { createSmallShop, PASSWORD, type SmallShop } from '../support/small-shop.js';

/** `npm run bench:webhooks` sets 10,000. */
const EVENTS = Number(process.env.DECKROUND_EVENTS ?? 60);
/** Kills of each at most, so that few events do not take minutes of starting again. */
const MOST_KILLS = Math.max(2, EVENTS / 100);
const SENDERS = 8;
const TIMEOUT_SECONDS = 0.2;
const MANAGER = 'manager@small-shop.example';

let database: TestDatabase;
let shop: SmallShop;
let api: ChildService;
let worker: ChildService;
let receiver: Server;
let webhook: Webhook;
let hook: string;
let requests = 0;
/** How often each event was taken in, by webhook-id: the receiver's own memory is what makes it once. */
const taken = new Map<string, { times: number; stopgapId: string }>();

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  // Nine answers in ten are failures: errors, redirects, too late, or after the event was taken in.
  receiver = createServer((request, response) => {
    let body = '';
    request.on('data', (chunk) => {
      body += chunk;
    });
    request.on('end', () => {
      requests += 1;
      const event = webhook.verify(body, request.headers as Record<string, string>) as { data: { stopgapId: string } };
      const id = String(request.headers['webhook-id']);
      const take = () => taken.set(id, { times: (taken.get(id)?.times ?? 0) + 1, stopgapId: event.data.stopgapId });
      const turn = requests % 10;
      if (turn === 0) {
        take();
        response.writeHead(204).end();
      } else if (turn === 1) {
        take(); // taken in, but the answer says otherwise: it comes again
        response.writeHead(500).end();
      } else if (turn === 2) setTimeout(() => response.writeHead(204).end(), TIMEOUT_SECONDS * 2000);
      else if (turn === 3) response.writeHead(302, { location: hook }).end();
      else response.writeHead(503).end();
    });
  });
  await new Promise<void>((done) => receiver.listen(0, '127.0.0.1', done));
  hook = `http://127.0.0.1:${(receiver.address() as AddressInfo).port}/hook`;
  const settings = {
    ...{ DATABASE_URL: database.url, REDIS_URL: redisUrl(), QUEUE_PREFIX: `test-${randomBytes(4).toString('hex')}` },
    ...{ JOB_LEASE_SECONDS: '2', SWEEP_SECONDS: '1', DELIVER_SECONDS: '0.1', WEBHOOK_PRIVATE: 'yes' },
    ...{ WEBHOOK_TIMEOUT_SECONDS: String(TIMEOUT_SECONDS), WEBHOOK_PAUSE_SECONDS: '0.01' },
  };
  api = await ChildService.start('api', settings);
  worker = await ChildService.start('worker', settings);
});
afterAll(async () => {
  await Promise.all([api.kill(), worker.kill()]);
  receiver.closeAllConnections();
  receiver.close();
  await database.drop();
});

/** The same every time: a linear congruential generator (Numerical Recipes' constants, from memory). */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

describe('events for another system', () => {
  it(`${EVENTS} of them are made once and reach a receiver that fails nine times in ten, API and worker killed meanwhile`, async () => {
    const manager = await new ApiClient(api.address).signIn(MANAGER, PASSWORD);
    const endpoint = await manager.post('/v1/webhook-endpoints', { url: hook, types: ['stopgap.recorded'] });
    webhook = new Webhook(endpoint.body.secret);
    const { id } = endpoint.body;
    let isOver = false;
    const random = chance(20260604);
    const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));

    /** Kills now the one, now the other, at moments that nothing foresees. */
    const killing = (async () => {
      while (!isOver && api.kills + worker.kills < 2 * MOST_KILLS) {
        await pause(500 + random() * 3500);
        const victim = random() < 0.5 ? api : worker;
        if (victim.kills >= MOST_KILLS) continue;
        await victim.kill();
        victim.spawn();
        await victim.ready();
      }
    })();
    // The pauses grow with the standard's steps; waiting for hours is not what is tried here.
    const hurrying = (async () => {
      while (!isOver) {
        await pause(Math.max(300, EVENTS / 5));
        await manager.post(`/v1/webhook-endpoints/${id}/retry`, {}).catch(() => undefined);
      }
    })();

    const machineId = shop.machineIds.get('M1')!;
    const stopgap = (n: number) => ({
      ...{
        machineId,
        code: 'weld',
        description: `stopgap ${n}`,
        madeOn: '2026-06-01',
        limitOn: '2099-12-31',
        minutes: 30,
        failureCents: 1000,
      },
    });
    let next = 0;
    /** Asks again, under the same key, until there is an answer. */
    const send = async () => {
      for (let n = next++; n < EVENTS; n = next++) {
        const status = await until(
          () =>
            manager.post('/v1/stopgaps', stopgap(n), { 'idempotency-key': `stopgap-${n}` }).then(
              (answer) => answer.status,
              () => null,
            ),
          (answered) => answered !== null && answered < 500,
          120,
        );
        expect(status).toBe(201);
      }
    };
    try {
      await Promise.all(Array.from({ length: SENDERS }, send));
      await until(
        () => database.store.inShop(shop.shopId, (tx) => tx.webhookDelivery.count({ where: { state: 'waiting' } })),
        (count) => count === 0 && api.kills > 0 && worker.kills > 0,
        Math.max(240, EVENTS),
      );
    } finally {
      isOver = true;
      await Promise.all([killing, hurrying]);
    }
    const { stopgaps, events } = await database.store.inShop(shop.shopId, async (tx) => ({
      stopgaps: await tx.stopgap.findMany({ select: { id: true, description: true } }),
      events: await tx.outboxEvent.findMany({ select: { id: true } }),
    }));
    expect(stopgaps.map((row) => row.description).sort()).toEqual(
      Array.from({ length: EVENTS }, (_, n) => `stopgap ${n}`).sort(),
    );
    expect([...taken.keys()].sort()).toEqual(events.map((event) => `msg_${event.id}`).sort());
    expect([...taken.values()].map((each) => each.stopgapId).sort()).toEqual(stopgaps.map((row) => row.id).sort());
    expect([...taken.values()].some((each) => each.times > 1)).toBe(true); // at least once: doubles share one id
    if (EVENTS > 1000)
      process.stderr.write(
        `${EVENTS} events, ${requests} requests, ${api.kills} kills of the API, ${worker.kills} of the worker\n`,
      );
  }, 7_200_000);
});
