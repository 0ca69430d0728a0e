import { afterAll, beforeAll, expect, it } from '@jest/globals';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop } from '../support/small-shop.js';

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;

beforeAll(async () => {
  database = await freshDatabase();
  api = await runningApi(database);
  await createSmallShop(database.store);
}, 60_000);
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

const LISTS = [
  ...['machines', 'sites', 'readings', 'stopgaps', 'part-orders', 'visits', 'audit-entries', 'due', 'road-calls'],
  ...['machine-labels', 'charge-documents', 'completions', 'reliability/machines', 'visit-answers'],
  'week/left-out?weekOf=2026-06-08',
];
const NOBODYS = ['-'.repeat(36), '0123456789abcdefghij', "'; drop table machine"];

it.each(LISTS)('a cursor that names no row is refused: %s', async (list) => {
  const manager = await api.signIn('manager');
  for (const id of NOBODYS) {
    const cursor = Buffer.from(JSON.stringify(['2026-06-07', id])).toString('base64url');
    const { status, body } = await manager.get(`/v1/${list}${list.includes('?') ? '&' : '?'}cursor=${cursor}`);
    expect([id, status, body.detail]).toEqual([id, 422, expect.stringMatching(/start again without it/)]);
  }
});
