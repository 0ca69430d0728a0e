import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { chargedWork, type FieldShop, fieldShop } from '../support/field-shop.js';
import { runPlan } from '../support/planned-shop.js';

let stage: FieldShop;
let manager: FieldShop['manager'];
let shop: FieldShop['shop'];
beforeAll(async () => {
  stage = await fieldShop();
  ({ manager, shop } = stage);
}, 60_000);
afterAll(() => stage.stop());

interface Item {
  id: string;
  machineId: string;
  code: string;
  slot: string | null;
  state: string;
  role: string;
  title: string;
}
interface Seen {
  id: string;
  state: string;
  version: number;
  items: Item[];
}

const visits = async (): Promise<Seen[]> => (await manager.get('/v1/visits?limit=200')).body.items;
const visit = async (id: string): Promise<Seen> => (await manager.get(`/v1/visits/${id}`)).body;
const record = (fact: object, visitId: string | null, machineId: string | null) =>
  stage.record(fact, visitId, machineId);
const doneFact = ({ id, code, slot }: Item) => ({ kind: 'item-done', itemId: id, code, slot });
const report = async (machineId: string, symptom = 'howls') =>
  (
    await manager.post('/v1/road-calls', {
      ...{ machineId, symptom, usable: false, calledAt: stage.clock.now().toISOString() },
    })
  ).body;
const call = async (id: string) => (await manager.get(`/v1/road-calls/${id}`)).body;
const cancel = async (id: string) =>
  manager.patch(`/v1/visits/${id}`, { state: 'cancelled' }, `"${(await visit(id)).version}"`);
const workOf = (seen: Seen, state: string) =>
  seen.items.filter((item) => item.state === state).map((item) => `${item.machineId} ${item.code} ${item.slot}`);

/** A proposed visit with several pieces of work, none of it begun. */
async function severalItems(): Promise<Seen> {
  const found = (await visits()).find(
    ({ state, items }) => state === 'proposed' && items.length >= 3 && items.every((item) => item.state === 'planned'),
  );
  expect(found).toBeDefined();
  return found!;
}

interface Line {
  partId: string | null;
  name: string;
  quantity: number;
}
const lineKey = ({ partId, name }: Line) => partId ?? name;
const listed = (load: readonly Line[]) => new Map(load.map((line) => [lineKey(line), line.quantity]));

describe('a visit done in part before its day', () => {
  it('has in its load what is left of it, and so it has when its week is planned again', async () => {
    const begun = await severalItems();
    const { technicianId, date } = (await manager.get(`/v1/visits/${begun.id}`)).body;
    const day = async () => (await manager.get(`/v1/field-day?date=${date}&technicianId=${technicianId}`)).body;
    const { route, visits: stops } = await day();
    type Work = Item & { parts: Line[] };
    const work = stops
      .find(({ id }: Seen) => id === begun.id)
      .machines.flatMap(({ items }: { items: Work[] }) => items);
    const first = work.find(({ parts }: Work) => parts.length > 0);
    expect((await record(doneFact(first), begun.id, first.machineId)).body.state).toBe('applied');
    const left = listed(route.load);
    for (const part of first.parts) {
      const quantity = Math.round(1e6 * (left.get(lineKey(part))! - part.quantity)) / 1e6;
      if (quantity > 0) left.set(lineKey(part), quantity);
      else left.delete(lineKey(part));
    }
    expect(listed((await day()).route.load)).toEqual(left);
    await manager.patch(`/v1/visits/${begun.id}`, { pinned: true }, '*');
    await runPlan(manager);
    const planned = await day();
    const needed = new Map<string, number>();
    for (const stop of planned.visits)
      for (const { items } of stop.machines)
        for (const { state, parts } of items as Work[])
          for (const part of state === 'planned' ? parts : [])
            needed.set(lineKey(part), Math.round(1e6 * ((needed.get(lineKey(part)) ?? 0) + part.quantity)) / 1e6);
    expect(listed(planned.route.load)).toEqual(needed);
    await record({ kind: 'visit-finish', signedBy: 'Sorrel' }, begun.id, null);
  });
});

