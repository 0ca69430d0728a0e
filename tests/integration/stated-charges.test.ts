import { afterAll, beforeAll, expect, it } from '@jest/globals';
import { type FieldShop, fieldShop } from '../support/field-shop.js';
import { plannedVisit } from '../support/finished-visit.js';

let field: FieldShop;
let manager: FieldShop['manager'];
beforeAll(async () => {
  field = await fieldShop();
  manager = field.manager;
}, 60_000);
afterAll(() => field.stop());

type Visit = Awaited<ReturnType<typeof plannedVisit>>;

/** A visit whose first piece of work took longer than planned, as its technician states, with an order of the customer's. */
async function statedVisit(day: string) {
  const visit = await plannedVisit(field.database.store, field.shop, day);
  const [first, second] = visit.visitItems;
  const charges = { purchaseOrder: 'PO-9', note: 'gate was locked', work: [{ itemId: first!.id, minutes: 95 }] };
  const done = [first!.id, second!.id];
  const finished = await manager.post(`/v1/visits/${visit.id}/finish`, {
    ...{ finishedAt: visit.endAt.toISOString(), done, charges },
  });
  expect(finished.status).toBe(201);
  return { visit, first: first!, second: second! };
}

const drafts = async ({ id }: Visit) => (await manager.get(`/v1/charge-documents?visitId=${id}`)).body.items;

async function takeBack({ id, visitItems }: Visit, code: string) {
  const { machineId } = visitItems[0]!;
  const { items } = (await manager.get(`/v1/completions?machineId=${machineId}&limit=200`)).body;
  const row = items.find(
    (each: { visitId: string; itemCode: string }) => each.visitId === id && each.itemCode === code,
  );
  expect((await manager.delete(`/v1/completions/${row.id}`)).status).toBe(204);
}

async function doneAfterAll({ id, machineId, visitId, code }: Visit['visitItems'][number]) {
  const late = await field.record({ kind: 'item-done', itemId: id, code, slot: null }, visitId, machineId);
  expect((await field.accept(late.body.id)).status).toBe(200);
}

const minutesCharged = async (visit: Visit) => {
  const row = await field.database.store.asOwner((tx) =>
    tx.chargeDocument.findFirstOrThrow({ where: { visitId: visit.id } }),
  );
  const { work } = (row.record as unknown as { record: { work: { id: string; actualMinutes: number | null }[] } })
    .record;
  return new Map(work.map(({ id, actualMinutes }) => [id, actualMinutes]));
};

it('what was stated of work that is taken back does not keep it from being taken back', async () => {
  const { visit, first, second } = await statedVisit('2026-06-02');
  expect((await minutesCharged(visit)).get(first.id)).toBe(95);
  await takeBack(visit, first.code);
  expect([...(await minutesCharged(visit)).keys()]).toEqual([second.id]);
  // Done after all, it took as long as was stated.
  await doneAfterAll(first);
  expect((await minutesCharged(visit)).get(first.id)).toBe(95);
});

it('what was stated on a draft that went with its last work stands in the next draft of its visit', async () => {
  const { visit, first, second } = await statedVisit('2026-06-03');
  for (const { code } of [first, second]) await takeBack(visit, code);
  expect(await drafts(visit)).toEqual([]);
  await doneAfterAll(first);
  expect(await drafts(visit)).toMatchObject([
    { state: 'draft', document: { purchaseOrder: 'PO-9', note: 'gate was locked' } },
  ]);
  expect((await minutesCharged(visit)).get(first.id)).toBe(95);
});

it('what is stated of work that was not done is refused, as before', async () => {
  const { visit, first } = await statedVisit('2026-06-04');
  await takeBack(visit, first.code);
  const [draft] = await drafts(visit);
  const state = (body: object) => manager.patch(`/v1/charge-documents/${draft.id}`, body, `"${draft.version}"`);
  const refused = await state({ work: [{ itemId: first.id, minutes: 10 }] });
  expect(refused).toMatchObject({ status: 422, body: { errors: [{ pointer: '/work/0/itemId' }] } });
  expect((await state({ note: 'twice' })).status).toBe(200);
});
