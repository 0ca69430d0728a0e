import type { Register } from '@deckround/register';
import { importRegister } from '@deckround/register-store';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop, smallRegister } from '../support/small-shop.js';

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let shop: SmallShop;
let manager: ApiClient;
let technician: ApiClient;

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  await createSmallShop(database.store, 'Other shop');
  api = await runningApi(database);
  manager = await api.signIn('manager');
  technician = await api.signIn('technician');
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

/** M2 runs 7 h a week and stood at 557 h on 2026-06-01. From then on its readings come from a new meter. */
async function readNewMeter(machineId: string) {
  const shown = [
    ['2026-06-08', '4.2'],
    ['2026-06-15', '11.2'],
    ['2026-06-22', '18.2'],
    ['2026-06-29', '25.2'],
  ];
  const taken = await technician.post('/v1/readings', {
    readings: shown.map(([day, hours]) => ({ machineId, readAt: `${day}T15:00:00-05:00`, hours })),
  });
  expect(taken.status).toBe(201);
}

async function changesOf(machineId: string) {
  return (await manager.get(`/v1/meter-changes?machineId=${machineId}`)).body.items;
}

describe('meter changes', () => {
  it('that nobody told of are proposed, and stand as told once the manager says so', async () => {
    const machineId = shop.machineIds.get('M2')!;
    const path = `/v1/meter-changes?machineId=${machineId}`;
    expect((await manager.get(path)).body.items).toEqual([]);
    await readNewMeter(machineId);
    const proposed = await technician.get(path);
    expect(proposed.body.items).toMatchObject([
      { origin: 'found', changedOn: '2026-06-08', oldHours: '557', newHours: '0' },
    ]);
    expect(proposed.body.items[0].sentence).toMatch(/Nobody has told of it/);
    const aside = await manager.get(`/v1/readings?machineId=${machineId}&status=set-aside`);
    expect(aside.body.items).toEqual([]);

    const telling = { machineId, changedOn: '2026-06-08', oldHours: '560', newHours: '0' };
    expect((await technician.post('/v1/meter-changes', telling)).status).toBe(403);
    const told = await manager.post('/v1/meter-changes', telling);
    expect(told.body).toMatchObject({ origin: 'told', oldHours: '560' });
    expect((await manager.get(path)).body.items).toMatchObject([{ id: told.body.id, origin: 'told' }]);
    expect((await manager.post('/v1/meter-changes', telling)).status).toBe(409);
    expect((await manager.get(`/v1/meter-changes/${told.body.id}`)).status).toBe(200);
  });

  it('are proposed again when a told one is taken back, and cannot be taken back themselves', async () => {
    const machineId = shop.machineIds.get('M2')!;
    const [told] = (await manager.get(`/v1/meter-changes?machineId=${machineId}`)).body.items;
    expect((await manager.delete(`/v1/meter-changes/${told.id}`)).status).toBe(204);
    const { items } = (await manager.get(`/v1/meter-changes?origin=found`)).body;
    expect(items).toMatchObject([{ machineId, origin: 'found' }]);
    expect((await manager.delete(`/v1/meter-changes/${items[0].id}`)).status).toBe(409);
    const trail = (await manager.get(`/v1/audit-entries?machineId=${machineId}`)).body.items;
    const detail = { on: '2026-06-08', oldHours: '560', newHours: '0' };
    expect(trail).toMatchObject([
      { action: 'meter-change.told', subjectId: told.id, detail },
      { action: 'meter-change.taken-back', subjectId: told.id, detail },
    ]);
  });

  it('that cannot be are refused, with the field that says so', async () => {
    const telling = { machineId: shop.machineIds.get('M4')!, changedOn: '2026-06-01', oldHours: '560', newHours: '0' };
    const pointerOf = async (body: object) =>
      (await manager.post('/v1/meter-changes', { ...telling, ...body })).body.errors?.[0].pointer;
    expect(await pointerOf({ changedOn: '2099-06-01' })).toBe('/changedOn');
    expect(await pointerOf({ oldHours: 'many' })).toBe('/oldHours');
    expect(await pointerOf({ newHours: '-1' })).toBe('/newHours');
    expect(await pointerOf({})).toBeUndefined();
    expect(await pointerOf({})).toBe('/changedOn');
    const [row] = await changesOf(telling.machineId);
    await manager.delete(`/v1/meter-changes/${row.id}`);
  });

  it('make readings believable that looked wrong before', async () => {
    const machineId = shop.machineIds.get('M3')!;
    const { body } = await technician.post('/v1/readings', {
      readings: [{ machineId, readAt: '2026-06-08T15:00:00-05:00', hours: '300' }],
    });
    expect(body.readings[0]).toMatchObject({ status: 'set-aside', reasonCode: 'backwards' });
    const told = { machineId, changedOn: '2026-06-05', oldHours: '612', newHours: '296.5' };
    expect((await manager.post('/v1/meter-changes', told)).status).toBe(201);
    const after = await manager.get(`/v1/readings/${body.readings[0].id}`);
    expect(after.body).toMatchObject({ status: 'accepted', reasonCode: null });
  });

  it('of another shop are neither seen nor told', async () => {
    const other = await api.signIn('manager', 'other-shop');
    expect((await other.get('/v1/meter-changes')).body.items).toEqual([]);
    const foreign = { machineId: shop.machineIds.get('M1')!, changedOn: '2026-06-05', oldHours: '506' };
    expect((await other.post('/v1/meter-changes', foreign)).status).toBe(404);
  });

  it('are not made up where the meter is known to start again from zero', async () => {
    const machineId = shop.machineIds.get('M5')!;
    await readNewMeter(machineId);
    expect(await changesOf(machineId)).toMatchObject([{ origin: 'found' }]);
    const change = (meterRolloverHours: string | null) =>
      manager.patch(`/v1/machines/${machineId}`, { meterRolloverHours }, '*');
    expect((await change('0')).status).toBe(422);
    expect((await change('720')).body.meterRolloverHours).toBe('720');
    expect(await changesOf(machineId)).toEqual([]);
    expect((await change(null)).body.meterRolloverHours).toBeNull();
    expect(await changesOf(machineId)).toHaveLength(1);
  });

  it('heed a rollover told by an imported register, which leaves alone what it does not tell', async () => {
    const machineId = shop.machineIds.get('M4')!;
    await readNewMeter(machineId);
    expect(await changesOf(machineId)).toMatchObject([{ origin: 'found' }]);
    const untold = smallRegister();
    const machines = untold.machines.map((each) => (each.id === 'M4' ? { ...each, meterRolloverHours: 670 } : each));
    const changed = async (register: Register) => {
      const { counts } = await database.store.inShop(shop.shopId, (tx) => importRegister(tx, shop.shopId, register));
      return counts.machines!.changed;
    };
    expect(await changed({ ...untold, machines })).toBe(1);
    expect(await changesOf(machineId)).toEqual([]);
    expect(await changed({ ...untold, machines })).toBe(0);
    expect(await changed(untold)).toBe(0);
    expect((await manager.get(`/v1/machines/${machineId}`)).body.meterRolloverHours).toBe('670');
    expect(await changesOf(machineId)).toEqual([]);
  });
});
