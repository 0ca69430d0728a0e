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
  visit = await plannedVisit(database.store, shop, dayText(++day));
});

const dayText = (of: number) => `2026-06-${String(of).padStart(2, '0')}`;
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
  });
});
