import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { connect, dataOf, everyItem, Refused } from '@deckround/client';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop } from '../support/small-shop.js';

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let shop: ReturnType<typeof connect>;

beforeAll(async () => {
  database = await freshDatabase();
  await createSmallShop(database.store);
  api = await runningApi(database);
  const manager = await api.signIn('manager');
  const scopes = ['read', 'register'];
  const { key } = (await manager.post('/v1/integration-keys', { name: 'client', scopes })).body;
  shop = connect({ address: api.service.address, key });
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

describe('the typed client', () => {
  it('is what the document says', () => {
    const generate = fileURLToPath(new URL('../../libs/client/generate.mjs', import.meta.url));
    const { status, stderr } = spawnSync(process.execPath, [generate, '--check'], { encoding: 'utf8' });
    expect([status, stderr]).toEqual([0, '']);
  });

  it('walks through pages, creates once, and throws what the service refuses', async () => {
    const codes: string[] = [];
    for await (const site of everyItem((cursor) =>
      shop.GET('/v1/sites', { params: { query: { limit: 2, ...(cursor && { cursor }) } } }),
    ))
      codes.push(site.code);
    expect(codes.sort()).toEqual(['S1', 'S2', 'S3']);

    const header = { 'Idempotency-Key': 'one-and-the-same' };
    const body = { code: 'C9', name: 'Sedge Trust' };
    const create = () => dataOf(shop.POST('/v1/customers', { params: { header }, body }));
    const [first, second] = [await create(), await create()];
    expect(first.id).toBe(second.id);

    const wrong = dataOf(
      shop.POST('/v1/customers', {
        params: { header: { 'Idempotency-Key': 'another' } },
        // @ts-expect-error a name is text
        body: { code: 'C10', name: 7 },
      }),
    );
    const refusal = await wrong.catch((error: unknown) => error);
    expect(refusal).toBeInstanceOf(Refused);
    expect((refusal as Refused).problem).toMatchObject({ status: 422, errors: [{ pointer: '/name' }] });
  });
});
