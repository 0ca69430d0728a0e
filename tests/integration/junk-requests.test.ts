import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop } from '../support/small-shop.js';

interface Operation {
  readonly method: string;
  readonly path: string;
  readonly body: boolean;
  readonly statuses: readonly string[];
}

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;
let operations: Operation[];

beforeAll(async () => {
  database = await freshDatabase();
  await createSmallShop(database.store);
  api = await runningApi(database);
  manager = await api.signIn('manager');
  const { paths } = (await api.client.get('/openapi.json')).body as {
    paths: Record<string, Record<string, { requestBody?: object; responses: object }>>;
  };
  operations = Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods)
      // Background work is asked for elsewhere; a stream does not end; ending one's own sign-in ends the test.
      .filter(
        ([method]) =>
          !/plan-runs$|forecast-runs$|progress$|forecast-quality/.test(path) &&
          !(method === 'delete' && path === '/v1/session'),
      )
      .map(([method, operation]) => ({
        method: method.toUpperCase(),
        path,
        body: operation.requestBody !== undefined,
        statuses: Object.keys(operation.responses),
      })),
  );
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

const junk = fc.oneof(
  fc.jsonValue({ maxDepth: 3 }),
  fc.record(
    {
      code: fc.oneof(fc.string(), fc.constant('a\u0000b'), fc.integer()),
      name: fc.oneof(fc.string({ maxLength: 400 }), fc.constant(null)),
      machineId: fc.oneof(fc.uuid(), fc.string()),
      siteId: fc.oneof(fc.uuid(), fc.string()),
      readings: fc.array(fc.record({ machineId: fc.uuid(), readAt: fc.string(), hours: fc.string() }), {
        maxLength: 3,
      }),
      hours: fc.oneof(fc.double(), fc.string()),
      from: fc.string(),
      to: fc.string(),
      weekOf: fc.oneof(fc.constant('2026-02-30'), fc.string()),
      latitude: fc.double(),
    },
    { requiredKeys: [] },
  ),
);

describe('junk', () => {
  it('is answered with a declared status and a problem document, never with a crash', async () => {
    const anyOperation = fc.nat().map((index) => operations[index % operations.length]!);
    const value = fc.oneof(
      fc.uuid(),
      fc.string({ minLength: 1, maxLength: 40 }),
      fc.constant('%00'),
      fc.constant('9999-99-99'),
    );
    await fc.assert(
      fc.asyncProperty(anyOperation, junk, value, value, async (operation, body, id, filter) => {
        const path = operation.path.replace(/\{\w+\}/g, encodeURIComponent(id));
        const query =
          operation.method === 'GET'
            ? `?limit=${encodeURIComponent(filter)}&cursor=${encodeURIComponent(filter)}&weekOf=${encodeURIComponent(filter)}`
            : '';
        const answer = await manager.send(operation.method, path + query, operation.body ? body : undefined, {
          'idempotency-key': filter.replace(/[^\x21-\x7e]/g, 'x').slice(0, 40) || 'x',
          'if-match': '"1"',
        });
        expect({ operation, path, status: answer.status, isCrash: answer.status >= 500 }).toMatchObject({
          isCrash: false,
        });
        if (answer.status >= 400) {
          expect(answer.headers.get('content-type')).toMatch(/application\/problem\+json/);
          expect(answer.body).toMatchObject({
            status: answer.status,
            type: expect.stringMatching(/^urn:deckround:problem:/),
          });
        }
        expect([...operation.statuses, '304', '400', '404', '414', '415']).toContain(String(answer.status));
      }),
      { seed: 20260604, numRuns: 1500 },
    );
  });
});
