import { readFileSync } from 'node:fs';
import { stoppedClock } from '@deckround/platform';
import type { Register } from '@deckround/register';
import { importRegister } from '@deckround/register-store';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import pg from 'pg';
import { type ApiClient, until } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { plannedShop, runPlan } from '../support/planned-shop.js';
import { runningApi } from '../support/running-api.js';
import { type SmallShop, smallRegister, WEEK } from '../support/small-shop.js';

const TODAY = '2026-06-07';

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let shop: SmallShop;
let manager: ApiClient;
const clock = stoppedClock(`${TODAY}T15:00:00Z`);

beforeAll(async () => {
  database = await freshDatabase();
  api = await runningApi(database, undefined, clock);
  shop = await plannedShop(database, api);
  manager = await api.signIn('manager');
}, 60_000);
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

const retire = (machineId: string, retiredOn: string | null) =>
  manager.patch(`/v1/machines/${machineId}`, { retiredOn }, '*');
const dueOf = async (machineId: string) => (await manager.get(`/v1/due?machineId=${machineId}`)).body.items.length;

interface Visit {
  readonly id: string;
  readonly state: string;
  readonly version: number;
  readonly items: readonly { machineId: string }[];
}
async function standing(): Promise<Visit[]> {
  const { items } = (await manager.get(`/v1/visits?from=${WEEK}&limit=200`)).body;
  return items.filter((visit: Visit) => visit.state !== 'cancelled');
}

async function forecast(): Promise<void> {
  const asked = await manager.post('/v1/forecast-runs', { asOf: TODAY, costFrom: WEEK, costDays: 14 });
  await until(
    () => manager.get(`/v1/forecast-runs/${asked.body.id}`),
    ({ body }) => body.status === 'done',
  );
}