describe('a visit on which something was recorded', () => {
  it('keeps what was done and takes up what is left when its week is planned again', async () => {
    const begun = await severalItems();
    const first = begun.items[0]!;
    expect((await record(doneFact(first), begun.id, first.machineId)).body.state).toBe('applied');
    const finding = { kind: 'finding', itemCode: first.code, slot: null, observation: 'worn' };
    expect((await record(finding, begun.id, first.machineId)).status).toBe(201);
    await runPlan(manager);
    const after = await visit(begun.id);
    expect(after.state).toBe('proposed');
    expect(workOf(after, 'done')).toEqual([`${first.machineId} ${first.code} ${first.slot}`]);
    // Nothing of it stands in another visit, nor twice.
    const others = (await visits()).filter(({ id, state }) => id !== begun.id && state === 'proposed');
    expect(others.flatMap((each) => workOf(each, 'planned'))).not.toContain(workOf(after, 'done')[0]);
    const work = workOf(after, 'planned');
    expect(new Set(work).size).toBe(work.length);
    expect(work).not.toContain(workOf(after, 'done')[0]);
    expect(work.length).toBe(begun.items.length - 1);
    await record({ kind: 'visit-finish', signedBy: 'Sorrel' }, begun.id, null);
    expect(await chargedWork(stage, begun.id)).toEqual([first.title]);
  });

  it('leaves what it skipped to another visit, which can be moved', async () => {
    const begun = await severalItems();
    // What pays for a visit is left.
    const rider = begun.items.find(({ role }) => role === 'rider')!;
    const skipped = begun.items.filter(({ id }) => id !== rider.id);
    await record(doneFact(rider), begun.id, rider.machineId);
    await record({ kind: 'visit-finish', signedBy: 'Sorrel' }, begun.id, null);
    await runPlan(manager);
    const keys = new Set(skipped.map(({ machineId, code }) => `${machineId} ${code}`));
    const heir = (await visits()).find(
      ({ state, items }) => state === 'proposed' && items.some((item) => keys.has(`${item.machineId} ${item.code}`)),
    );
    expect(heir).toBeDefined();
    expect((await manager.get(`/v1/visits/${heir!.id}/move-prices`)).status).toBe(200);
  });

  it('stands, with what is left planned elsewhere, when it cannot be kept', async () => {
    const begun = await severalItems();
    const first = begun.items[0]!;
    await record(doneFact(first), begun.id, first.machineId);
    const row = await stage.database.store.asOwner((tx) => tx.visit.findUniqueOrThrow({ where: { id: begun.id } }));
    await stage.database.store.inShop(shop.shopId, (tx) =>
      tx.technicianAbsence.create({
        data: {
          ...{ shopId: shop.shopId, technicianId: row.technicianId, reason: 'ill' },
          ...{ fromDate: row.visitDate, toDate: row.visitDate },
        },
      }),
    );
    await runPlan(manager);
    const after = await visit(begun.id);
    expect([after.state, after.items.map((item) => item.state)]).toEqual(['proposed', ['done']]);
    expect((await manager.get(`/v1/visits/${begun.id}`)).body.reason).toContain('planned anew');
    await manager.post(`/v1/visits/${begun.id}/finish`, { finishedAt: stage.clock.now().toISOString(), done: [] });
    expect((await manager.get(`/v1/charge-documents?visitId=${begun.id}`)).body.items).toHaveLength(1);
  });

  it('is finished, not cancelled', async () => {
    const begun = await severalItems();
    const first = begun.items[0]!;
    await record(doneFact(first), begun.id, first.machineId);
    const refused = await cancel(begun.id);
    expect([refused.status, refused.body.type]).toEqual([409, 'urn:deckround:problem:conflict']);
    expect(refused.body.detail).toContain('finish it');
    await record({ kind: 'visit-finish', signedBy: 'Sorrel' }, begun.id, null);
  });

  it('stands as it is in the week, though only a part has been used', async () => {
    await runPlan(manager);
    const begun = await severalItems();
    const prices = () => manager.get(`/v1/visits/${begun.id}/move-prices`);
    expect((await prices()).status).toBe(200);
    const [part] = (await manager.get('/v1/parts')).body.items;
    const used = { kind: 'part-used', partId: part.id, name: part.description, quantity: '1' };
    expect((await record(used, begun.id, begun.items[0]!.machineId)).body.state).toBe('applied');
    expect((await prices()).body.type).toBe('urn:deckround:problem:visit-closed');
    await record({ kind: 'visit-finish', signedBy: 'Sorrel' }, begun.id, null);
  });

  it('that was cancelled meanwhile is charged once its late records count', async () => {
    const meant = await severalItems();
    expect((await cancel(meant.id)).status).toBe(200);
    const first = meant.items[0]!;
    const late = await record(doneFact(first), meant.id, first.machineId);
    expect(late.body.state).toBe('review');
    // Hours count whatever became of the visit, and make it no visit that was made.
    expect((await record({ kind: 'reading', hours: '900' }, meant.id, first.machineId)).body.state).toBe('applied');
    expect((await visit(meant.id)).state).toBe('cancelled');
    expect((await stage.accept(late.body.id)).status).toBe(200);
    expect((await visit(meant.id)).state).toBe('done');
    expect((await manager.get(`/v1/charge-documents?visitId=${meant.id}`)).body.items).toHaveLength(1);
  });
});

