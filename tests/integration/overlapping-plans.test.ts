import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { type FieldShop, fieldShop } from '../support/field-shop.js';
import { runPlan } from '../support/planned-shop.js';
import { WEEK } from '../support/small-shop.js';

let stage: FieldShop;
let database: FieldShop['database'];
let shop: FieldShop['shop'];
let manager: FieldShop['manager'];
let runs: { both: string; second: string };
const NEXT = '2026-06-15';

beforeAll(async () => {
  stage = await fieldShop();
  ({ database, shop, manager } = stage);
  // Two sites are closed all of the first week.
  await database.store.inShop(shop.shopId, (tx) =>
    tx.siteBlackout.createMany({
      data: ['S2', 'S3'].map((code) => ({
        ...{ shopId: shop.shopId, siteId: shop.siteIds.get(code)!, reason: 'closed' },
        ...{ fromDate: new Date(WEEK), toDate: new Date('2026-06-14') },
      })),
    }),
  );
}, 60_000);
afterAll(() => stage.stop());

// biome-ignore lint/suspicious/noExplicitAny: whatever came
const week = async (of: string, days = 7): Promise<any> =>
  (await manager.get(`/v1/week?weekOf=${of}&days=${days}`)).body;
const leftOut = async (of: string) => (await week(of)).leftOut as { itemId: string; title: string; code: string }[];
const prices = async (id: string) => (await manager.get(`/v1/visits/${id}/move-prices`)).body;
const visitsOf = async (of: string) =>
  (await week(of)).routes.flatMap((route: { visits: object[] }) => route.visits) as { id: string; version: number }[];

describe('two weeks planned as one, the second then again by itself', () => {
  it('tell each week by the newest plan for it, and which days its figures are of', async () => {
    const both = await runPlan(manager, { days: 14 });
    const before = await week(NEXT);
    expect(before).toMatchObject({ planRunId: both, planned: { weekOf: WEEK, days: 14 } });
    expect(before.cost.total).toBe((await week(WEEK, 14)).cost.total);
    runs = { both, second: await runPlan(manager, { weekOf: NEXT }) };
    expect(await week(NEXT)).toMatchObject({ planRunId: runs.second, planned: { weekOf: NEXT, days: 7 } });
    expect(await week(WEEK)).toMatchObject({ planRunId: runs.both, planned: { weekOf: WEEK, days: 14 } });
  });

  it('let a visit be moved within the days of its own plan, back again, and with work that stands in both', async () => {
    const [visit] = await visitsOf(WEEK);
    // The same work once more in the second week, as when it falls due again.
    await database.store.inShop(shop.shopId, async (tx) => {
      const row = await tx.visit.findUniqueOrThrow({ where: { id: visit!.id }, include: { visitItems: true } });
      const other = await tx.visit.findFirstOrThrow({ where: { planRunId: runs.second } });
      for (const { id: _, ...item } of row.visitItems) {
        await tx.visitItem.deleteMany({ where: { visitId: other.id, machineId: item.machineId, code: item.code } });
        await tx.visitItem.create({ data: { ...item, visitId: other.id } });
      }
    });
    const { places, stamp } = await prices(visit!.id);
    const dates: string[] = places.map((place: { date: string }) => place.date);
    expect(dates.length).toBeGreaterThan(0);
    expect(dates.every((date) => date < NEXT)).toBe(true);
    const before = (await week(WEEK)).cost.total;
    const row = await database.store.asOwner((tx) => tx.visit.findUniqueOrThrow({ where: { id: visit!.id } }));
    const home = row.visitDate.toISOString().slice(0, 10);
    const there = places.find((place: { date: string }) => place.date !== home);
    const to = ({ technicianId, date }: { technicianId: string; date: string }) => ({ technicianId, date });
    const moved = await manager.post(`/v1/visits/${visit!.id}/move`, { ...to(there), stamp });
    expect([moved.status, moved.body.detail]).toEqual([201, undefined]);
    expect((await week(WEEK)).cost.total).toBe(before + there.cents);
    const again = await prices(visit!.id);
    const back = again.places.find(
      (place: { date: string; technicianId: string }) => place.date === home && place.technicianId === row.technicianId,
    );
    expect((await manager.post(`/v1/visits/${visit!.id}/move`, { ...to(back), stamp: again.stamp })).status).toBe(201);
  });
});

