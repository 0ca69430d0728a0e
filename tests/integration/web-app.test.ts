import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop } from '../support/small-shop.js';

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;

beforeAll(async () => {
  database = await freshDatabase();
  await createSmallShop(database.store);
  api = await runningApi(database);
  manager = await api.signIn('manager');
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

describe('the screens', () => {
  it('open at any address of theirs, and lock out scripts and styles from elsewhere', async () => {
    for (const path of ['/', '/week', '/machines/some-id/forecast', '/week?of=2026-06-08']) {
      const page = await api.client.get(path);
      expect(page.status).toBe(200);
      expect(page.body).toContain('<div id="root">');
      expect(page.headers.get('cache-control')).toBe('no-cache');
      const policy = page.headers.get('content-security-policy')!;
      expect(policy).toContain("default-src 'none'");
      expect(policy).toContain("script-src 'self';");
      expect(policy).not.toContain('unsafe');
    }
  });

  it('never stand before what belongs to programs', async () => {
    for (const path of [
      '/v1/nothing',
      '/docs/nothing',
      '/health/nothing',
      '/assets/none.js',
      '/..%2fpackage.json',
      '/%zz',
    ])
      expect([404, 400]).toContain((await api.client.get(path)).status);
    expect((await api.client.get('/health')).body).toEqual({ status: 'up' });
    expect((await api.client.get('/v1/nothing')).headers.get('content-type')).toMatch(/problem\+json/);
  });

  it('keep files named by their content for good', async () => {
    const script = /src="(\/assets\/[^"]+\.js)"/.exec((await api.client.get('/')).body)![1]!;
    const file = await api.client.get(script, { 'accept-encoding': 'br' });
    expect(file.headers.get('cache-control')).toBe('public, max-age=31536000, immutable');
    expect(file.headers.get('content-encoding')).toBe('br');
  });
});

describe('answers', () => {
  it('are sent compressed to whoever takes them so, as they are to others', async () => {
    const packed = await manager.get('/v1/service-items?limit=500', { 'accept-encoding': 'br' });
    expect(packed.headers.get('content-encoding')).toBe('br');
    expect(packed.headers.get('vary')).toMatch(/accept-encoding/i);
    const plain = await manager.get('/v1/service-items?limit=500', { 'accept-encoding': 'identity' });
    expect(plain.headers.get('content-encoding')).toBeNull();
    expect(packed.body).toEqual(plain.body);
  });
});

describe('the shop', () => {
  it('says its clock, money, units and how far its work has come', async () => {
    const shop = (await manager.get('/v1/shop')).body;
    expect(shop).toMatchObject({ name: 'Small shop', timeZone: 'America/Chicago', currency: 'USD', units: 'us' });
    expect(shop.counts).toMatchObject({ customers: 1, sites: 3, machines: 6, technicians: 2 });
    expect((await (await api.signIn('supervisor')).get('/v1/shop')).body.counts).toBeNull();
  });

  it('is changed by its manager, never over a newer state', async () => {
    const before = await manager.get('/v1/shop');
    const changed = await manager.patch('/v1/shop', { units: 'metric' }, before.headers.get('etag'));
    expect(changed.body).toMatchObject({ units: 'metric', name: 'Small shop', version: before.body.version + 1 });
    expect((await manager.patch('/v1/shop', { units: 'us' }, before.headers.get('etag'))).status).toBe(412);
    expect((await manager.patch('/v1/shop', { timeZone: 'Nowhere' }, '*')).status).toBe(422);
    const technician = await api.signIn('technician');
    expect((await technician.patch('/v1/shop', { units: 'us' }, '*')).status).toBe(403);
  });
});

describe('an import through the screens', () => {
  const files = {
    'customers.csv': 'customer_id,name,billing_email,terms_days,tax_exempt\nC9,Heath Trust,bills@heath.example,30,no\n',
    'sites.csv':
      'site_id,customer_id,name,latitude,longitude,access,setup_minutes,max_machines_down,notes\nS9,C9,Heath Park,41.7,-93.5,Mon-Fri 07:00-15:00,10,1,\n',
    'machines.csv':
      'machine_id,site_id,class,maker,model,serial,in_service_on,spindles,severity,notes\nM9,S9,zero-turn,,type Z,SN9,2024-04-01,3,normal,\n',
    'readings.csv': 'machine_id,read_at,hours,source\nM9,2026-05-01T08:00:00,310.5,supervisor\n',
    'meter_changes.csv': 'machine_id,changed_at,old_hours,new_hours\n',
    'service_history.csv': 'machine_id,item,slot,done_at,hours,outcome,part\n',
    'technicians.csv':
      'technician_id,name,base_latitude,base_longitude,shifts,skills,wage_per_hour,overtime_per_hour,max_overtime_minutes\nT9,Alder,41.6,-93.6,Mon-Fri 07:00-15:30,mechanical,34.00,51.00,60\n',
    'parts.csv': 'part_id,description,designation,unit_price,unit_cost,on_hand,lead_days\n',
    'machine_moves.csv': 'machine_id,from_site_id,until\nM9,S9,2025-04-01\n',
    'weather.csv': 'date,site_id,low_c,high_c,rain_mm\n2026-05-01,,8.5,19.0,2.4\n',
  };

  it('shows every fault with its place, and changes nothing', async () => {
    const faulty = { ...files, 'machines.csv': files['machines.csv'].replace('S9,zero-turn', 'S8,hovercraft') };
    const seen = await manager.post('/v1/register-imports/check', { files: faulty });
    expect(seen.status).toBe(200);
    expect(seen.body.counts).toBeNull();
    expect(seen.body.faults.map((fault: { column: string }) => fault.column)).toEqual(
      expect.arrayContaining(['site_id', 'class']),
    );
    expect((await manager.post('/v1/register-imports', { files: faulty })).status).toBe(422);
    expect((await manager.get('/v1/shop')).body.counts.machines).toBe(6);
  });

  it('previews exactly what it then does, once', async () => {
    const seen = (await manager.post('/v1/register-imports/check', { files })).body;
    expect(seen).toMatchObject({
      faultCount: 0,
      counts: { machines: { added: 1 }, technicians: { added: 1 }, moves: { added: 1 }, weather: { added: 1 } },
    });
    expect((await manager.get('/v1/shop')).body.counts.machines).toBe(6);
    const done = await manager.post('/v1/register-imports', { files });
    expect(done.status).toBe(201);
    expect(done.body.counts).toEqual(seen.counts);
    expect((await manager.get('/v1/shop')).body.counts.machines).toBe(7);
    const again = (await manager.post('/v1/register-imports/check', { files })).body;
    expect(again.counts).toMatchObject({ machines: { added: 0, changed: 0 }, readings: { added: 0 } });
    const technician = await api.signIn('technician');
    expect((await technician.post('/v1/register-imports/check', { files })).status).toBe(403);
  });
});
