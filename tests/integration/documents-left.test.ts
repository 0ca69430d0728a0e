import { afterAll, beforeAll, expect, it } from '@jest/globals';
import { type FieldShop, fieldShop } from '../support/field-shop.js';
import { draftOf } from '../support/finished-visit.js';

let field: FieldShop;
let manager: FieldShop['manager'];
let bearing: string;
beforeAll(async () => {
  field = await fieldShop();
  manager = field.manager;
  const { items } = (await manager.get('/v1/parts?limit=500')).body;
  bearing = items.find(({ code }: { code: string }) => code === 'BRG-6205-2Z').id;
  await manager.patch('/v1/charge-settings', { seller: { legalName: 'Small shop LLC' } }, '*');
}, 60_000);
afterAll(() => field.stop());

async function issued(day: string) {
  const { visit, draft } = await draftOf(field.database.store, field.shop, manager, day);
  const { status, body } = await manager.post(`/v1/charge-documents/${draft.id}/issue`, {});
  expect(status).toBe(201);
  return { visit, id: body.id as string, number: body.document.number as string };
}

/** A used part that is told after the visit was finished, and counts because the manager says so. */
async function lateUse(visitId: string, quantity: string) {
  const fact = { kind: 'part-used', partId: bearing, name: 'bearing', quantity };
  const { body } = await field.record(fact, visitId, field.shop.machineIds.get('M1')!);
  expect((await field.accept(body.id)).status).toBe(200);
}

type Alert = { kind: string; documentId: string | null; sentence: string };
const told = async (id: string): Promise<string[]> =>
  (await manager.get('/v1/alerts')).body.items
    .filter((each: Alert) => each.kind === 'document-behind' && each.documentId === id)
    .map(({ sentence }: Alert) => sentence);
const leave = (id: string, reason: string) => manager.post(`/v1/charge-documents/${id}/leave`, { reason });

it('tells of what was charged and not done, and of what was done and not charged, in one sentence', async () => {
  const { visit, id, number } = await issued('2026-05-27');
  await lateUse(visit.id, '1');
  const { items } = (await manager.get(`/v1/completions?machineId=${field.shop.machineIds.get('M1')}&limit=500`)).body;
  const done = items.find(
    (each: { visitId: string; itemCode: string }) => each.visitId === visit.id && each.itemCode === 'grease-spindles',
  );
  await manager.delete(`/v1/completions/${done.id}`);
  expect(await told(id)).toEqual([
    `Invoice ${number} does not charge what came to light after it was issued: 1 × bearing. It charges what was taken back: M1: Grease spindles.`,
  ]);
});

it('a document that was taken back wants no answer', async () => {
  const { visit, id } = await issued('2026-05-28');
  await lateUse(visit.id, '1');
  expect((await manager.post(`/v1/charge-documents/${id}/credit`, { reason: 'another site' })).status).toBe(201);
  expect(await told(id)).toEqual([]);
  expect((await leave(id, 'given for nothing')).status).toBe(409);
});

it('an issued document that lacks something is told until somebody answers, however long that takes', async () => {
  const { visit, id, number } = await issued('2026-05-26');
  await lateUse(visit.id, '2');
  // Longer than anybody stays signed in.
  field.clock.moveTo('2027-07-01T15:00:00Z');
  manager = await field.signIn('manager');
  await field.database.store.asOwner((tx) => tx.session.updateMany({ data: { lastSeenAt: field.clock.now() } }));
  const lacks = `Invoice ${number} does not charge what came to light after it was issued: 2 × bearing.`;
  expect(await told(id)).toEqual([lacks]);
  expect((await leave(id, 'given for nothing')).status).toBe(201);
  expect(await told(id)).toEqual([]);
});