describe('two devices at once', () => {
  it('end with one draft of all that was done', async () => {
    await runPlan(manager);
    const meant = await severalItems();
    const answers = await Promise.all([
      ...meant.items.map((item) => record(doneFact(item), meant.id, item.machineId)),
      record({ kind: 'visit-finish', signedBy: 'A' }, meant.id, null),
      record({ kind: 'visit-finish', signedBy: 'B' }, meant.id, null),
    ]);
    expect(new Set(answers.map((answer) => answer.status))).toEqual(new Set([201]));
    for (const { body } of answers) {
      if (body.state !== 'review') continue;
      await manager.send(
        'POST',
        `/v1/field-records/${body.id}/decision`,
        { decision: 'accept' },
        { 'if-match': '"1"' },
      );
    }
    // The second to finish has nothing to be decided on.
    expect(answers.slice(-2).map(({ body }) => body.state)).toEqual(['applied', 'applied']);
    expect((await manager.get(`/v1/charge-documents?visitId=${meant.id}`)).body.items).toHaveLength(1);
    expect((await chargedWork(stage, meant.id)).sort()).toEqual(meant.items.map((item) => item.title).sort());
  });
});

describe('work found on the spot', () => {
  it('is kept however much of it there is, planned work of its kind too', async () => {
    await runPlan(manager);
    const meant = (await visits()).find(({ state, items }) => state === 'proposed' && items.length > 0)!;
    const { machineId, code } = meant.items[0]!;
    const found = (title: string, itemCode: string | null) =>
      record({ kind: 'found-work', title, itemCode, minutes: 10, done: true }, meant.id, machineId);
    const codes = [null, null, code, code];
    for (const [k, itemCode] of codes.entries()) expect((await found(`work ${k}`, itemCode)).status).toBe(201);
    const { items } = await visit(meant.id);
    expect(items.filter((item) => item.title.startsWith('work'))).toHaveLength(4);
    await record({ kind: 'visit-finish', signedBy: 'Sorrel' }, meant.id, null);
  });
});

describe('road calls', () => {
  it('of one machine are planned together', async () => {
    const machineId = shop.machineIds.get('M3')!;
    const [one, two] = [await report(machineId), await report(machineId)];
    await runPlan(manager);
    const [first, second] = [await call(one.id), await call(two.id)];
    expect([first.state, second.state]).toEqual(['planned', 'planned']);
    expect(first.visitId).toBe(second.visitId);
    // One of two answered: the machine is still down.
    const { items } = await visit(first.visitId);
    const item = items.find((each) => each.title === items.find((other) => other.code === 'road-call')!.title)!;
    await record(doneFact(item), first.visitId, machineId);
    const condition = async () => (await manager.get(`/v1/machines/${machineId}`)).body.condition;
    expect(await condition()).toBe('down');
    // The visit ends without the other: it is open again.
    await record({ kind: 'visit-finish', signedBy: 'Sorrel' }, first.visitId, null);
    const states = [(await call(one.id)).state, (await call(two.id)).state].sort();
    expect(states).toEqual(['closed', 'open']);
    const open = [one.id, two.id][(await call(one.id)).state === 'open' ? 0 : 1]!;
    const { version } = await call(open);
    await manager.patch(`/v1/road-calls/${open}`, { state: 'closed' }, `"${version}"`);
    expect(await condition()).toBe('working');
  });

  it('closed by telephone leave nothing to do, and stand in nobody’s way', async () => {
    const { id } = await report(shop.machineIds.get('M2')!);
    await runPlan(manager);
    const planned = await call(id);
    await manager.patch(`/v1/road-calls/${id}`, { state: 'closed' }, `"${planned.version}"`);
    const left = await visit(planned.visitId);
    expect(left.items.map((item) => item.code)).not.toContain('road-call');
    expect(left.state).toBe(left.items.length === 0 ? 'cancelled' : 'proposed');
    await runPlan(manager);
    expect((await call(id)).state).toBe('closed');
  });

  it('are open again when their visit is cancelled', async () => {
    const { id } = await report(shop.machineIds.get('M2')!);
    await runPlan(manager);
    const { visitId } = await call(id);
    expect((await cancel(visitId)).status).toBe(200);
    expect(await call(id)).toMatchObject({ state: 'open', visitId: null });
    // What is over is not taken up again: its work stands in no other visit yet, but may do so tomorrow.
    const revived = await manager.patch(
      `/v1/visits/${visitId}`,
      { state: 'confirmed' },
      `"${(await visit(visitId)).version}"`,
    );
    expect([revived.status, revived.body.type]).toEqual([409, 'urn:deckround:problem:visit-closed']);
  });
});
