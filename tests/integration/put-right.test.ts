import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { chargedWork, type FieldShop, fieldShop } from '../support/field-shop.js';
import { plannedVisit } from '../support/finished-visit.js';
import { runPlan } from '../support/planned-shop.js';

let stage: FieldShop;
let manager: FieldShop['manager'];
let shop: FieldShop['shop'];
beforeAll(async () => {
  stage = await fieldShop();
  ({ manager, shop } = stage);
}, 60_000);
afterAll(() => stage.stop());

const record = (fact: object, machine: string, visitId: string | null = null) =>
  stage.record(fact, visitId, shop.machineIds.get(machine)!);
const listOf = async (path: string, machine: string) =>
  (await manager.get(`/v1/${path}?machineId=${shop.machineIds.get(machine)!}&limit=200`)).body.items;

describe('work still owed', () => {
  it('of the catalogue falls due soon, and is owed no more once it is done', async () => {
    const code = 'replace-blades';
    const found = { kind: 'found-work', title: 'Blades cracked', itemCode: code, minutes: 30, done: false };
    expect((await record(found, 'M4')).status).toBe(201);
    const [finding] = await listOf('findings', 'M4');
    expect(finding).toMatchObject({ itemCode: code, dueWithinDays: 7 });
    await record({ kind: 'item-done', itemId: randomUUID(), code, slot: null }, 'M4');
    expect(await listOf('follow-ups', 'M4')).toMatchObject([{ owed: 'Blades cracked', closedOn: '2026-06-05' }]);
  });

  it('of no kind that the catalogue knows waits as a call, which the next plan takes up', async () => {
    await record({ kind: 'found-work', title: 'Chute bent', minutes: 25, done: false }, 'M5');
    const [call] = await listOf('road-calls', 'M5');
    expect(call).toMatchObject({ symptom: 'Chute bent', minutes: 25, usable: true, state: 'open' });
    await runPlan(manager);
    const { visitId, state } = (await listOf('road-calls', 'M5'))[0];
    expect(state).toBe('planned');
    const { items } = (await manager.get(`/v1/visits/${visitId}`)).body;
    const item = items.find((each: { code: string }) => each.code === 'road-call');
    await record({ kind: 'item-done', itemId: item.id, code: item.code, slot: null }, 'M5', visitId);
    expect(await listOf('follow-ups', 'M5')).toMatchObject([{ owed: 'Chute bent', closedOn: '2026-06-05', visitId }]);
  });
});

describe('work found and done at one of several places', () => {
  it('leaves the others due as they were', async () => {
    const code = 'replace-spindle-bearings';
    const found = { kind: 'found-work', title: 'Howling', itemCode: code, slot: 'spindle 2', minutes: 40, done: true };
    expect((await record(found, 'M2')).status).toBe(201);
    const done = (await listOf('completions', 'M2')).filter((each: { itemCode: string }) => each.itemCode === code);
    expect(done).toMatchObject([{ slot: 'spindle 2' }]);
  });
});

describe('work recorded by mistake', () => {
  it('is taken back, and with it what it has done to its visit and its charges', async () => {
    const visit = await plannedVisit(stage.database.store, shop, '2026-06-04');
    const done = visit.visitItems.map((item) => item.id);
    await manager.post(`/v1/visits/${visit.id}/finish`, { finishedAt: visit.endAt.toISOString(), done });
    const charged = async () => (await chargedWork(stage, visit.id)).length;
    expect(await charged()).toBe(2);
    const of = async () =>
      (await listOf('completions', 'M1')).filter((each: { visitId: string }) => each.visitId === visit.id);
    const [first, second] = await of();
    expect((await stage.technician.delete(`/v1/completions/${first.id}`)).status).toBe(403);
    expect((await manager.delete(`/v1/completions/${first.id}`)).status).toBe(204);
    expect(await of()).toMatchObject([{ id: second.id }]);
    expect(await charged()).toBe(1);
    const states = async () =>
      (await manager.get(`/v1/visits/${visit.id}`)).body.items.map((item: { state: string }) => item.state).sort();
    expect(await states()).toEqual(['done', 'skipped']);
    expect((await manager.delete(`/v1/completions/${second.id}`)).status).toBe(204);
    // Nothing was done: nothing is charged, the trip neither.
    const drafts = async () => (await manager.get(`/v1/charge-documents?visitId=${visit.id}`)).body.items;
    expect(await drafts()).toEqual([]);
    const acts = await stage.database.store.asOwner((tx) =>
      tx.auditEntry.findMany({ where: { action: 'completion.taken-back' } }),
    );
    expect(acts.map(({ subjectId }) => subjectId).sort()).toEqual([first.id, second.id].sort());
    const [item] = visit.visitItems;
    const late = await record({ kind: 'item-done', itemId: item!.id, code: item!.code, slot: null }, 'M1', visit.id);
    expect((await stage.accept(late.body.id)).status).toBe(200);
    expect(await drafts()).toMatchObject([{ state: 'draft' }]);
    expect(await charged()).toBe(1);
  });
});