describe('a week changed after it was planned', () => {
  it('counts as left out what lost its visit, and names what was never planned', async () => {
    const { leftOutCount } = await week(NEXT);
    const [visit] = await visitsOf(NEXT);
    const { items, version } = (await manager.get(`/v1/visits/${visit!.id}`)).body;
    await manager.patch(`/v1/visits/${visit!.id}`, { state: 'cancelled' }, `"${version}"`);
    const planned = await database.store.asOwner((tx) => tx.planRun.findUniqueOrThrow({ where: { id: runs.second } }));
    const known = new Set(
      (planned.plan as unknown as { visits: { items: { itemId: string }[] }[] }).visits.flatMap((each) =>
        each.items.map(({ itemId }) => itemId),
      ),
    );
    const lost = items.filter((item: { machineId: string; code: string; slot: string | null }) =>
      known.has([item.machineId, item.code, item.slot].filter((part) => part !== null).join('/')),
    );
    expect(lost.length).toBeGreaterThan(0);
    expect((await week(NEXT)).leftOutCount).toBe(leftOutCount + lost.length);
    expect((await leftOut(NEXT)).some(({ code }) => code === 'given-up')).toBe(true);
  });

  it('tells a call left out by its words', async () => {
    const machineId = shop.machineIds.get('M1')!;
    const call = { machineId, symptom: 'it smokes', minutes: 900, calledAt: '2026-06-05T14:00:00Z' };
    await manager.post('/v1/road-calls', call);
    await runPlan(manager, { weekOf: NEXT });
    expect((await leftOut(NEXT))[0]).toMatchObject({ title: 'Road call: it smokes', machineId });
  });

  it('sends nobody to where a machine no longer stands, and can be planned again', async () => {
    // All machines of a promised visit go to another site.
    const [visit] = await visitsOf(NEXT);
    const before = (await manager.get(`/v1/visits/${visit!.id}`)).body;
    const promised = await manager.patch(`/v1/visits/${visit!.id}`, { state: 'confirmed' }, `"${before.version}"`);
    expect(promised.status).toBe(200);
    const away = [...shop.siteIds.values()].find((id) => id !== before.siteId)!;
    const machineIds = new Set<string>(before.items.map((item: { machineId: string }) => item.machineId));
    for (const id of machineIds) {
      const { headers } = await manager.get(`/v1/machines/${id}`);
      expect((await manager.patch(`/v1/machines/${id}`, { siteId: away }, headers.get('etag'))).status).toBe(200);
    }
    const other = (await visitsOf(NEXT)).find(({ id }) => id !== visit!.id)!;
    expect((await manager.get(`/v1/visits/${other.id}/move-prices`)).status).toBe(200);
    await runPlan(manager, { weekOf: NEXT });
    for (const { id } of await visitsOf(NEXT)) {
      const { siteId, items } = (await manager.get(`/v1/visits/${id}`)).body;
      for (const { machineId } of items)
        expect((await manager.get(`/v1/machines/${machineId}`)).body.siteId).toBe(siteId);
    }
  });

  it('takes no price that was told before wages or access changed', async () => {
    const [visit] = await visitsOf(NEXT);
    const { places, stamp } = await prices(visit!.id);
    const technicians = (await manager.get('/v1/technicians')).body.items;
    const { id, version } = technicians[0];
    await manager.patch(`/v1/technicians/${id}`, { wageCentsPerHour: 4400 }, `"${version}"`);
    const { technicianId, date } = places[0];
    const refused = await manager.post(`/v1/visits/${visit!.id}/move`, { technicianId, date, stamp });
    expect([refused.status, refused.body.type]).toEqual([409, 'urn:deckround:problem:conflict']);
  });
});