describe('a machine that is retired', () => {
  it('is due for nothing, is planned nowhere, and its label is of no more use, while its history stays', async () => {
    const visit = (await standing())[0]!;
    const { machineId } = visit.items[0]!;
    const others = visit.items.filter((item) => item.machineId !== machineId).length;
    const promised = await manager.patch(`/v1/visits/${visit.id}`, { state: 'confirmed' }, `"${visit.version}"`);
    expect(promised.status).toBe(200);
    const label = (await manager.post('/v1/machine-labels', { machineId })).body.items[0].id;
    expect(await dueOf(machineId)).toBeGreaterThan(0);
    const readings = (await manager.get(`/v1/readings?machineId=${machineId}`)).body.items;
    expect(readings.length).toBeGreaterThan(0);

    expect((await retire(machineId, TODAY)).body).toMatchObject({ retiredOn: TODAY });
    expect(await dueOf(machineId)).toBe(0);
    expect((await api.client.get(`/v1/labels/${label}`)).status).toBe(410);
    await forecast();
    await runPlan(manager);
    const after = await standing();
    expect(after.flatMap((each) => each.items).filter((item) => item.machineId === machineId)).toEqual([]);
    const kept = (await manager.get(`/v1/visits/${visit.id}`)).body;
    if (others === 0) expect(kept.state).toBe('cancelled');
    const rows = await database.store.asOwner((tx) =>
      Promise.all([tx.dueForecast.count({ where: { machineId } }), tx.usageForecast.count({ where: { machineId } })]),
    );
    expect(rows).toEqual([0, 0]);
    expect((await manager.get(`/v1/readings?machineId=${machineId}`)).body.items).toEqual(readings);
    expect((await manager.get(`/v1/completions?machineId=${machineId}`)).body.items.length).toBeGreaterThan(0);

    expect((await retire(machineId, null)).body).toMatchObject({ retiredOn: null });
    expect((await api.client.get(`/v1/labels/${label}`)).status).toBe(200);
    await forecast();
    expect(await dueOf(machineId)).toBeGreaterThan(0);
  });

  it('is so told by an imported register, which leaves alone what it does not tell', async () => {
    const register = smallRegister();
    const told = register.machines.map((each) => (each.id === 'M6' ? { ...each, retiredOn: '2026-05-31' } : each));
    const changed = (machines: Register['machines']) =>
      database.store.inShop(
        shop.shopId,
        async (tx) => (await importRegister(tx, shop.shopId, { ...register, machines })).counts.machines!.changed,
      );
    expect([await changed(told), await changed(told), await changed(register.machines)]).toEqual([1, 0, 0]);
    const machine = (await manager.get(`/v1/machines/${shop.machineIds.get('M6')}`)).body;
    expect(machine.retiredOn).toBe('2026-05-31');
    await retire(machine.id, null);
  });

  it('is not taken for retired before it came into service, and the field that says so is named', async () => {
    const machineId = shop.machineIds.get('M4')!; // in service since 2024-04-01
    const pointersOf = async (body: object) =>
      (await manager.patch(`/v1/machines/${machineId}`, body, '*')).body.errors?.map(
        (each: { pointer: string }) => each.pointer,
      );
    expect(await pointersOf({ retiredOn: '2024-03-31' })).toEqual(['/retiredOn']);
    expect(await pointersOf({ retiredOn: '2024-04-01' })).toBeUndefined();
    expect(await pointersOf({ inServiceOn: '2024-04-02' })).toEqual(['/inServiceOn']);
    expect(await pointersOf({ inServiceOn: '2024-04-02', retiredOn: '2024-04-01' })).toEqual(['/retiredOn']);
    const { code: _, id: __, version: ___, ...machine } = (await manager.get(`/v1/machines/${machineId}`)).body;
    const made = await manager.post('/v1/machines', { ...machine, code: 'M40', retiredOn: '2023-01-01' });
    expect([made.status, made.body.errors?.[0].pointer]).toEqual([422, '/retiredOn']);

    const register = smallRegister();
    const machines = register.machines.map((each) =>
      each.id === 'M4' ? { ...each, inServiceOn: '2025-01-01' } : each,
    );
    const imported = database.store.inShop(shop.shopId, (tx) =>
      importRegister(tx, shop.shopId, { ...register, machines }),
    );
    await expect(imported).rejects.toMatchObject({
      code: 'invalid-input',
      errors: [
        { pointer: '/files/machines.csv', detail: expect.stringMatching(/^M4: 2024-04-01 lies before 2025-01-01/) },
      ],
    });
    const turned = { inServiceOn: new Date('2025-01-01') };
    await expect(
      database.store.asOwner((tx) => tx.machine.update({ where: { id: machineId }, data: turned })),
    ).rejects.toThrow(/check constraint|23514/);
    await retire(machineId, null);
  });

  it('keeps its retirement where both days had been told turned, with what was told in its notes', async () => {
    const machineId = shop.machineIds.get('M4')!;
    const name = '20261201113000_retire_after_service';
    const migration = readFileSync(new URL(`../../prisma/migrations/${name}/migration.sql`, import.meta.url), 'utf8');
    const client = new pg.Client({ connectionString: database.url });
    await client.connect();
    await client.query('alter table machine drop constraint machine_retired_after_service');
    await client.query("update machine set retired_on = '2024-03-01', notes = 'left gate' where id = $1", [machineId]);
    await client.query(migration);
    await client.end();
    expect((await manager.get(`/v1/machines/${machineId}`)).body).toMatchObject({
      ...{ inServiceOn: null, retiredOn: '2024-03-01' },
      notes: 'left gate\nIn service since 2024-04-01, it was told, which is after it was retired.',
    });
    await manager.patch(`/v1/machines/${machineId}`, { inServiceOn: '2024-04-01', retiredOn: null, notes: '' }, '*');
  });

  it('only from its day on: until then it is served, but not for what falls due later', async () => {
    const machineId = shop.machineIds.get('M5')!;
    const label = (await manager.post('/v1/machine-labels', { machineId })).body.items[0].id;
    const before = await dueOf(machineId);
    await retire(machineId, '2026-06-20');
    await forecast();
    const due = (await manager.get(`/v1/due?machineId=${machineId}`)).body.items;
    expect(due.length).toBeGreaterThan(0);
    expect(due.length).toBeLessThan(before);
    for (const { p50 } of due) expect(p50 < '2026-06-20').toBe(true);
    expect((await api.client.get(`/v1/labels/${label}`)).status).toBe(200);
    clock.moveTo('2026-06-20T15:00:00Z');
    expect(await dueOf(machineId)).toBe(0);
    expect((await api.client.get(`/v1/labels/${label}`)).status).toBe(410);
  });
});

describe('a telematics sender', () => {
  const told = async (at: string) => {
    const unit = { EquipmentHeader: { SerialNumber: 'SN4' }, CumulativeOperatingHours: { datetime: at, Hour: 900 } };
    const body = JSON.stringify({ Fleet: { Equipment: [unit] } });
    return (await manager.send('POST', '/v1/telematics/snapshots', body, { 'content-type': 'application/json' })).body;
  };

  it('is heard of a machine until the day on which it is retired, by the calendar of its site', async () => {
    const machineId = shop.machineIds.get('M4')!;
    await retire(machineId, '2026-06-09');
    // The 9th in Greenwich, the evening of the 8th in Iowa.
    clock.moveTo('2026-06-09T03:00:00Z');
    expect(await told('2026-06-09T02:00:00Z')).toMatchObject({ readings: 1, unmatched: 0 });
    await database.store.asOwner((tx) => tx.telematicsUnit.deleteMany({}));
    clock.moveTo('2026-06-09T15:00:00Z');
    expect(await told('2026-06-09T14:00:00Z')).toMatchObject({ readings: 0, unmatched: 1 });
    await retire(machineId, null);
  });
});