describe('a used part recorded by mistake', () => {
  const WRONG = { because: 'other-part', reason: 'counted twice' };
  const takeBack = (useId: string, visitId: string) =>
    record({ kind: 'part-taken-back', useId, name: 'belt', quantity: '2', because: 'not-used' }, 'M1', visitId);
  const belt = async () => {
    const { body } = await manager.get('/v1/parts?limit=500');
    return body.items.find((part: { code: string }) => part.code === 'BRG-6205-2Z');
  };
  const onHand = async (partId: string) =>
    Number(
      (
        await stage.database.store.asOwner((tx) =>
          tx.stock.aggregate({ where: { partId, technicianId: null }, _sum: { onHand: true } }),
        )
      )._sum.onHand ?? 0,
    );
  const use = async (machine: string, visitId: string | null, quantity = '2') => {
    const { id, description } = await belt();
    const { body } = await record({ kind: 'part-used', partId: id, name: description, quantity }, machine, visitId);
    expect(body.state).toBe('applied');
    return body.id as string;
  };

  it('lies in stock again, and leaves the draft of its visit', async () => {
    const { id: partId } = await belt();
    const before = await onHand(partId);
    expect(before).toBeGreaterThanOrEqual(4);
    const visit = await plannedVisit(stage.database.store, shop, '2026-06-02');
    const used = await use('M1', visit.id);
    const wrong = await use('M1', visit.id);
    await manager.post(`/v1/visits/${visit.id}/finish`, {
      ...{ finishedAt: visit.endAt.toISOString(), done: visit.visitItems.map((item) => item.id) },
    });
    const charged = async () => {
      const [draft] = (await manager.get(`/v1/charge-documents?visitId=${visit.id}`)).body.items;
      const lines = draft.document.lines as { kind: string; quantity: string }[];
      return lines.filter(({ kind }) => kind === 'parts').reduce((sum, { quantity }) => sum + Number(quantity), 0);
    };
    expect(await charged()).toBe(4);
    expect(await onHand(partId)).toBe(before - 4);
    expect((await stage.technician.post(`/v1/part-uses/${wrong}/take-back`, WRONG)).status).toBe(403);
    expect((await manager.post(`/v1/part-uses/${wrong}/take-back`, {})).status).toBe(422);
    expect((await manager.post(`/v1/part-uses/${wrong}/take-back`, WRONG)).status).toBe(201);
    expect((await manager.post(`/v1/part-uses/${wrong}/take-back`, WRONG)).status).toBe(404);
    expect(await charged()).toBe(2);
    expect(await onHand(partId)).toBe(before - 2);
    const left = (await manager.get(`/v1/part-uses?machineId=${shop.machineIds.get('M1')}`)).body.items;
    expect(left.map(({ id }: { id: string }) => id)).toEqual([used]);
    const [entry] = (await manager.get(`/v1/audit-entries?subjectId=${wrong}`)).body.items;
    const detail = { quantity: '2', on: '2026-06-05', because: 'other-part', reason: 'counted twice' };
    expect(entry).toMatchObject({ action: 'part-use.taken-back', detail });
  });

  it('is taken back by whoever recorded it, without a network too, and once however often that is sent', async () => {
    const { id: partId } = await belt();
    const before = await onHand(partId);
    const visit = await plannedVisit(stage.database.store, shop, '2026-06-01');
    for (const visitId of [visit.id, null]) {
      const used = await use('M1', visitId);
      expect(await onHand(partId)).toBe(before - 2);
      for (const _ of ['sent', 'sent by another press'])
        expect(await takeBack(used, visit.id)).toMatchObject({ status: 201, body: { state: 'applied' } });
      expect(await onHand(partId)).toBe(before);
      const [entry] = (await manager.get(`/v1/audit-entries?subjectId=${used}`)).body.items;
      expect(entry).toMatchObject({ actorName: 'technician', detail: { because: 'not-used' } });
    }
  });

  it('gives back no more than was there to take', async () => {
    const { id: partId } = await belt();
    const before = await onHand(partId);
    const used = await use('M1', null, '1000');
    expect(await onHand(partId)).toBe(0);
    expect((await manager.post(`/v1/part-uses/${used}/take-back`, WRONG)).status).toBe(201);
    expect(await onHand(partId)).toBe(before);
  });

  it('that its technician takes back after the visit was finished waits for the shop, as all that comes late', async () => {
    const { id: partId } = await belt();
    const before = await onHand(partId);
    const visit = await plannedVisit(stage.database.store, shop, '2026-05-29');
    const used = await use('M1', visit.id);
    await stage.record({ kind: 'visit-finish', signedBy: 'Sorrel' }, visit.id, null);
    const late = await takeBack(used, visit.id);
    expect(late.body.state).toBe('review');
    expect(await onHand(partId)).toBe(before - 2);
    expect((await stage.accept(late.body.id)).status).toBe(200);
    expect(await onHand(partId)).toBe(before);
  });

  it('that waits for the shop’s decision is withdrawn by whoever recorded it, and nobody has to decide', async () => {
    const { id: partId, description } = await belt();
    const visit = await plannedVisit(stage.database.store, shop, '2026-05-27');
    await stage.record({ kind: 'visit-finish', signedBy: 'Sorrel' }, visit.id, null);
    const used = await record({ kind: 'part-used', partId, name: description, quantity: '2' }, 'M1', visit.id);
    expect(used.body.state).toBe('review');
    expect((await takeBack(used.body.id, visit.id)).body.state).toBe('applied');
    expect((await manager.get('/v1/field-records?state=review')).body.items).toEqual([]);
    const { items } = (await manager.get('/v1/field-records?state=dismissed')).body;
    expect(items.map(({ id }: { id: string }) => id)).toContain(used.body.id);
  });

  it('is refused where it is another’s, or none', async () => {
    const visit = await plannedVisit(stage.database.store, shop, '2026-05-28');
    const { id, description } = await belt();
    const at = stage.clock.now().toISOString();
    const others = await manager.post('/v1/field-records', {
      ...{ id: randomUUID(), deviceAt: at, sentAt: at, visitId: visit.id, machineId: shop.machineIds.get('M1')! },
      fact: { kind: 'part-used', partId: id, name: description, quantity: '1' },
    });
    expect((await takeBack(others.body.id, visit.id)).status).toBe(403);
    expect(await takeBack(randomUUID(), visit.id)).toMatchObject({
      status: 422,
      body: { detail: 'There is no such used part to take back.' },
    });
  });
});

