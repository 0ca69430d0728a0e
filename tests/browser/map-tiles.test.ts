import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { stoppedClock } from '@deckround/platform';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { Browser } from 'playwright-core';
import { until } from '../support/api-client.js';
import { BROWSER_PATH, DESKTOP, openBrowser, signInAt, visitor } from '../support/browser.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { plannedShop } from '../support/planned-shop.js';
import { runningApi } from '../support/running-api.js';
import { PASSWORD } from '../support/small-shop.js';

const SLOW_MS = 120_000;
const PIXEL = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
);

/** A server of tiles that remembers what it was asked for. */
async function tileServer(): Promise<{ server: Server; address: string; asked: string[] }> {
  const asked: string[] = [];
  const server = createServer((request, response) => {
    asked.push(request.url!);
    response.writeHead(200, { 'content-type': 'image/png', 'access-control-allow-origin': '*' }).end(PIXEL);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  return { server, address: `http://127.0.0.1:${(server.address() as AddressInfo).port}`, asked };
}

(BROWSER_PATH === '' ? describe.skip : describe)('the map of a server that names tiles', () => {
  let database: TestDatabase;
  let api: Awaited<ReturnType<typeof runningApi>>;
  let tiles: Awaited<ReturnType<typeof tileServer>>;
  let browser: Browser;

  beforeAll(async () => {
    tiles = await tileServer();
    database = await freshDatabase();
    const settings = { MAP_TILES: `${tiles.address}/{z}/{x}/{y}.png`, MAP_TILES_CREDIT: 'Streets by the trial' };
    api = await runningApi(database, undefined, stoppedClock('2026-06-07T15:00:00Z'), 0, settings);
    await plannedShop(database, api);
    browser = await openBrowser();
  }, SLOW_MS);
  afterAll(async () => {
    await browser.close();
    await api.service.stop();
    await database.drop();
    await new Promise((done) => tiles.server.close(done));
  });

  it(
    'has streets under the outlines, from there and from nowhere else, and says whose they are',
    async () => {
      const { page, faults } = await visitor(browser, api.service.address, DESKTOP);
      await signInAt(page, 'manager@small-shop.example', PASSWORD);
      await page.getByText('Streets by the trial').waitFor();
      await until(
        async () => tiles.asked,
        (asked) => asked.some((path) => /^\/\d+\/\d+\/\d+\.png$/.test(path)),
      );
      const { headers } = await fetch(api.service.address);
      const policy = headers.get('content-security-policy')!;
      expect(policy).toContain(`connect-src 'self' ${tiles.address};`);
      expect(faults).toEqual([]);
    },
    SLOW_MS,
  );
});
