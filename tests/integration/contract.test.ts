import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { generate } from 'json-schema-faker';
import { ApiClient } from '../support/api-client.js';
import { contractOf, type OpenApi, type Operation, type Parameter, type Schema } from '../support/contract.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { type Known, mutate, type Random, randomOf, withKnown } from '../support/make-value.js';
import { plannedShop } from '../support/planned-shop.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, WEEK } from '../support/small-shop.js';

/** `npm run bench:contract` sends many more. */
const REQUESTS = Number(process.env.DECKROUND_REQUESTS ?? 1000);
const SEED = Number(process.env.DECKROUND_SEED ?? 20261125);

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let document: OpenApi;
let contract: ReturnType<typeof contractOf>;
let callers: Record<string, ApiClient>;
/** Ids that another shop owns: some are sent, the others only watched for. None of these may ever be seen. */
let sentForeign: string[];
let watchedForeign: string[];
let components: Schema;
let own: { ids: string[]; codes: string[] };

beforeAll(async () => {
  database = await freshDatabase();
  const other = await createSmallShop(database.store, 'other-shop');
  const foreign = await idsOf(database, other.shopId);
  sentForeign = foreign.filter((_, each) => each % 2 === 0);
  watchedForeign = foreign.filter((_, each) => each % 2 === 1);
  api = await runningApi(database);
  const shop = await plannedShop(database, api);
  own = { ids: await idsOf(database, shop.shopId), codes: [...shop.machineIds.keys(), 'sharpen-blades', 'zero-turn'] };
  const manager = await api.signIn('manager');
  const { schemas } = (await api.client.get('/openapi.json')).body.components;
  const scopes = schemas.IntegrationKeyCreate.properties.scopes.items.enum;
  const made = await manager.post('/v1/integration-keys', { name: 'contract', scopes });
  callers = {
    manager,
    technician: await api.signIn('technician'),
    supervisor: await api.signIn('supervisor'),
    key: new ApiClient(api.client.address, made.body.key),
    nobody: api.client,
  };
  document = (await api.client.get('/openapi.json')).body;
  contract = contractOf(document);
  components = withKnown(document.components, '', known) as Schema;
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

/** Every id of a shop's rows, in whatever table. */
async function idsOf({ store }: TestDatabase, shopId: string): Promise<string[]> {
  return store.asOwner(async (tx) => {
    const tables = await tx.$queryRawUnsafe<{ name: string }[]>(
      "select table_name as name from information_schema.columns where column_name = 'shop_id' and table_schema = 'public'",
    );
    const ids: string[] = [];
    for (const { name } of tables) {
      const rows = await tx
        .$queryRawUnsafe<{ id: string }[]>(`select id::text from "${name}" where shop_id = $1::uuid limit 40`, shopId)
        .catch(() => []);
      ids.push(...rows.map((row) => row.id).filter((id) => id.length === 36));
    }
    return ids;
  });
}

/**
 * Left out: what starts a search or a fit (they have tests of their own and would keep both cores busy), a stream that
 * does not end, and the end of one's own sign-in.
 */
const isAsked = ({ method, path }: Operation) =>
  !(method === 'POST' && /(plan-runs|forecast-runs|refits|demo-shop)$/.test(path)) &&
  !/progress$|forecast-quality/.test(path) &&
  !(method === 'DELETE' && /^\/v1\/(session|people)/.test(path)) &&
  !(method === 'PATCH' && path.startsWith('/v1/people'));

interface Request {
  readonly caller: string;
  readonly operation: Operation;
  readonly path: string;
  readonly body: unknown;
  readonly headers: Record<string, string>;
}

async function requestOf(random: Random, operations: readonly Operation[]): Promise<Request> {
  const operation = random.pick(operations);
  const values = async (schema: Schema, name: string) =>
    generate({ ...sensible(schema, name), components } as never, { seed: random.below(2 ** 31) } as never);
  const textOf = async ({ schema, name }: Parameter) => {
    const value = await values(schema, name);
    return String(random.chance(0.15) ? mutate(value, random, sentForeign) : value);
  };
  let path = operation.path;
  const query: string[] = [];
  const headers: Record<string, string> = {};
  for (const parameter of operation.parameters) {
    if (parameter.in === 'path')
      path = path.replace(`{${parameter.name}}`, encodeURIComponent(toText(await textOf(parameter))));
    else if (parameter.in === 'query') {
      if (parameter.required || random.chance(0.4))
        query.push(`${parameter.name}=${encodeURIComponent(toText(await textOf(parameter)))}`);
    } else if (/^if-match$/i.test(parameter.name)) headers['if-match'] = `"${random.pick([1, 1, 1, 2, 3, 77])}"`;
    else if (/^idempotency-key$/i.test(parameter.name)) headers['idempotency-key'] = `k${random.below(2 ** 31)}`;
  }
  let body: unknown;
  if (operation.body !== null) {
    body = await values(operation.body, '');
    if (random.chance(0.5)) body = mutate(body, random, sentForeign);
  }
  const caller = random.chance(0.6) ? 'manager' : random.pick(Object.keys(callers));
  return { caller, operation, path: path + (query.length > 0 ? `?${query.join('&')}` : ''), body, headers };
}

/** One object: shapes are compiled once each. */
const PROBLEM: Schema = { $ref: '#/components/schemas/Problem' };

const toText = (text: string) => text.replace(/[\ud800-\udfff]/g, '').slice(0, 2000) || '-';

/** Values that exist, so that a request gets past the first door. */
const known: Known = (name, { format }) => {
  if (format === 'uuid') return [...own.ids, ...sentForeign.slice(0, own.ids.length / 10)];
  if (format === 'uri' || /url$/i.test(name)) return ['https://receiver.example/hook'];
  if (/^(of|date|weekOf|from|to|until|costFrom|asOf|firstDate)$/.test(name) && format !== 'date-time') return [WEEK];
  if (format === 'date') return ['2026-06-08', '2026-06-09', '2026-06-12'];
  if (format === 'date-time') return ['2026-06-08T15:00:00Z', '2026-06-09T09:30:00-05:00'];
  if (format === 'email') return Array.from({ length: 1000 }, (_, each) => `p${each}@contract.example`);
  if (/^(itemCode|machineClass|skill)$/.test(name)) return own.codes;
  return undefined;
};
const made = new Map<Schema, Schema>();
function sensible(schema: Schema, name: string): Schema {
  if (!made.has(schema)) made.set(schema, withKnown(schema, name, known) as Schema);
  return made.get(schema)!;
}

async function faultOf(
  { caller, operation, path, body, headers }: Request,
  reached: Set<Operation>,
): Promise<string | null> {
  const answer = await callers[caller]!.send(operation.method, path, body, headers);
  const { status } = answer;
  if (status >= 500) return `it failed with ${status}`;
  // What a server may always say of a request that it cannot route or read (RFC 9110).
  const isPlain = ['400', '404', '414', '415', '304'].includes(String(status));
  if (!operation.answers.has(String(status)) && !isPlain) return `status ${status} is not declared`;
  const text = typeof answer.body === 'string' ? answer.body : JSON.stringify(answer.body);
  const seen = watchedForeign.find((id) => text.includes(id));
  if (seen !== undefined) return `it shows ${seen}, which belongs to another shop`;
  if (status >= 400) {
    if (!/application\/problem\+json/.test(answer.headers.get('content-type') ?? ''))
      return `status ${status} without a problem document`;
    return contract.faultOf(PROBLEM, answer.body);
  }
  if (status < 300) reached.add(operation);
  const shape = operation.answers.get(String(status));
  if (shape && typeof answer.body !== 'string') {
    const fault = contract.faultOf(shape, answer.body);
    if (fault !== null) return `the answer is not as declared: ${fault}`;
  }
  if (status < 300 && operation.body !== null) {
    const fault = contract.faultOf(operation.body, body === undefined ? null : JSON.parse(JSON.stringify(body)));
    if (fault !== null) return `it took a body that is not as declared: ${fault}`;
  }
  return null;
}

describe('the contract', () => {
  it('holds for whatever is sent: no crash, no undeclared status or field, nobody else’s rows', async () => {
    const operations = contract.operations.filter(isAsked);
    const random = randomOf(SEED);
    const faults: unknown[] = [];
    const reached = new Set<Operation>();
    for (let sent = 0; sent < REQUESTS && faults.length < 10; sent += 1) {
      const request = await requestOf(random, operations);
      const fault = await faultOf(request, reached).catch((error: unknown) => String(error));
      if (fault !== null)
        faults.push({
          ...{
            sent,
            fault,
            caller: request.caller,
            method: request.operation.method,
            path: request.path.slice(0, 300),
          },
          body: JSON.stringify(request.body)?.slice(0, 1500),
        });
    }
    expect(faults).toEqual([]);
    // Requests that are only refused would prove little.
    expect(reached.size / operations.length).toBeGreaterThan(0.3);
  }, 7_200_000);
});
