import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { hashPassword } from '@deckround/api';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { aRegisterFolder, lines } from '../../libs/register/src/test-support/a-register-folder.js';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { PASSWORD } from '../support/small-shop.js';

const COMMAND = fileURLToPath(new URL('../../apps/cli/dist/main.js', import.meta.url));
const ZONE = 'America/Denver';
const ROWS = 'site_id,customer_id,name,latitude,longitude,access,setup_minutes,max_machines_down,notes';
const NORTH = 'S1,C1,North Park,41.6,-93.6,Mon-Fri 07:00-15:30,10,1,gate at the rear';
const SOUTH = 'S2,C1,South Park,41.5,-93.6,Mon-Fri 07:00-15:30,10,1,';

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let folder: string;

beforeAll(async () => {
  database = await freshDatabase();
  api = await runningApi(database);
  folder = mkdtempSync(join(tmpdir(), 'deckround-zones-'));
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
  rmSync(folder, { recursive: true });
});

async function openShop(name: string): Promise<{ shopId: string; manager: ApiClient }> {
  const { id: shopId } = await database.store.asOwner((tx) => tx.shop.create({ data: { name, timeZone: ZONE } }));
  const email = `${name.toLowerCase().replaceAll(' ', '-')}@manager.example`;
  const person = { shopId, name: 'Manager', email, role: 'manager', passwordHash: await hashPassword(PASSWORD) };
  await database.store.inShop(shopId, (tx) => tx.person.create({ data: person }));
  return { shopId, manager: await api.client.signIn(email, PASSWORD) };
}

/** `deckround import`, as built. @returns what it said */
function importFolder(files: Record<string, string | Uint8Array>, shop: string, ...more: string[]): string {
  for (const [file, content] of Object.entries(files)) writeFileSync(join(folder, file), content);
  const { NODE_OPTIONS: _, ...env } = process.env;
  const said = execFileSync(process.execPath, [COMMAND, 'import', folder, '--shop', shop, ...more], {
    env: { ...env, DATABASE_URL: database.url, LOG_LEVEL: 'silent' },
  });
  return String(said);
}

function zonesOf(shopId: string) {
  return database.store.inShop(shopId, async (tx) => ({
    sites: (await tx.site.findMany({ orderBy: { code: 'asc' } })).map((site) => site.timeZone),
    technicians: (await tx.technician.findMany({ orderBy: { code: 'asc' } })).map((each) => each.timeZone),
    readAt: (await tx.reading.findMany()).map((reading) => reading.readAt.toISOString()),
  }));
}

describe('a register whose rows name no time zone', () => {
  it('takes that of the shop that it is imported into, by the command as by the interface', async () => {
    // 07:45 on a clock that is 6 h behind
    const own = { sites: [ZONE], technicians: [ZONE], readAt: ['2013-06-03T13:45:00.000Z'] };
    const byCommand = await openShop('By command');
    importFolder(aRegisterFolder(), 'By command');
    expect(await zonesOf(byCommand.shopId)).toEqual(own);

    const { shopId, manager } = await openShop('By interface');
    expect((await manager.post('/v1/register-imports', { files: aRegisterFolder() })).status).toBe(201);
    expect(await zonesOf(shopId)).toEqual(own);
    expect(importFolder(aRegisterFolder(), 'By interface', '--time-zone', 'America/New_York')).toContain(
      'Everything was there already: nothing changed.',
    );
    expect(await zonesOf(shopId)).toEqual(own);
  });

  it('leaves sites and technicians the zone that they have, and changes it where a row names one', async () => {
    const { shopId, manager } = await openShop('Of two zones');
    const files = aRegisterFolder();
    await manager.post('/v1/register-imports', { files });
    await database.store.inShop(shopId, async (tx) => {
      await tx.site.updateMany({ data: { timeZone: 'America/Boise' } });
      await tx.technician.updateMany({ data: { timeZone: 'America/Phoenix' } });
      await tx.reading.deleteMany({});
    });
    const more = { ...files, 'sites.csv': lines(ROWS, NORTH, SOUTH) };
    expect((await manager.post('/v1/register-imports', { files: more })).body.counts.sites).toMatchObject({
      added: 1,
      changed: 0,
    });
    expect(await zonesOf(shopId)).toMatchObject({ sites: ['America/Boise', ZONE], technicians: ['America/Phoenix'] });
    expect(importFolder(more, 'Of two zones')).toContain('nothing changed');

    const told = { ...more, 'sites.csv': lines(`${ROWS},time_zone`, `${NORTH},America/New_York`, `${SOUTH},`) };
    await manager.post('/v1/register-imports', { files: told });
    expect((await zonesOf(shopId)).sites).toEqual(['America/New_York', ZONE]);
    await manager.post('/v1/register-imports', { files: more });
    expect((await zonesOf(shopId)).sites).toEqual(['America/New_York', ZONE]);
  });

  it('gives a shop that the import makes the zone that the command names', async () => {
    importFolder(aRegisterFolder(), 'Made by import', '--time-zone', 'America/New_York');
    const shop = await database.store.asOwner((tx) => tx.shop.findFirstOrThrow({ where: { name: 'Made by import' } }));
    expect(shop.timeZone).toBe('America/New_York');
    expect((await zonesOf(shop.id)).sites).toEqual(['America/New_York']);
  });
});
