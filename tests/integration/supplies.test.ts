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
