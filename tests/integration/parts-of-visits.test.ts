import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { plannedVisit } from '../support/finished-visit.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop } from '../support/small-shop.js';

/** A blade for each of M1's three spindles, and a fitting for its greasing; the others belong to no work. */
const CODES = ['BLADE', 'BLADE-OTHER', 'FITTING', 'MIRROR'] as const;
type Code = (typeof CODES)[number];

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let shop: SmallShop;
let manager: ApiClient;
let technician: ApiClient;
let ids: Record<Code, string>;
/** Each visit has a day of its own: work is done once a day. */
let day = 7;
let visit: Awaited<ReturnType<typeof plannedVisit>>;

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  api = await runningApi(database);
  manager = await api.signIn('manager');
  technician = await api.signIn('technician');
  const made: [Code, string][] = [];
  for (const code of CODES) {
    const part = { code, description: code.toLowerCase(), unitPriceCents: 900, onHand: '10' };
    made.push([code, (await manager.post('/v1/parts', part)).body.id]);
  }
  ids = Object.fromEntries(made) as Record<Code, string>;
  await database.store.inShop(shop.shopId, async (tx) => {
    const machine = { id: shop.machineIds.get('M1')! };
    for (const [code, part, perSpindle] of [
      ['sharpen-blades', 'BLADE', true],
      ['grease-spindles', 'FITTING', false],
    ] as const) {
      const item = await tx.serviceItem.findFirstOrThrow({
        where: { code, plan: { class: { machines: { some: machine } } } },
      });
      await tx.serviceItemPart.deleteMany({ where: { itemId: item.id } });
      const row = { shopId: shop.shopId, itemId: item.id, partId: ids[part], quantity: 1, perSpindle };
      await tx.serviceItemPart.create({ data: row });
    }
  });
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});
beforeEach(async () => {
  for (const code of CODES) await setShelf(code, '10');
  visit = await plannedVisit(database.store, shop, dayText(++day));
});

const dayText = (of: number) => `2026-06-${String(of).padStart(2, '0')}`;
const setShelf = (code: Code, onHand: string) => manager.patch(`/v1/parts/${ids[code]}`, { onHand }, '*');

/** What each part lacks of the ten that were on the shelf. */
async function taken(): Promise<Partial<Record<Code, number>>> {
  const { items } = (await manager.get('/v1/parts')).body;
  const entries = CODES.map((code) => [code, 10 - items.find((each: { code: string }) => each.code === code).onHand]);
  return Object.fromEntries(entries.filter(([, lacking]) => lacking !== 0));
}

async function use(code: Code, quantity: string) {
  const now = new Date().toISOString();
  const place = { visitId: visit.id, machineId: shop.machineIds.get('M1') };
  const fact = { kind: 'part-used', partId: ids[code], name: code, quantity };
  const sent = await technician.post('/v1/field-records', {
    id: randomUUID(),
    deviceAt: now,
    sentAt: now,
    ...place,
    fact,
  });
  expect(sent.status).toBe(201);
  return sent.body;
}

async function finish(charges: object = {}, done = visit.visitItems.map((item) => item.id)) {
  const body = { finishedAt: visit.endAt.toISOString(), done, charges };
  expect((await manager.post(`/v1/visits/${visit.id}/finish`, body)).status).toBe(201);
}

async function drafted() {
  const { items } = (await manager.get(`/v1/charge-documents?visitId=${visit.id}`)).body;
  return items.at(-1);
}

interface Line {
  readonly kind: string;
  readonly itemCode: string;
  readonly quantity: string;
}

async function charged(): Promise<Partial<Record<Code, number>>> {
  const lines: Line[] = (await drafted()).document.lines;
  return Object.fromEntries(
    lines.filter((line) => line.kind === 'parts').map((line) => [line.itemCode, Number(line.quantity)]),
  );
}

async function accept(record: { id: string; version: number }) {
  const headers = { 'if-match': `"${record.version}"` };
  const decision = { decision: 'accept' };
  const decided = await manager.send('POST', `/v1/field-records/${record.id}/decision`, decision, headers);
  expect(decided.body.state).toBe('accepted');
}

