import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { draftOf } from '../support/finished-visit.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop } from '../support/small-shop.js';

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let shop: SmallShop;
let manager: ApiClient;
let bearing: { id: string };

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  api = await runningApi(database);
  manager = await api.signIn('manager');
  const parts: { id: string; code: string }[] = (await manager.get('/v1/parts')).body.items;
  bearing = parts.find(({ code }) => code === 'BRG-6205-2Z')!;
  const settings = await manager.patch('/v1/charge-settings', { seller: { legalName: 'Small shop LLC' } }, '*');
  expect(settings.status).toBe(200);
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

async function issued(day: string, onDraft = async (_visitId: string) => {}) {
  const { visit, draft } = await draftOf(database.store, shop, manager, day);
  await onDraft(visit.id);
  const { version } = (await manager.get(`/v1/charge-documents/${draft.id}`)).body;
  const { status, body } = await manager.send(
    'POST',
    `/v1/charge-documents/${draft.id}/issue`,
    {},
    {
      ...{ 'if-match': `"${version}"`, 'idempotency-key': randomUUID() },
    },
  );
  if (status >= 300) throw new Error(JSON.stringify(body));
  return { visit, document: body as { id: string; document: { number: string } } };
}

/** A record that comes after the visit was finished, and counts because the manager says so. */
async function lateUse(visitId: string, quantity: string) {
  const technician = await api.signIn('technician');
  const at = new Date().toISOString();
  const record = await technician.post('/v1/field-records', {
    ...{ id: randomUUID(), visitId, machineId: shop.machineIds.get('M1'), deviceAt: at, sentAt: at },
    fact: { kind: 'part-used', partId: bearing.id, name: 'bearing', quantity },
  });
  const decided = await manager.send(
    'POST',
    `/v1/field-records/${record.body.id}/decision`,
    { decision: 'accept' },
    { 'if-match': `"${record.body.version}"` },
  );
  expect(decided.body.state).toBe('accepted');
  return record.body.id as string;
}

const behind = async () =>
  (await manager.get('/v1/alerts')).body.items.filter((each: { kind: string }) => each.kind === 'document-behind');
const since = async (id: string) => (await manager.get(`/v1/charge-documents/${id}/since`)).body;

it('a document that was issued before a part came to light says what it lacks, until it is amended', async () => {
  const { visit, document } = await issued('2026-05-26');
  expect(await since(document.id)).toEqual({ missing: [], surplus: [], left: null });
  expect(await behind()).toEqual([]);
  await lateUse(visit.id, '2');
  expect(await since(document.id)).toEqual({
    missing: [{ kind: 'part', name: 'bearing', machineCode: null, code: 'BRG-6205-2Z', slot: null, quantity: '2' }],
    ...{ surplus: [], left: null },
  });
  expect(await behind()).toMatchObject([
    {
      ...{ documentId: document.id, visitId: visit.id, siteName: 'Site S1' },
      sentence: `Invoice ${document.document.number} does not charge what came to light after it was issued: 2 × bearing.`,
    },
  ]);
  const amended = await manager.post(`/v1/charge-documents/${document.id}/amend`, { reason: 'two bearings more' });
  expect(amended.status).toBe(201);
  expect(await behind()).toEqual([]);
});

it('a document that charges work which was not done after all says so', async () => {
  const { visit, document } = await issued('2026-05-27');
  const { items } = (await manager.get(`/v1/completions?machineId=${shop.machineIds.get('M1')}&limit=500`)).body;
  const done = items.find(
    (each: { visitId: string; itemCode: string }) => each.visitId === visit.id && each.itemCode === 'grease-spindles',
  );
  expect((await manager.delete(`/v1/completions/${done.id}`)).status).toBe(204);
  expect(await since(document.id)).toMatchObject({
    missing: [],
    surplus: [{ kind: 'work', name: 'Grease spindles', code: 'grease-spindles', machineCode: 'M1', quantity: null }],
  });
  expect(await behind()).toMatchObject([
    {
      documentId: document.id,
      sentence: `Invoice ${document.document.number} charges what was taken back after it was issued: M1: Grease spindles.`,
    },
  ]);
});

it('a document that charges a part which was not used after all says so', async () => {
  let used = '';
  const { document } = await issued('2026-05-28', async (visitId) => {
    used = await lateUse(visitId, '2');
  });
  expect(await since(document.id)).toEqual({ missing: [], surplus: [], left: null });
  const taken = await manager.post(`/v1/part-uses/${used}/take-back`, { because: 'not-used' });
  expect(taken.status).toBe(201);
  expect((await behind()).map(({ sentence }: { sentence: string }) => sentence)).toContain(
    `Invoice ${document.document.number} charges what was taken back after it was issued: 2 × bearing 6205-2Z.`,
  );
});

it('a document that somebody leaves as it is is told no more, until more comes to light', async () => {
  const { visit, document } = await issued('2026-05-29');
  const about = async () =>
    (await behind()).filter(({ documentId }: { documentId: string }) => documentId === document.id);
  const leave = (body: object) => manager.post(`/v1/charge-documents/${document.id}/leave`, body);
  expect((await leave({ reason: 'x' })).status).toBe(409);
  await lateUse(visit.id, '1');
  expect(await about()).toHaveLength(1);
  expect((await leave({ reason: '' })).status).toBe(422);
  const left = { by: 'manager', at: expect.any(String), reason: 'a goodwill bearing' };
  expect(await leave({ reason: 'a goodwill bearing' })).toMatchObject({ status: 201, body: { left } });
  expect(await since(document.id)).toMatchObject({ left, missing: [{ quantity: '1' }] });
  expect(await about()).toEqual([]);
  await lateUse(visit.id, '1');
  expect(await since(document.id)).toMatchObject({ left: null, missing: [{ quantity: '2' }] });
  expect(await about()).toHaveLength(1);
});

it('a document of which all work was taken back is credited, not amended', async () => {
  const { visit, document } = await issued('2026-05-30');
  const { items } = (await manager.get(`/v1/completions?machineId=${shop.machineIds.get('M1')}&limit=500`)).body;
  for (const done of items.filter((each: { visitId: string }) => each.visitId === visit.id))
    expect((await manager.delete(`/v1/completions/${done.id}`)).status).toBe(204);
  const amended = await manager.post(`/v1/charge-documents/${document.id}/amend`, { reason: 'nothing was done' });
  expect(amended).toMatchObject({
    status: 409,
    body: { detail: 'No work is left to charge: take the document back without another.' },
  });
  expect(
    (await manager.post(`/v1/charge-documents/${document.id}/credit`, { reason: 'nothing was done' })).status,
  ).toBe(201);
  expect((await behind()).filter((each: { documentId: string }) => each.documentId === document.id)).toEqual([]);
});
