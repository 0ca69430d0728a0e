import { randomUUID } from 'node:crypto';
import { createRequire } from 'node:module';
import { stoppedClock } from '@deckround/platform';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { rasterise, rectanglesOf } from '../support/pdf-pages.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop } from '../support/small-shop.js';

// Its types name a default export that its code does not have for ES modules.
const jsqr = createRequire(import.meta.url)('jsqr') as typeof import('jsqr')['default'];

let database: TestDatabase;
let shop: SmallShop;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;
const clock = stoppedClock('2026-06-08T15:00:00Z');

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  api = await runningApi(database, undefined, clock);
  manager = await api.signIn('manager');
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

const INCH = 72;
const MM = 72 / 25.4;
/** Corners and sizes of the labels in points, written down apart from the program's own table. */
const SHEETS = {
  'letter-30': { at: (n: number) => [0.1875 + (n % 3) * 2.75, 0.5 + Math.floor(n / 3)], size: [2.625, 1], unit: INCH },
  'letter-10': {
    at: (n: number) => [0.15625 + (n % 2) * 4.1875, 0.5 + Math.floor(n / 2) * 2],
    size: [4, 2],
    unit: INCH,
  },
  'a4-24': { at: (n: number) => [(n % 3) * 70, 0.5 + Math.floor(n / 3) * 37], size: [70, 37], unit: MM },
} as const;

async function sheetOf(siteId: string, query: string): Promise<Buffer> {
  const { status, bytes } = await manager.bytes(`/v1/sites/${siteId}/label-sheet${query}`);
  expect(status).toBe(200);
  return bytes;
}