describe('the parts of a visit are charged', () => {
  it('by what the work takes, and besides it what was used for nothing of it', async () => {
    await use('MIRROR', '2');
    await finish();
    expect(await charged()).toEqual({ BLADE: 3, FITTING: 1, MIRROR: 2 });
  });

  it('as recorded for the work of which a part was recorded, by what it takes for the other', async () => {
    await use('BLADE', '2');
    await finish();
    expect(await charged()).toEqual({ BLADE: 2, FITTING: 1 });
  });

  it('as recorded where another part went in, as the completion says', async () => {
    const machineId = shop.machineIds.get('M1')!;
    const put = {
      machineId,
      itemCode: 'sharpen-blades',
      doneOn: dayText(day),
      partId: ids['BLADE-OTHER'],
      visitId: visit.id,
    };
    expect((await manager.post('/v1/completions', put)).status).toBe(201);
    await use('BLADE-OTHER', '3');
    await finish();
    expect(await charged()).toEqual({ 'BLADE-OTHER': 3, FITTING: 1 });
    expect(await taken()).toEqual({ 'BLADE-OTHER': 3, FITTING: 1 });
  });
});

describe('the parts of a visit are taken from stock', () => {
  it('when it is closed, once, however often its charges are worked out', async () => {
    await finish();
    expect(await taken()).toEqual({ BLADE: 3, FITTING: 1 });
    const { id } = await drafted();
    await manager.patch('/v1/charge-settings', { seller: { legalName: 'Small shop LLC' } }, '*');
    await manager.patch(`/v1/charge-documents/${id}`, { note: 'again' }, '*');
    expect((await manager.post(`/v1/charge-documents/${id}/issue`, {})).status).toBe(201);
    const amendment = { reason: 'address', facts: {} };
    expect((await manager.post(`/v1/charge-documents/${id}/amend`, amendment)).status).toBe(201);
    expect(await charged()).toEqual({ BLADE: 3, FITTING: 1 });
    expect(await taken()).toEqual({ BLADE: 3, FITTING: 1 });
  });

  it('as they are recorded, and not again at the close; only for work that was done', async () => {
    const sharpen = visit.visitItems.find((item) => item.code === 'sharpen-blades')!;
    await use('BLADE', '2');
    expect(await taken()).toEqual({ BLADE: 2 });
    await finish({}, [sharpen.id]);
    expect(await taken()).toEqual({ BLADE: 2 });
  });

  it('rightly in the end where a late record says what was used, also when the document is issued', async () => {
    await finish();
    await accept(await use('BLADE', '1'));
    expect(await charged()).toEqual({ BLADE: 1, FITTING: 1 });
    expect(await taken()).toEqual({ BLADE: 1, FITTING: 1 });
    const { id } = await drafted();
    expect((await manager.post(`/v1/charge-documents/${id}/issue`, {})).status).toBe(201);
    await accept(await use('BLADE', '1'));
    await accept(await use('MIRROR', '1'));
    expect(await charged()).toEqual({ BLADE: 1, FITTING: 1 });
    expect(await taken()).toEqual({ BLADE: 2, FITTING: 1, MIRROR: 1 });
  });

  it('and given back when the shop takes them out of the draft', async () => {
    await finish();
    const { id } = await drafted();
    const state = (parts: object[]) => manager.patch(`/v1/charge-documents/${id}`, { parts }, '*');
    expect((await state([{ partId: ids.BLADE, quantity: '2' }])).status).toBe(200);
    expect(await taken()).toEqual({ BLADE: 2 });
    await state([]);
    expect(await taken()).toEqual({});
  });

  it('as the finish states them', async () => {
    await use('FITTING', '1');
    await finish({ parts: [{ partId: ids.MIRROR, quantity: '1' }] });
    expect(await taken()).toEqual({ MIRROR: 1 });
  });

  it('never below nothing, and no more is given back than was taken', async () => {
    await setShelf('BLADE', '2');
    await finish();
    expect(await taken()).toEqual({ BLADE: 10, FITTING: 1 });
    const { id } = await drafted();
    await manager.patch(`/v1/charge-documents/${id}`, { parts: [{ partId: ids.BLADE, quantity: '1' }] }, '*');
    expect(await taken()).toEqual({ BLADE: 9 });
    await manager.patch(`/v1/charge-documents/${id}`, { parts: [] }, '*');
    expect(await taken()).toEqual({ BLADE: 8 });
  });
});