describe('work found and taken back', () => {
  it('is owed again where it was owed, and leaves the same work at other places', async () => {
    const code = 'replace-spindle-bearings';
    const visit = await plannedVisit(stage.database.store, shop, '2026-06-03');
    const found = (slot: string, done: boolean) =>
      record({ kind: 'found-work', title: `Bearing ${slot}`, itemCode: code, slot, minutes: 40, done }, 'M1', visit.id);
    await found('spindle 1', false);
    for (const slot of ['spindle 1', 'spindle 2']) expect((await found(slot, true)).status).toBe(201);
    const owed = async () =>
      (await listOf('follow-ups', 'M1')).filter((each: { closedOn: string | null }) => each.closedOn === null).length;
    expect(await owed()).toBe(0);
    const done = (await listOf('completions', 'M1')).find((each: { slot: string }) => each.slot === 'spindle 1');
    expect((await manager.delete(`/v1/completions/${done.id}`)).status).toBe(204);
    const { items } = (await manager.get(`/v1/visits/${visit.id}`)).body;
    const slots = items
      .filter((item: { code: string }) => item.code === code)
      .map((item: { slot: string }) => item.slot);
    expect(slots).toEqual(['spindle 2']);
    expect(await owed()).toBe(1);
  });
});

describe('a wrong figure of hours', () => {
  it('that is corrected is so in the work done at it too', async () => {
    await record({ kind: 'reading', hours: '9999' }, 'M6');
    await record(
      { kind: 'item-done', itemId: randomUUID(), code: 'sharpen-blades', slot: null, meterHours: '9999' },
      'M6',
    );
    const reading = (await listOf('readings', 'M6')).find((each: { hours: string }) => Number(each.hours) === 9999);
    const decide = async (body: object) => {
      const { headers } = await manager.get(`/v1/readings/${reading.id}`);
      const etag = headers.get('etag')!;
      const { status } = await manager.send('POST', `/v1/readings/${reading.id}/decision`, body, { 'if-match': etag });
      expect(status).toBe(200);
      const last = (await listOf('completions', 'M6')).at(-1);
      expect(last.itemCode).toBe('sharpen-blades');
      return last.meterHours === null ? null : Number(last.meterHours);
    };
    // Set aside, nobody knows the figure; taken back, it is known again.
    expect(await decide({ decision: 'set-aside', reason: 'typed wrongly' })).toBeNull();
    expect(await decide({ decision: 'accept' })).toBe(9999);
    expect(await decide({ decision: 'correct', hours: '755' })).toBe(755);
  });
});
