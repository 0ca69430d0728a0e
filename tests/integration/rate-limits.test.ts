import { randomBytes } from 'node:crypto';
import { MemoryRateLimiter, RedisRateLimiter } from '@deckround/api';
import { createLogger } from '@deckround/platform';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { ApiClient, until } from '../support/api-client.js';
import { freshDatabase, redisUrl, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop } from '../support/small-shop.js';

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;

beforeAll(async () => {
  database = await freshDatabase();
  await createSmallShop(database.store);
  api = await runningApi(database, undefined, undefined, 0, {
    RATE_KEY_PER_MINUTE: '40',
    RATE_PUBLIC_PER_MINUTE: '30',
  });
  manager = await api.signIn('manager');
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

const newKey = async (requestsPerMinute?: number) => {
  const body = { name: 'test', scopes: ['read'], ...(requestsPerMinute && { requestsPerMinute }) };
  const { key, ...view } = (await manager.post('/v1/integration-keys', body)).body;
  return { view, client: new ApiClient(api.client.address, key) };
};

describe('a key', () => {
  it('may send as many requests a minute as it was given, and is told so', async () => {
    const { view, client } = await newKey(5);
    expect(view.requestsPerMinute).toBe(5);
    const answers = [];
    for (let each = 0; each < 6; each += 1) answers.push(await client.get('/v1/sites'));
    expect(answers.map((answer) => answer.status)).toEqual([200, 200, 200, 200, 200, 429]);
    const [first, last] = [answers[0]!, answers[5]!];
    // draft-ietf-httpapi-ratelimit-headers-10: the policy's name, its quota q and window w; what remains r, until when t
    expect(first.headers.get('ratelimit-policy')).toBe('"per-minute";q=5;w=60');
    expect(first.headers.get('ratelimit')).toBe('"per-minute";r=4;t=12');
    expect(last.headers.get('ratelimit')).toMatch(/^"per-minute";r=0;t=\d+$/);
    expect(last.body).toMatchObject({ status: 429, type: 'urn:deckround:problem:quota-exceeded' });
    const wait = Number(last.headers.get('retry-after'));
    expect(wait).toBeGreaterThan(0);
    expect(wait).toBeLessThanOrEqual(12);

    const other = await newKey();
    expect(other.view.requestsPerMinute).toBeNull();
    const answer = await other.client.get('/v1/sites');
    expect([answer.status, answer.headers.get('ratelimit-policy')]).toEqual([200, '"per-minute";q=40;w=60']);
  });

  it('leaves sign-ins alone, which have no quota here', async () => {
    const answer = await manager.get('/v1/sites');
    expect([answer.status, answer.headers.get('ratelimit')]).toEqual([200, null]);
  });
});

describe('an address without a sign-in', () => {
  it('is kept to a quota of its own, guesses at keys included', async () => {
    const guess = new ApiClient(api.client.address, 'x'.repeat(30));
    const first = await guess.get('/v1/sites');
    expect([first.status, first.headers.get('ratelimit-policy')]).toEqual([401, '"per-minute";q=30;w=60']);
    const statuses = await Promise.all(
      Array.from({ length: 60 }, async (_, each) =>
        each % 2 === 0
          ? (await api.client.get('/v1/calendars/none.ics')).status
          : (await guess.get('/v1/sites')).status,
      ),
    );
    expect(new Set(statuses)).toEqual(new Set([401, 404, 429]));
    expect((await manager.get('/v1/sites')).status).toBe(200);
  });
});

describe('the document', () => {
  it('tells every answer’s limits', async () => {
    const { paths, components } = (await manager.get('/openapi.json')).body;
    expect(Object.keys(components.headers)).toEqual(['RateLimitPolicy', 'RateLimit', 'RetryAfter']);
    expect(Object.keys(components.responses.TooMany.headers)).toEqual(['RateLimit-Policy', 'RateLimit', 'Retry-After']);
    type Responses = Record<string, { headers?: object }>;
    for (const operations of Object.values<Record<string, { responses: Responses }>>(paths)) {
      for (const { responses } of Object.values(operations)) {
        expect(responses['429']).toEqual({ $ref: '#/components/responses/TooMany' });
        const good = Object.keys(responses).filter((status) => status < '300');
        for (const status of good)
          expect(Object.keys(responses[status]!.headers ?? {})).toEqual(expect.arrayContaining(['RateLimit']));
      }
    }
  });
});

describe.each(['memory', 'redis'] as const)('counting in %s', (kind) => {
  const policy = { quota: 3, windowSeconds: 3600 };
  const logger = createLogger('silent', 'test');
  const prefix = `test-${randomBytes(4).toString('hex')}`;

  it('holds for all who share it, looks without taking, and forgets', async () => {
    const one = kind === 'memory' ? new MemoryRateLimiter() : new RedisRateLimiter(redisUrl(), prefix, logger);
    const two = kind === 'memory' ? one : new RedisRateLimiter(redisUrl(), prefix, logger);
    // A connection that is still being made lets all through.
    for (const limiter of [one, two]) {
      await until(
        () => limiter.take('warm', { quota: 1000, windowSeconds: 3600 }),
        (taken) => taken.remaining < 1000,
      );
    }
    expect(await one.take('a', policy)).toMatchObject({ allowed: true, remaining: 2 });
    expect(await two.take('a', policy)).toMatchObject({ allowed: true, remaining: 1 });
    expect(await one.take('a', policy, 0)).toMatchObject({ allowed: true, remaining: 1 });
    const third = await one.take('a', policy);
    expect(third).toMatchObject({ allowed: true, remaining: 0 });
    expect(third.retryAfterSeconds).toBeLessThanOrEqual(1200);
    expect(third.retryAfterSeconds).toBeGreaterThan(1100); // it fills up while this waits
    expect(await two.take('a', policy)).toMatchObject({ allowed: false, remaining: 0 });
    expect(await two.take('b', policy)).toMatchObject({ allowed: true });
    await two.forget('a');
    expect(await one.take('a', policy)).toMatchObject({ allowed: true, remaining: 2 });
    await Promise.all([one.close(), two.close()]);
  });
});

describe('a Redis that does not answer', () => {
  it('lets requests through', async () => {
    const limiter = new RedisRateLimiter('redis://127.0.0.1:1', 'test', createLogger('silent', 'test'));
    const answers = await Promise.all([1, 2, 3].map(() => limiter.take('a', { quota: 1, windowSeconds: 60 })));
    expect(answers.map((answer) => answer.allowed)).toEqual([true, true, true]);
    await limiter.close();
  });
});