describe('labels', () => {
  it('are made once for each machine of a site, and printed only then', async () => {
    const siteId = shop.siteIds.get('S1')!;
    expect((await manager.get(`/v1/sites/${siteId}/label-sheet`)).status).toBe(409);
    const first = await manager.post('/v1/machine-labels', { siteId });
    expect(first).toMatchObject({ status: 201, body: { made: 2 } });
    for (const { id } of first.body.items) expect(id).toMatch(/^[0-9A-HJKMNP-TV-Z]{26}$/);
    const second = await manager.post('/v1/machine-labels', { siteId });
    expect(second.body).toEqual({ made: 0, items: first.body.items });
    expect((await manager.post('/v1/machine-labels', { siteId, machineId: randomUUID() })).status).toBe(422);
    const supervisor = await api.signIn('supervisor');
    expect((await supervisor.post('/v1/machine-labels', { siteId })).status).toBe(403);
  });

  it('are dated by the calendar of the shop, like all that its people see', async () => {
    const shift = (clockShiftDays: number) =>
      database.store.asOwner((tx) => tx.shop.updateMany({ data: { clockShiftDays } }));
    await shift(-3);
    const made = await manager.post('/v1/machine-labels', { machineId: shop.machineIds.get('M2') });
    await shift(0);
    expect(made.body).toMatchObject({ made: 1, items: [{ madeAt: '2026-06-05T15:00:00.000Z' }] });
  });

  it.each(Object.keys(SHEETS) as (keyof typeof SHEETS)[])(
    'on a sheet %s stand where the paper has them, and are read back',
    async (format) => {
      const siteId = shop.siteIds.get('S1')!;
      const labels = (await manager.get(`/v1/machine-labels?siteId=${siteId}`)).body.items as { id: string }[];
      const { at, size, unit } = SHEETS[format];
      const start = 5;
      const bytes = await sheetOf(siteId, `?format=${format}&start=${start}&offsetX=1&offsetY=-0.5`);
      expect(await sheetOf(siteId, `?format=${format}&start=${start}&offsetX=1&offsetY=-0.5`)).toEqual(bytes);
      const [page, ...others] = rectanglesOf(bytes);
      expect(others).toEqual([]);
      // Half a millimetre a module is what a phone reads from a dirty deck.
      expect(Math.min(...page!.map((each) => each.height))).toBeGreaterThan(0.5 * MM);
      const read = labels.map((_, index) => {
        const [x, y] = at(start - 1 + index) as [number, number];
        const window = {
          x: x * unit + 1 * MM,
          y: y * unit - 0.5 * MM,
          width: size[0] * unit,
          height: size[1] * unit,
        };
        const { pixels, width, height } = rasterise(page!, window, 5);
        return jsqr(pixels, width, height)?.data;
      });
      expect(read.toSorted()).toEqual(
        labels.map(({ id }) => `${api.service.address}/l/${id}`.toUpperCase()).toSorted(),
      );
    },
  );

  it('let whoever holds one see the last reading and enter the next, in either case, and nothing else', async () => {
    const machineId = shop.machineIds.get('M1')!;
    const [label] = (await manager.get(`/v1/machine-labels?machineId=${machineId}`)).body.items;
    const anyone = api.client;
    const seen = await anyone.get(`/v1/labels/${label.id.toLowerCase()}`);
    expect(seen).toMatchObject({
      status: 200,
      body: { machineCode: 'M1', machineName: 'type T', lastReading: { hours: '506' } },
    });
    expect(Object.keys(seen.body).sort()).toEqual(['lastReading', 'machineCode', 'machineName']);
    const key = { 'idempotency-key': randomUUID() };
    const body = { readAt: '2026-06-08T14:59:00Z', hours: '512.5' };
    for (let times = 0; times < 2; times += 1)
      expect(await anyone.post(`/v1/labels/${label.id}/readings`, body, key)).toMatchObject({
        status: 201,
        body: { hours: '512.5', status: 'accepted' },
      });
    const wild = { readAt: '2026-06-08T14:59:30Z', hours: '5130' };
    expect((await anyone.post(`/v1/labels/${label.id}/readings`, wild)).body.status).toBe('set-aside');
    const later = { readAt: '2026-06-09T15:00:00Z', hours: '513' };
    expect((await anyone.post(`/v1/labels/${label.id}/readings`, later)).status).toBe(422);
    const rows = await database.store.asOwner((tx) => tx.reading.findMany({ where: { source: 'label' } }));
    expect(rows.map((row) => [row.machineId, String(row.hours)]).sort()).toEqual([
      [machineId, '512.5'],
      [machineId, '5130'],
    ]);
    expect((await anyone.get(`/v1/machine-labels/${label.id}`)).status).toBe(401);
  });

  it('take no more readings than a person needs', async () => {
    const machineId = shop.machineIds.get('M4')!;
    const [label] = (await manager.get(`/v1/machine-labels?machineId=${machineId}`)).body.items;
    const statuses: number[] = [];
    for (let minute = 10; minute < 21; minute += 1)
      statuses.push(
        (
          await api.client.post(`/v1/labels/${label.id}/readings`, {
            readAt: `2026-06-08T14:${minute}:00Z`,
            hours: '700',
          })
        ).status,
      );
    expect(statuses).toEqual([...Array(10).fill(201), 429]);
  });

  it('lead those who are signed in to the machine, if it is theirs', async () => {
    const other = (await manager.post('/v1/machine-labels', { machineId: shop.machineIds.get('M2')! })).body.items[0];
    const own = (await manager.get(`/v1/machine-labels?machineId=${shop.machineIds.get('M1')}`)).body.items[0];
    const supervisor = await api.signIn('supervisor');
    expect((await supervisor.get(`/v1/machine-labels/${own.id}`)).body.machineId).toBe(shop.machineIds.get('M1'));
    expect((await supervisor.get(`/v1/machine-labels/${other.id}`)).status).toBe(404);
    const technician = await api.signIn('technician');
    expect((await technician.get(`/v1/machine-labels/${other.id}`)).status).toBe(200);
  });

  it('are refused once revoked, and replaced by a new one', async () => {
    const machineId = shop.machineIds.get('M1')!;
    const [label] = (await manager.get(`/v1/machine-labels?machineId=${machineId}`)).body.items;
    expect((await manager.delete(`/v1/machine-labels/${label.id}`)).status).toBe(204);
    const refused = await api.client.get(`/v1/labels/${label.id}`);
    expect(refused).toMatchObject({
      status: 410,
      body: { type: 'urn:deckround:problem:label-revoked', detail: expect.stringMatching(/no longer valid/) },
    });
    const reading = { readAt: '2026-06-08T14:59:00Z', hours: '513' };
    expect((await api.client.post(`/v1/labels/${label.id}/readings`, reading)).status).toBe(410);
    expect((await api.client.get('/v1/labels/0123456789ABCDEFGHJKMNPQRS')).status).toBe(404);
    const made = await manager.post('/v1/machine-labels', { machineId });
    expect(made.body).toMatchObject({ made: 1, items: [{ machineId }] });
    expect(made.body.items[0].id).not.toBe(label.id);
    const { body } = await manager.get('/v1/audit-entries');
    const acts = body.items.map((each: { action: string }) => each.action);
    expect(acts).toEqual(expect.arrayContaining(['labels.made', 'label.revoked']));
  });
});
