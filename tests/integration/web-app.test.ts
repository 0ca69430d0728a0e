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
