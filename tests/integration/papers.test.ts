import { createRequire } from 'node:module';
import { CLASSES, MANUAL_FIRST, SERVICE_ITEMS } from '@deckround/catalogue';
import { stoppedClock } from '@deckround/platform';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { linesOf, rasterise, rectanglesOf } from '../support/pdf-pages.js';
import { plannedShop } from '../support/planned-shop.js';
import { runningApi } from '../support/running-api.js';
import { WEEK } from '../support/small-shop.js';

const jsqr = createRequire(import.meta.url)('jsqr') as typeof import('jsqr')['default'];

const CATALOGUE_TEXTS = [
  MANUAL_FIRST,
  ...CLASSES.flatMap((each) => each.preparations.flatMap((one) => one.cautions)),
  ...SERVICE_ITEMS.flatMap((item) => [item.title, ...item.cautions, ...item.steps]),
];

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;

beforeAll(async () => {
  database = await freshDatabase();
  api = await runningApi(database, undefined, stoppedClock('2026-06-08T12:00:00Z'));
  const shop = await plannedShop(database, api);
  await database.store.inShop(shop.shopId, async (tx) => {
    await tx.site.updateMany({ data: { name: 'Żółw–Łąka Park', gateNotes: 'dog in the yard' } });
    await tx.machine.updateMany({ data: { maker: 'Hällström Çağrı' } });
  });
}, 60_000);
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

async function pdfOf(role: 'manager' | 'technician', path: string): Promise<Buffer> {
  const answer = await (await api.signIn(role)).bytes(path);
  expect(answer).toMatchObject({ status: 200, type: 'application/pdf' });
  return answer.bytes;
}

/** What the code at the top right of a page says. */
function codeOf(pdf: Buffer): string | undefined {
  const window = { x: 470, y: 36, width: 100, height: 96 };
  const { pixels, width, height } = rasterise(rectanglesOf(pdf)[0]!, window, 5);
  return jsqr(pixels, width, height)?.data;
}

describe('printed sheets', () => {
  it('list what goes into the van, one technician-day a page, with what is missing', async () => {
    const manager = await api.signIn('manager');
    const { routes } = (await manager.get(`/v1/week?weekOf=${WEEK}`)).body;
    const order = (route: { date: string; technicianName: string }) => route.date + route.technicianName;
    const busy = routes
      .filter((route: { visits: object[] }) => route.visits.length > 0)
      .toSorted((a: never, b: never) => (order(a) < order(b) ? -1 : 1));
    const pages = linesOf(await pdfOf('manager', `/v1/week/load-lists.pdf?weekOf=${WEEK}`));
    expect(pages).toHaveLength(busy.length);
    for (const [index, lines] of pages.entries()) {
      expect(lines.slice(0, 4)).toEqual(
        expect.arrayContaining(['Small shop', 'Load list', busy[index].technicianName]),
      );
      expect(lines.at(-1)).toBe(`Load list, page ${index + 1} of ${busy.length}`);
      for (const line of busy[index].load) expect(lines.join('\n')).toContain(line.name);
    }
    const [own] = busy.filter((route: { technicianName: string }) => route.technicianName === 'Technician T1');
    const path = `/v1/field-day/load-list.pdf?date=${own.date}`;
    const bytes = await pdfOf('technician', path);
    expect(await pdfOf('technician', path)).toEqual(bytes);
    expect(codeOf(bytes)).toBe(`${api.service.address}/day/${own.date}`);
    expect(linesOf(await pdfOf('technician', `${path}&language=es`))[0]).toContain('Lista de carga');
    expect((await manager.get('/v1/week/load-lists.pdf?weekOf=2031-01-06')).status).toBe(409);
  });

  it('carry a visit with serials, hours, cautions before steps, and every letter of its names', async () => {
    const manager = await api.signIn('manager');
    const [visit] = (await manager.get(`/v1/visits?from=${WEEK}`)).body.items;
    const bytes = await pdfOf('technician', `/v1/visits/${visit.id}/visit-sheet.pdf`);
    expect(codeOf(bytes)).toBe(`${api.service.address}/day/${visit.date}/${visit.id}`);
    const lines = linesOf(bytes).flat();
    const text = lines.join('\n');
    expect(lines).toContain('Żółw–Łąka Park');
    expect(text).toMatch(/Hällström Çağrı, type T, serial SN\d · last \d+(\.\d+)? h on \w+day, June \d+, 2026/);
    expect(text).toContain("The machine's own manual, local codes and licensed practice come first");
    expect(lines).toContain('At the gate: dog in the yard');
    for (const item of visit.items) expect(text.replace(/\s+/g, ' ')).toContain(item.title);
    const caution = lines.findIndex((line) => /^(Engine off|Blades cut|Inflate|Jack on)/.test(line));
    const step = lines.findIndex((line) => line.startsWith('1. '));
    expect(caution).toBeGreaterThan(0);
    expect(step).toBeGreaterThan(caution);
    // Whoever reads Spanish reads the cautions in Spanish too.
    const textOf = (pdf: Buffer) => linesOf(pdf).flat().join(' ').replace(/\s+/g, ' ');
    const inEnglish = (sheet: string) => CATALOGUE_TEXTS.filter((each) => sheet.includes(each));
    const spanish = textOf(await pdfOf('technician', `/v1/visits/${visit.id}/visit-sheet.pdf?language=es`));
    expect(spanish).toContain(
      'El manual de la propia máquina, las normas locales y la práctica autorizada van primero',
    );
    expect(inEnglish(textOf(bytes)).length).toBeGreaterThan(5);
    expect(inEnglish(spanish)).toEqual([]);
    const supervisor = await api.signIn('supervisor');
    expect((await supervisor.get(`/v1/visits/${visit.id}/visit-sheet.pdf`)).status).toBe(403);
  });

  it('go without a visit that was done before its day, and so does what goes into the van', async () => {
    const manager = await api.signIn('manager');
    const { routes } = (await manager.get(`/v1/week?weekOf=${WEEK}`)).body;
    const day = routes.find((each: { date: string; visits: object[] }) => each.visits.length > 0);
    const query = `date=${day.date}&technicianId=${day.technicianId}`;
    const sheet = async () => linesOf(await pdfOf('manager', `/v1/field-day/load-list.pdf?${query}`)).flat();
    const stops = (lines: string[]) => lines.filter((line) => /^\d+\. \d\d:\d\d/.test(line));
    const load = async () => (await manager.get(`/v1/field-day?${query}`)).body.route.load;
    expect(stops(await sheet())).toHaveLength(day.visits.length);
    expect(await load()).toEqual(day.load);
    for (const { id, items } of day.visits) {
      const done = items.map((item: { id: string }) => item.id);
      const finished = await manager.post(`/v1/visits/${id}/finish`, { finishedAt: '2026-06-07T15:00:00Z', done });
      expect(finished.status).toBe(201);
    }
    const lines = await sheet();
    expect(stops(lines)).toEqual([]);
    expect(lines).toContain('Nothing has to be loaded.');
    expect(await load()).toEqual([]);
  });
});
