import { folderSource, readRegister } from '@deckround/register';
import { importRegister, loadRegister } from '@deckround/register-store';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop, smallRegister } from '../support/small-shop.js';

let database: TestDatabase;
let shop: SmallShop;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;
let now = new Date('2026-05-10T12:00:00Z');

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  api = await runningApi(database, undefined, { now: () => now });
  manager = await api.signIn('manager');
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

describe('a machine that goes to another site', () => {
  it('leaves its history with the site it comes from', async () => {
    // Still the 11th in the site's Iowa.
    now = new Date('2026-05-12T03:30:00Z');
    const machineId = shop.machineIds.get('M1')!;
    const machine = await manager.get(`/v1/machines/${machineId}`);
    const moved = await manager.patch(
      `/v1/machines/${machineId}`,
      { siteId: shop.siteIds.get('S2')! },
      machine.headers.get('etag'),
    );
    expect(moved.body.siteId).toBe(shop.siteIds.get('S2'));
    const { items } = (await manager.get(`/v1/machine-moves?machineId=${machineId}`)).body;
    expect(items).toMatchObject([{ machineId, fromSiteId: shop.siteIds.get('S1'), until: '2026-05-11' }]);
    const { moves } = await database.store.inShop(shop.shopId, (tx) => loadRegister(tx));
    expect(moves).toHaveLength(1);
  });
});

describe('weather', () => {
  const day = { date: '2026-05-01', lowC: 6.5, highC: 17, rainMm: 12.4 };

  it('is kept by day, the newest word on a day standing', async () => {
    const first = await manager.post('/v1/weather', { days: [day, { ...day, siteId: shop.siteIds.get('S1') }] });
    expect(first.body).toEqual({ kept: 2, replaced: 0 });
    const again = await manager.post('/v1/weather', { days: [{ ...day, rainMm: 0 }] });
    expect(again.body).toEqual({ kept: 1, replaced: 1 });
    const { items } = (await manager.get('/v1/weather')).body;
    expect(items).toHaveLength(2);
    expect(items.find((each: { siteId: string | null }) => each.siteId === null)).toMatchObject({
      rainMm: 0,
      highC: 17,
    });
  });

  it('is refused with its place when it cannot be right', async () => {
    const odd = await manager.post('/v1/weather', { days: [day, { ...day, lowC: 30 }] });
    expect(odd.status).toBe(422);
    expect(odd.body.errors[0].pointer).toBe('/days/1/lowC');
    const foreign = { ...day, siteId: '00000000-0000-4000-8000-000000000000' };
    expect((await manager.post('/v1/weather', { days: [foreign] })).body.errors[0].pointer).toBe('/days/0/siteId');
  });
});

describe('travel settings', () => {
  it('are drawn to recorded drives, and taken over when asked', async () => {
    const drives = Array.from({ length: 60 }, (_, k) => ({
      ...{ from: { latitude: 41.6, longitude: -93.6 }, to: { latitude: 41.65 + k / 1000, longitude: -93.6 } },
      minutes: 25 + k / 10,
    }));
    const tried = await manager.post('/v1/travel-settings/learn', { drives });
    expect(tried.body).toMatchObject({ used: 60, applied: false });
    expect(tried.body.settings.townKmh).toBeLessThan(tried.body.before.townKmh);
    expect(tried.body.errorAfter).toBeLessThan(tried.body.errorBefore);
    await manager.post('/v1/travel-settings/learn', { drives, apply: true });
    const { shop: now } = await database.store.inShop(shop.shopId, (tx) => loadRegister(tx, false));
    expect(now.travel.townKmh).toBeCloseTo(tried.body.settings.townKmh, 9);
  });
});

describe('a register with moves and weather', () => {
  it('is imported once, and the same again changes nothing', async () => {
    const register = {
      ...smallRegister(),
      moves: [{ machineId: 'M2', fromSiteId: 'S1', until: '2026-02-01' }],
      weather: [{ siteId: 'S3', date: '2026-05-02', lowC: 4, highC: 15, rainMm: 3 }],
    };
    const write = () => database.store.inShop(shop.shopId, (tx) => importRegister(tx, shop.shopId, register));
    expect((await write()).counts).toMatchObject({ moves: { added: 1 }, weather: { added: 1 } });
    expect((await write()).counts).toMatchObject({
      moves: { added: 0, unchanged: 1 },
      weather: { added: 0, unchanged: 1 },
    });
  });

  it('names every fault of the files with its place', async () => {
    const folder = folderSource('tests/fixtures/none');
    const files: Record<string, string> = {
      'machine_moves.csv': 'machine_id,from_site_id,until\nM1,S1,2014-05-05\n',
      'weather.csv': 'date,site_id,low_c,high_c,rain_mm\n2014-05-01,,9,4,0\n',
    };
    const source = {
      ...folder,
      open: (file: string) => (files[file] === undefined ? null : [Buffer.from(files[file])]),
    };
    const { faults } = await readRegister(source as never);
    expect(faults).toContainEqual(
      expect.objectContaining({
        file: 'weather.csv',
        line: 2,
        column: 'low_c',
        message: expect.stringMatching(/above the day's high/),
      }),
    );
  });
});
