import { afterAll, beforeAll, expect, it } from '@jest/globals';
import { type FieldShop, fieldShop } from '../support/field-shop.js';
import { runPlan } from '../support/planned-shop.js';

let stage: FieldShop;
let manager: FieldShop['manager'];
beforeAll(async () => {
  stage = await fieldShop();
  ({ manager } = stage);
  for (const siteId of stage.shop.siteIds.values()) {
    const contact = { siteId, name: 'Jo', email: 'jo@green.example', notices: ['visit.cancelled'] };
    expect((await manager.post('/v1/site-contacts', contact)).status).toBe(201);
  }
}, 60_000);
afterAll(() => stage.stop());

interface Visit {
  id: string;
  siteId: string;
  technicianId: string;
  date: string;
  state: string;
  version: number;
  items: { id: string; machineId: string; code: string }[];
}
const visits = async (): Promise<Visit[]> => (await manager.get('/v1/visits?limit=200')).body.items;
const told = async () =>
  (await stage.database.store.asOwner((tx) => tx.outboxEvent.findMany({ orderBy: { occurredAt: 'asc' } })))
    .map(({ body }) => JSON.parse(body))
    .filter(({ type }) => type === 'visit.cancelled')
    .map(({ data }) => data);
const work = ({ items }: Visit) => items.map(({ machineId, code }) => `${machineId} ${code}`);

/** A promised visit that takes one piece of work of another one, by the other technician on the same day. */
async function split(one: Visit): Promise<string> {
  const { shopId } = stage.shop;
  return stage.database.store.inShop(shopId, async (tx) => {
    await tx.site.updateMany({ data: { maxMachinesDown: 2 } });
    const { planRunId, ...row } = await tx.visit.findUniqueOrThrow({ where: { id: one.id } });
    const { id: technicianId } = await tx.technician.findFirstOrThrow({ where: { id: { not: one.technicianId } } });
    const { siteId, visitDate, arriveAt, startAt, endAt, driveMinutes, setupMinutes, preparationMinutes } = row;
    const { id } = await tx.visit.create({
      data: {
        ...{ shopId, planRunId, siteId, visitDate, technicianId, state: 'confirmed', moveCents: 0, reason: 'test' },
        ...{ arriveAt, startAt, endAt, driveMinutes, setupMinutes, preparationMinutes, marginalCents: 0 },
      },
    });
    await tx.visitItem.update({ where: { id: one.items[0]!.id }, data: { visitId: id } });
    return id;
  });
}

it('whoever was promised a visit that a road call joins with another is told with which', async () => {
  const one = (await visits()).find(({ state, items }) => state === 'proposed' && items.length > 1)!;
  const promised = await split(one);
  const { id } = (
    await manager.post('/v1/road-calls', {
      ...{ machineId: one.items[1]!.machineId, symptom: 'howls', usable: false },
      calledAt: stage.clock.now().toISOString(),
    })
  ).body;
  const { options, stamp } = (await manager.post(`/v1/road-calls/${id}/options`, { daysAhead: 7 })).body;
  const drops = ({ difference }: { difference: { visits: { visitId: string; what: string }[] } }) =>
    difference.visits.some(({ visitId, what }) => visitId === promised && what === 'dropped');
  const { kind } = options.find(drops);
  expect((await manager.post(`/v1/road-calls/${id}/choose`, { kind, stamp })).status).toBe(201);
  const [event] = await told();
  expect(event).toMatchObject({ visitId: promised, workTo: [expect.any(String)] });
  const taker = (await visits()).find((each) => each.id === event.workTo[0])!;
  expect(work(taker)).toContain(work(one)[0]);
});

it('and so is whose visit cannot be kept when the week is planned again, and its work is done in another', async () => {
  const one = (await visits()).find(({ state, items }) => state === 'proposed' && items.length > 0)!;
  await manager.patch(`/v1/visits/${one.id}`, { state: 'confirmed' }, `"${one.version}"`);
  const bar = { siteId: one.siteId, technicianId: one.technicianId, date: one.date };
  expect((await manager.post('/v1/visit-bars', bar)).status).toBe(201);
  await runPlan(manager);
  const event = (await told()).find(({ visitId }) => visitId === one.id);
  const takers = (await visits()).filter(({ id }) => event.workTo.includes(id));
  expect(takers.flatMap(work)).toEqual(expect.arrayContaining(work(one)));
});
