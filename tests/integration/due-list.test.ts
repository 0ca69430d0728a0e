import { stoppedClock } from '@deckround/platform';
import { afterAll, beforeAll, expect, it } from '@jest/globals';
import { type ApiClient, until } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop, WEEK } from '../support/small-shop.js';

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let shop: SmallShop;
let manager: ApiClient;

beforeAll(async () => {
  database = await freshDatabase();
  api = await runningApi(database, undefined, stoppedClock('2026-06-07T15:00:00Z'));
  shop = await createSmallShop(database.store);
  manager = await api.signIn('manager');
  const { body: run } = await manager.post('/v1/forecast-runs', { asOf: '2026-06-07', costFrom: WEEK });
  await until(
    () => manager.get(`/v1/forecast-runs/${run.id}`),
    ({ body }) => body.status === 'done',
  );
}, 60_000);
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

interface Due {
  readonly id: string;
  readonly p50: string | null;
  readonly siteId: string;
  readonly machineId: string;
  readonly deferralCents: number;
  readonly costFrom: string;
  readonly probabilityOverdue: readonly number[];
}

/** Every page of three, one after the other. */
async function pages(query: string): Promise<Due[]> {
  const rows: Due[] = [];
  let cursor: string | null = null;
  do {
    const from: string = cursor === null ? '' : `&cursor=${encodeURIComponent(cursor)}`;
    const { body } = await manager.get(`/v1/due?limit=3&${query}${from}`);
    expect(body.items.length).toBeLessThanOrEqual(3);
    rows.push(...body.items);
    cursor = body.next;
  } while (cursor !== null);
  return rows;
}

const chance = (due: Due) => {
  const day = Math.round((Date.parse('2026-06-07') - Date.parse(due.costFrom)) / 86_400_000);
  return due.probabilityOverdue[Math.min(Math.max(0, day), due.probabilityOverdue.length - 1)] ?? 0;
};
const cost = (rows: readonly Due[]) => rows.reduce((sum, row) => sum + Math.max(0, row.deferralCents), 0);
const inOrder = (rows: readonly Due[], keyOf: (row: Due) => readonly (string | number)[]) =>
  rows.toSorted((a, b) => {
    const [one, other] = [
      [...keyOf(a), a.id],
      [...keyOf(b), b.id],
    ];
    const differs = one.findIndex((value, place) => value !== other[place]);
    return differs < 0 ? 0 : one[differs]! < other[differs]! ? -1 : 1;
  });

it('comes page by page, by date, by cost, or site by site, and nothing is missed between two pages', async () => {
  const all = (await manager.get('/v1/due?limit=500')).body.items as Due[];
  expect(all.length).toBeGreaterThan(20);
  expect(await pages('')).toEqual(inOrder(all, (row) => [row.p50 ?? '9999-12-31']));
  expect(await pages('order=cost')).toEqual(inOrder(all, (row) => [-row.deferralCents]));
  const siteCost = (siteId: string) => cost(all.filter((row) => row.siteId === siteId));
  expect(new Set(all.map(({ siteId }) => siteId)).size).toBeGreaterThan(1);
  expect(await pages('order=site')).toEqual(
    inOrder(all, (row) => [-siteCost(row.siteId), row.siteId, -row.deferralCents]),
  );
});

it('is found by its chance of being past tolerance today, and summed up', async () => {
  const all = (await manager.get('/v1/due?limit=500')).body.items as Due[];
  const overdue = all.filter((row) => chance(row) >= 0.5);
  expect(overdue.length).toBeGreaterThan(0);
  expect(overdue.length).toBeLessThan(all.length);
  expect(new Set((await pages('order=cost&overdueAtLeast=0.5')).map(({ id }) => id))).toEqual(
    new Set(overdue.map(({ id }) => id)),
  );
  const { body: sums } = await manager.get('/v1/due/summary');
  expect(sums).toMatchObject({
    items: all.length,
    machines: new Set(all.map(({ machineId }) => machineId)).size,
    overdue: overdue.length,
    deferralCents: cost(all),
  });
  expect(sums.sites).toHaveLength(new Set(all.map(({ siteId }) => siteId)).size);
  for (const { siteId, ...sum } of sums.sites) {
    const rows = all.filter((row) => row.siteId === siteId);
    expect(sum).toEqual({ items: rows.length, deferralCents: cost(rows) });
  }
  const soon = (await manager.get('/v1/due/summary?until=2026-06-14&code=sharpen-blades')).body;
  expect(soon.items).toBe((await pages('until=2026-06-14&code=sharpen-blades')).length);
  expect((await manager.get('/v1/due/summary?until=2001-01-01')).body).toEqual({
    items: 0,
    machines: 0,
    overdue: 0,
    deferralCents: 0,
    sites: [],
  });
});

it('shows a supervisor the own sites, and not what waiting costs', async () => {
  const supervisor = await api.signIn('supervisor');
  const { body: sums } = await supervisor.get('/v1/due/summary');
  expect(sums.sites).toEqual([{ siteId: shop.siteIds.get('S1'), items: sums.items, deferralCents: null }]);
  expect(sums.deferralCents).toBeNull();
  expect((await supervisor.get('/v1/due?order=cost')).status).toBe(403);
  expect((await supervisor.get('/v1/due?order=date')).body.items.length).toBeGreaterThan(0);
});

it('refuses the cursor of another order, and one that nobody gave out', async () => {
  const { next } = (await manager.get('/v1/due?limit=1&order=cost')).body;
  const elsewhere = await manager.get(`/v1/due?limit=1&order=site&cursor=${encodeURIComponent(next)}`);
  expect(elsewhere.status).toBe(422);
  expect(elsewhere.body.detail).toMatch(/start again without it/);
  const forged = Buffer.from(JSON.stringify(['["cost","1; drop"]', shop.siteIds.get('S1')])).toString('base64url');
  expect((await manager.get(`/v1/due?order=cost&cursor=${forged}`)).status).toBe(422);
  const id = shop.siteIds.get('S1')!;
  for (const [key, last] of [
    ['["date","2026-13-45"]', id],
    ['["date","2026-06-07"]', '-'.repeat(36)],
    ['["date","2026-06-07"]', '0123456789ABCDEFGHJKMNPQRS'],
  ]) {
    const cursor = Buffer.from(JSON.stringify([key, last])).toString('base64url');
    expect([last, (await manager.get(`/v1/due?cursor=${cursor}`)).status]).toEqual([last, 422]);
  }
});
