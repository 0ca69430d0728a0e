import { stoppedClock } from '@deckround/platform';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runPlan } from '../support/planned-shop.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop, WEEK } from '../support/small-shop.js';

let database: TestDatabase;
let shop: SmallShop;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;
const clock = stoppedClock('2026-06-05T15:00:00Z');

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  api = await runningApi(database, undefined, clock);
  manager = await api.signIn('manager');
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

const plan = (seed = 1) => runPlan(manager, { iterations: 1000, seed });

describe('parts for what is planned and stopped', () => {
  it('makes the return of a stopgap a must once its part can be there', async () => {
    const parts = (await manager.get('/v1/parts')).body.items;
    const bearing = parts.find((part: { code: string }) => part.code === 'BRG-6205-2Z');
    // What is on the shelf would be there at once, whatever was told.
    await database.store.inShop(shop.shopId, (tx) =>
      tx.stock.updateMany({ where: { partId: bearing.id }, data: { onHand: 0 } }),
    );
    const made = await manager.post('/v1/stopgaps', {
      machineId: shop.machineIds.get('M2')!,
      code: 'bearing',
      description: 'old bearing greased and left in',
      madeOn: '2026-06-05',
      limitOn: '2026-06-12',
      partId: bearing.id,
      partQuantity: '2',
      partExpectedOn: '2026-06-09',
      minutes: 45,
      failureCents: 60_000,
    });
    expect(made.status).toBe(201);
    await plan();
    const visits = (await manager.get('/v1/visits?limit=500')).body.items;
    const owed = visits.find((visit: { items: { code: string }[] }) =>
      visit.items.some((each) => each.code === 'bearing'),
    );
    expect(owed.date >= '2026-06-09' && owed.date <= '2026-06-12').toBe(true);
    expect(owed.items.find((each: { code: string }) => each.code === 'bearing').role).toBe('must-do');
  });

  it('lists what to order by when, so that no planned visit lacks a part', async () => {
    await database.store.inShop(shop.shopId, (tx) => tx.stock.updateMany({ data: { onHand: 0 } }));
    const { asOf, lines } = (await manager.get('/v1/order-list?weeks=4')).body;
    expect(asOf).toBe('2026-06-05');
    const bearing = lines.find((line: { code: string }) => line.code === 'BRG-6205-2Z');
    expect(bearing.quantity).toBeGreaterThanOrEqual(2);
    expect(bearing.certainty).toBe('planned');
    expect(bearing.purposes.join('; ')).toMatch(/old bearing greased/);
    // Three days of lead time: ordered on the day told, it is there when first needed.
    const days = (Date.parse(bearing.firstNeededOn) - Date.parse(bearing.orderBy)) / 86_400_000;
    expect(days).toBe(3);
    const technician = await api.signIn('technician');
    expect((await technician.get('/v1/order-list')).status).toBe(200);
  });

  it('warns of a part that comes too late, with the next best thing to do', async () => {
    const stopgap = (await manager.get('/v1/stopgaps')).body.items[0];
    await manager.patch(`/v1/stopgaps/${stopgap.id}`, { partExpectedOn: '2026-06-15' }, `"${stopgap.version}"`);
    await database.store.inShop(shop.shopId, (tx) => tx.part.updateMany({ data: { leadDays: 10 } }));
    const { items } = (await manager.get('/v1/alerts')).body;
    expect(items.find((each: { kind: string }) => each.kind === 'part-late-for-stopgap')).toMatchObject({
      stopgapId: stopgap.id,
      sentence: expect.stringMatching(/holds until about 2026-06-12, but .* comes on 2026-06-15/),
      choice: expect.stringMatching(/Renew the stopgap before 2026-06-12/),
    });
    expect(items.find((each: { kind: string }) => each.kind === 'part-late-for-visit')).toMatchObject({
      sentence: expect.stringMatching(/comes on 2026-06-15, after the visit/),
    });
  });
});

