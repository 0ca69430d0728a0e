import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import { until } from '../support/api-client.js';
import { DESKTOP, signInAt, visitor } from '../support/browser.js';
import { browserStory } from '../support/browser-story.js';
import { PASSWORD } from '../support/small-shop.js';
import { tinyPmtiles } from '../support/tiny-pmtiles.js';

const SLOW_MS = 120_000;
/** The map's own frame may be one. */
const FEW_ROWS = 3;
const NOW = '2026-06-07T15:00:00Z';
const PIXEL = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
);
/** The tiles around the shop of the tests, 41.6° N 93.6° W: x = 256 (λ + 180)/360 = 61, y = 95 by Mercator's formula. */
const AROUND = { zoom: 8, x: [59, 60, 61, 62, 63], y: [93, 94, 95, 96, 97] };

/** A server of tiles that remembers what it was asked for. */
class TileServer {
  readonly asked: { readonly url: string; readonly range: string | undefined }[] = [];
  readonly #server: Server;

  get address(): string {
    return `http://127.0.0.1:${(this.#server.address() as AddressInfo).port}`;
  }

  constructor(answer: (request: IncomingMessage, response: ServerResponse) => void) {
    this.#server = createServer((request, response) => {
      response.setHeader('access-control-allow-origin', '*');
      response.setHeader('access-control-allow-headers', 'range');
      if (request.method === 'OPTIONS') return response.writeHead(204).end();
      this.asked.push({ url: request.url!, range: request.headers.range });
      return answer(request, response);
    });
  }

  async start(): Promise<string> {
    await new Promise<void>((done) => this.#server.listen(0, '127.0.0.1', done));
    return this.address;
  }

  async stop(): Promise<void> {
    await new Promise((done) => this.#server.close(done));
  }
}

/** Rows of the map that are one colour for nine tenths of their width, and another than the paper. */
async function ruledRows(page: Page): Promise<number> {
  const picture = (await page.locator('.maplibregl-canvas').screenshot()).toString('base64');
  return page.evaluate<number>(`(async () => {
    const image = new Image();
    image.src = 'data:image/png;base64,${picture}';
    await image.decode();
    const canvas = new OffscreenCanvas(image.width, image.height).getContext('2d');
    canvas.drawImage(image, 0, 0);
    const { data } = canvas.getImageData(0, 0, image.width, image.height);
    const counted = (from, to) => {
      const counts = new Map();
      for (let at = from; at < to; at += 4) {
        const colour = data.slice(at, at + 3).join();
        counts.set(colour, (counts.get(colour) ?? 0) + 1);
      }
      return [...counts].sort((a, b) => b[1] - a[1])[0];
    };
    const paper = counted(0, data.length)[0];
    let rows = 0;
    for (let y = 0; y < image.height; y += 1) {
      const [colour, count] = counted(y * image.width * 4, (y + 1) * image.width * 4);
      if (colour !== paper && count > 0.9 * image.width) rows += 1;
    }
    return rows;
  })()`);
}

const pictures = new TileServer((_, response) => response.writeHead(200, { 'content-type': 'image/png' }).end(PIXEL));

browserStory(
  'the map of a server that names tiles',
  {
    now: NOW,
    isPlanned: true,
    settings: async () => ({
      MAP_TILES: `${await pictures.start()}/{z}/{x}/{y}.png`,
      MAP_TILES_CREDIT: 'Streets by the trial',
    }),
    clear: () => pictures.stop(),
  },
  (stage) => {
    it(
      'has streets under the outlines, from there and from nowhere else, and says whose they are',
      async () => {
        const { page, faults } = await visitor(stage.browser, stage.api.service.address, DESKTOP);
        await signInAt(page, 'manager@small-shop.example', PASSWORD);
        await page.getByText('Streets by the trial').waitFor();
        await until(
          async () => pictures.asked,
          (asked) => asked.some(({ url }) => /^\/\d+\/\d+\/\d+\.png$/.test(url)),
        );
        expect(await ruledRows(page)).toBeLessThan(FEW_ROWS);
        const { headers } = await fetch(stage.api.service.address);
        expect(headers.get('content-security-policy')).toContain(`connect-src 'self' ${pictures.address};`);
        expect(faults).toEqual([]);
      },
      SLOW_MS,
    );
  },
);

const archive = tinyPmtiles('roads', AROUND);
const ranges = new TileServer((request, response) => {
  const [, from, to] = /^bytes=(\d+)-(\d+)$/.exec(request.headers.range ?? '') ?? [];
  if (from === undefined) return response.writeHead(416).end();
  const part = archive.subarray(Number(from), Number(to) + 1);
  const range = `bytes ${from}-${Number(from) + part.length - 1}/${archive.length}`;
  return response.writeHead(206, { 'content-range': range, 'content-length': part.length }).end(part);
});

browserStory(
  'the map of a server that names one archive of tiles',
  {
    now: NOW,
    isPlanned: true,
    settings: async () => ({ MAP_TILES: `${await ranges.start()}/streets.pmtiles` }),
    clear: () => ranges.stop(),
  },
  (stage) => {
    it(
      'fetches the parts that it needs by their ranges, and draws the streets as lines',
      async () => {
        const { page, faults } = await visitor(stage.browser, stage.api.service.address, DESKTOP);
        await signInAt(page, 'manager@small-shop.example', PASSWORD);
        await page.locator('.maplibregl-canvas').waitFor();
        await until(
          () => ruledRows(page),
          (rows) => rows > FEW_ROWS,
          30,
        );
        expect(new Set(ranges.asked.map(({ url }) => url))).toEqual(new Set(['/streets.pmtiles']));
        expect(ranges.asked.filter(({ range }) => !/^bytes=\d+-\d+$/.test(range ?? ''))).toEqual([]);
        // Header and directory first; the tile itself lies behind them.
        expect(ranges.asked.length).toBeGreaterThan(1);
        expect(faults).toEqual([]);
      },
      SLOW_MS,
    );
  },
);
