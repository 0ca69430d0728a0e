import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { chargedWork, type FieldShop, fieldShop } from '../support/field-shop.js';
import { runPlan } from '../support/planned-shop.js';

let field: FieldShop;
let manager: FieldShop['manager'];
const machine = (code: string) => field.shop.machineIds.get(code)!;
beforeAll(async () => {
  field = await fieldShop();
  manager = field.manager;
}, 60_000);
afterAll(() => field.stop());

interface Item {
  id: string;
  code: string;
  slot: string | null;
  title: string;
  state: string;
  stopgapId: string | null;
  roadCallId: string | null;
}
interface Visit {
  id: string;
  date: string;
  technicianId: string;
  state: string;
  version: number;
  items: { title: string; state: string; machineId: string; reason: string }[];
}

async function stopgapOn(code: string, description: string): Promise<string> {
  const { status, body } = await manager.post('/v1/stopgaps', {
    ...{ machineId: machine(code), code: 'hose', description, madeOn: '2026-06-01', limitOn: '2026-06-11' },
    ...{ minutes: 45, failureCents: 60_000 },
  });
  expect(status).toBe(201);
  return body.id;
}

const visits = async (): Promise<Visit[]> => (await manager.get('/v1/visits?limit=500')).body.items;
const visit = async (id: string): Promise<Visit> => (await manager.get(`/v1/visits/${id}`)).body;
const withWork = async (title: string) =>
  (await visits()).filter(({ items }) => items.some((item) => item.title.includes(title) && item.state === 'planned'));

/** The work of a visit as the phone reads it. */
async function read({ id, date, technicianId }: Visit, title: string): Promise<Item> {
  const { body } = await manager.get(`/v1/field-day?date=${date}&technicianId=${technicianId}`);
  const { machines } = body.visits.find((each: { id: string }) => each.id === id);
  return machines.flatMap((each: { items: Item[] }) => each.items).find((item: Item) => item.title.includes(title));
}

const done = ({ id, code, slot, stopgapId, roadCallId }: Item, visitId: string, on: string) =>
  field.record({ kind: 'item-done', itemId: id, code, slot, stopgapId, roadCallId }, visitId, machine(on));
const closedOn = async (stopgapId: string) => (await manager.get(`/v1/stopgaps/${stopgapId}`)).body.closedOn;

describe('work that a technician did as it was planned before', () => {
  it('is kept and charged where the desk has closed its stopgap meanwhile', async () => {
    const id = await stopgapOn('M6', 'hose of M6 tied up');
    await runPlan(manager, { iterations: 1000 });
    const [planned] = await withWork('hose of M6');
    const item = await read(planned!, 'hose of M6');
    await manager.post(`/v1/stopgaps/${id}/close`, { because: 'not-needed', reason: 'x', closedOn: '2026-06-03' });
    expect(await withWork('hose of M6')).toEqual([]);
    expect(await done(item, planned!.id, 'M6')).toMatchObject({ status: 201, body: { state: 'applied' } });
    expect(await done(item, planned!.id, 'M6')).toMatchObject({ status: 201 });
    expect(await closedOn(id)).toBe('2026-06-03');
    await field.record({ kind: 'visit-finish', signedBy: 'Sorrel' }, planned!.id, null);
    const after = await visit(planned!.id);
    expect(after.state).toBe('done');
    const charged = await chargedWork(field, planned!.id);
    expect(charged.filter((title) => title === 'Make good: hose of M6 tied up')).toHaveLength(1);
    expect(after.items.find((each) => each.title.includes('hose of M6'))?.reason).toBe(
      'Done here, though the desk had closed it meanwhile.',
    );
  });

  it('makes good the stopgap that it was for, not another of the same machine', async () => {
    const [first, second] = [await stopgapOn('M5', 'left hose tied up'), await stopgapOn('M5', 'right hose tied up')];
    await runPlan(manager, { iterations: 1000 });
    const [planned] = await withWork('right hose');
    await manager.patch(`/v1/visits/${planned!.id}`, { pinned: true }, `"${planned!.version}"`);
    const item = await read(planned!, 'right hose');
    // Planning again gives the items new ids.
    await runPlan(manager, { iterations: 1000 });
    expect((await read(await visit(planned!.id), 'right hose')).id).not.toBe(item.id);
    expect((await done(item, planned!.id, 'M5')).status).toBe(201);
    expect([await closedOn(first), await closedOn(second)]).toEqual([null, '2026-06-05']);
  });

  it('leaves the visit to which planning again gave it', async () => {
    const call = { machineId: machine('M2'), symptom: 'howls', usable: false, calledAt: '2026-06-05T14:00:00Z' };
    const { id } = (await manager.post('/v1/road-calls', call)).body;
    await runPlan(manager, { iterations: 1000 });
    const [planned] = await withWork('howls');
    const item = await read(planned!, 'howls');
    expect(item).toMatchObject({ roadCallId: id, stopgapId: null });
    await runPlan(manager, { iterations: 1000, seed: 3 });
    expect((await manager.get(`/v1/visits/${planned!.id}`)).status).toBe(404);
    expect(await withWork('howls')).toHaveLength(1);
    expect(await done(item, planned!.id, 'M2')).toMatchObject({ status: 201, body: { state: 'applied' } });
    expect((await manager.get(`/v1/road-calls/${id}`)).body.state).toBe('closed');
    expect(await withWork('howls')).toEqual([]);
  });

  it('is refused where it is for nothing that the machine ever had', async () => {
    const some = (await visits()).find(({ state }) => state === 'proposed');
    const item = { id: randomUUID(), code: 'hose', slot: null, roadCallId: null, stopgapId: randomUUID() };
    const refused = await done({ ...item, title: '', state: '' }, some!.id, 'M1');
    expect(refused).toMatchObject({ status: 422, body: { detail: 'The machine has no such service item.' } });
  });
});