describe('orders of parts', () => {
  type Alert = { kind: string; stopgapId: string | null; sentence: string; choice: string };
  const alerts = async (): Promise<Alert[]> => (await manager.get('/v1/alerts')).body.items;
  const ofStopgap = async (kind: string) => (await alerts()).filter((each) => each.kind === kind && each.stopgapId);
  const CODE = 'BRG-6205-2Z';
  /** The bearing with one order, or none; those of the tests before are gone. */
  const bearing = async (part: { onHand: number; leadDays: number }, expectedOn: string | null) => {
    const { id } = (await manager.get('/v1/parts')).body.items.find((each: { code: string }) => each.code === CODE);
    await database.store.inShop(shop.shopId, async (tx) => {
      await tx.partOrder.deleteMany({});
      await tx.stock.updateMany({ where: { partId: id }, data: { onHand: part.onHand } });
      await tx.part.updateMany({ where: { id }, data: { leadDays: part.leadDays } });
    });
    if (expectedOn === null) return;
    const order = { partId: id, quantity: '9', orderedOn: '2026-06-01', expectedOn };
    expect((await manager.post('/v1/part-orders', order)).status).toBe(201);
  };

  it('are not counted on once they are overdue, and an alert says so', async () => {
    await bearing({ onHand: 0, leadDays: 1 }, '2026-06-04');
    const { lines } = (await manager.get('/v1/order-list')).body;
    expect(lines.map((line: { code: string }) => line.code)).toContain(CODE);
    expect((await alerts()).find((each) => each.kind === 'order-overdue')).toMatchObject({
      orderId: expect.any(String),
      siteId: null,
      sentence: expect.stringMatching(/: 9 ordered on 2026-06-01 should have come on 2026-06-04/),
      choice: expect.stringMatching(/^Ask the supplier/),
    });
    await bearing({ onHand: 0, leadDays: 1 }, '2026-06-05');
    expect((await alerts()).map((each) => each.kind)).not.toContain('order-overdue');
  });

  it('that come too late are ordered once more where that makes it', async () => {
    await bearing({ onHand: 0, leadDays: 1 }, '2026-06-20');
    const [late, ...others] = await ofStopgap('part-late-for-visit');
    expect(others).toEqual([]);
    const [, date] = /comes on 2026-06-20, after the visit on (\S+)\.$/.exec(late!.sentence)!;
    const by = new Date(Date.parse(date!) - 86_400_000).toISOString().slice(0, 10);
    expect(late!.choice).toBe(`Order it by ${by}: ordered today, it comes on 2026-06-06, in time for the visit.`);
    expect(await ofStopgap('part-late-for-stopgap')).toEqual([]);
  });

  it('decide when the part of a stopgap is there, and not what was told with it', async () => {
    await bearing({ onHand: 2, leadDays: 30 }, null);
    expect(await ofStopgap('part-late-for-stopgap')).toEqual([]);
    expect(await ofStopgap('part-late-for-visit')).toEqual([]);
    await bearing({ onHand: 0, leadDays: 30 }, '2026-06-18');
    const [moved] = await ofStopgap('part-late-for-stopgap');
    expect(moved!.sentence).toMatch(/holds until about 2026-06-12, but .* comes on 2026-06-18/);
    const [visit] = await ofStopgap('part-late-for-visit');
    expect(visit!.sentence).toMatch(/comes on 2026-06-18, after the visit/);
  });

  it('that nobody has made are told of with the day on which one of today would come', async () => {
    const [stopgap] = (await manager.get('/v1/stopgaps')).body.items;
    await manager.patch(`/v1/stopgaps/${stopgap.id}`, { partExpectedOn: null }, `"${stopgap.version}"`);
    await bearing({ onHand: 0, leadDays: 10 }, null);
    const [late] = await ofStopgap('part-late-for-stopgap');
    expect(late!.sentence).toMatch(/but .*, ordered today, comes on 2026-06-15/);
    expect(late!.choice).toMatch(/^Order the part today\. Renew the stopgap before 2026-06-12/);
  });
});

describe('explaining a week', () => {
  it('compares two plans of it', async () => {
    const [first, second] = [await plan(1), await plan(2)];
    const { status, body } = await manager.get(`/v1/plan-runs/${second}/difference?from=${first}`);
    expect(status).toBe(200);
    expect(body.visits.length).toBeGreaterThan(0);
    const [before, after] = [
      (await manager.get(`/v1/plan-runs/${first}/plan`)).body,
      (await manager.get(`/v1/plan-runs/${second}/plan`)).body,
    ];
    expect(body.cents.total).toBe(after.cost.total - before.cost.total);
  });

  it('prices a quarter of an hour more of every day', async () => {
    const { minutes, days } = (await manager.get(`/v1/week/extra-time?weekOf=${WEEK}`)).body;
    expect(minutes).toBe(15);
    expect(days).toHaveLength(10);
  });
});
