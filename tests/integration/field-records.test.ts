import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { plannedShop } from '../support/planned-shop.js';
import { runningApi } from '../support/running-api.js';
import type { SmallShop } from '../support/small-shop.js';

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let shop: SmallShop;
let manager: ApiClient;
let technician: ApiClient;
// biome-ignore lint/suspicious/noExplicitAny: whatever came
let day: any;

beforeAll(async () => {
  database = await freshDatabase();
  api = await runningApi(database);
  shop = await plannedShop(database, api);
  manager = await api.signIn('manager');
  technician = await api.signIn('technician');
  day = (await technician.get('/v1/field-day')).body;
  await manager.post('/v1/webhook-endpoints', { url: 'https://receiver.example/', types: ['visit.done'] });
}, 60_000);
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

const recordOf = (fact: object, place: object = {}) => ({
  id: randomUUID(),
  deviceAt: new Date().toISOString(),
  sentAt: new Date().toISOString(),
  visitId: null,
  machineId: shop.machineIds.get('M1'),
  ...place,
  fact,
});
const send = (body: object, as: ApiClient = technician) => as.post('/v1/field-records', body);

describe('a technician’s day', () => {
  it('comes whole: stops, cautions, steps, torques in both units, parts, last readings', () => {
    expect(day.dates).toContain(day.date);
    expect(day.technician.name).toBe('Technician T1');
    const machines = day.visits.flatMap((visit: { machines: object[] }) => visit.machines);
    expect(machines.length).toBeGreaterThan(0);
    const blades = machines
      .flatMap((machine: { items: { code: string }[] }) => machine.items)
      .find((item: { code: string }) => item.code === 'sharpen-blades');
    expect(blades.steps.length).toBeGreaterThan(2);
    expect(blades.torques[0]).toMatchObject({ what: 'blade bolts' });
    const withBlades = machines.find((machine: { items: object[] }) => machine.items.includes(blades));
    expect(withBlades.cautions.join(' ')).toMatch(/Engine off, key out.*never work under a deck held only by a jack/s);
    expect(withBlades.lastReading).toMatchObject({ hours: expect.stringMatching(/^\d+(\.\d+)?$/) });
    expect(day.visits[0].site).toMatchObject({ latitude: expect.any(Number), gateNotes: expect.any(String) });
    expect(JSON.stringify(day)).not.toMatch(/waitingCents|marginalCents/);
  });

  it('is not given to a supervisor, nor to somebody who drives no days', async () => {
    expect((await (await api.signIn('supervisor')).get('/v1/field-day')).status).toBe(403);
    expect((await manager.get('/v1/field-day')).status).toBe(404);
  });

  it('belongs to the person whom the manager names', async () => {
    const people = (await manager.get('/v1/people')).body.items;
    const person = people.find((each: { role: string }) => each.role === 'technician');
    const technicians = (await manager.get('/v1/technicians')).body.items;
    expect(person.technicianId).toBe(technicians[0].id);
    const other = await manager.patch(
      `/v1/people/${person.id}`,
      { technicianId: technicians[1].id },
      `"${person.version}"`,
    );
    expect(other.body.technicianId).toBe(technicians[1].id);
    const own = people.find((each: { role: string }) => each.role === 'manager');
    const taken = await manager.patch(`/v1/people/${own.id}`, { technicianId: technicians[1].id }, `"${own.version}"`);
    expect(taken.status).toBe(409);
    await manager.patch(`/v1/people/${person.id}`, { technicianId: technicians[0].id }, other.headers.get('etag'));
  });
});

describe('a record of the field', () => {
  it('is recorded once, however often and at whatever time it is sent', async () => {
    const body = recordOf({ kind: 'found-work', title: 'loose guard', minutes: 5, done: false });
    const answers = await Promise.all([send(body), send(body), send({ ...body, sentAt: '2026-06-08T12:00:00Z' })]);
    expect(answers.map((answer) => answer.status)).toEqual([201, 201, 201]);
    const owed = (await manager.get(`/v1/follow-ups?machineId=${body.machineId}`)).body.items;
    expect(owed.filter((each: { owed: string }) => each.owed === 'loose guard')).toHaveLength(1);
    const other = await send({ ...body, fact: { ...body.fact, title: 'another' } });
    expect([other.status, other.body.type]).toEqual([422, 'urn:deckround:problem:idempotency-key-reused']);
  });

  it('takes the right time from a clock that is wrong', async () => {
    const dayMs = 86_400_000;
    const wrong = (at: number) => new Date(at + 2 * dayMs).toISOString();
    const now = Date.now();
    const answer = await send({
      ...recordOf({ kind: 'reading', hours: '900' }),
      deviceAt: wrong(now - 3_600_000),
      sentAt: wrong(now),
    });
    expect(answer.body.skewSeconds).toBeLessThan(-172_000);
    const readings = await database.store.asOwner((tx) => tx.reading.findMany({ where: { source: 'technician' } }));
    expect(Math.abs(readings[0]!.readAt.getTime() - (now - 3_600_000))).toBeLessThan(5000);
    const [startedAt, endedAt] = [wrong(now - 7_200_000), wrong(now - 3_600_000)];
    const work = recordOf({ kind: 'work-time', startedAt, endedAt }, { machineId: null, sentAt: wrong(now) });
    await send(work);
    const { startedAt: from } = await database.store.asOwner((tx) =>
      tx.workTime.findUniqueOrThrow({ where: { id: work.id } }),
    );
    expect(Math.abs(from.getTime() - (now - 7_200_000))).toBeLessThan(5000);
  });

  it('waits for the shop when the visit was closed before it arrived, and counts once it is accepted', async () => {
    const visit = day.visits[0];
    const machine = visit.machines[0];
    const place = { visitId: visit.id, machineId: machine.id };
    const [first, second] = machine.items;
    const done = (item: { id: string; code: string; slot: string | null }) =>
      recordOf({ kind: 'item-done', itemId: item.id, code: item.code, slot: item.slot }, place);
    expect((await send(done(first))).body.state).toBe('applied');
    const early = (await manager.get(`/v1/completions?machineId=${machine.id}`)).body.items.length;
    const parts = (await manager.get('/v1/parts')).body.items;
    const used = { kind: 'part-used', partId: parts[0].id, name: parts[0].description, quantity: '3' };
    expect((await send(recordOf(used, place))).body.state).toBe('applied');
    const [startedAt, endedAt] = ['2026-06-08T14:00:00Z', '2026-06-08T14:52:00Z'];
    expect((await send(recordOf({ kind: 'work-time', startedAt, endedAt }, place))).body.state).toBe('applied');
    await send(recordOf({ kind: 'visit-finish', signedBy: 'Sorrel' }, place));
    await send(recordOf({ kind: 'visit-finish', signedBy: 'Sorrel' }, place));
    // Finished like any other visit: charged once, by what was recorded, and told to who listens.
    const drafts = async () => (await manager.get(`/v1/charge-documents?visitId=${visit.id}`)).body.items;
    const [draft] = await drafts();
    expect(draft.state).toBe('draft');
    const partLines = draft.document.lines.filter((line: { kind: string }) => line.kind === 'parts');
    expect(partLines.map((line: { quantity: string }) => Number(line.quantity))).toEqual([3]);
    const row = await database.store.asOwner((tx) => tx.chargeDocument.findUniqueOrThrow({ where: { id: draft.id } }));
    const { work } = (row.record as unknown as { record: { work: { actualMinutes: number }[] } }).record;
    expect(work.map((each) => each.actualMinutes)).toEqual([52]);
    const told = await database.store.asOwner((tx) => tx.outboxEvent.findMany({ where: { type: 'visit.done' } }));
    expect(told.map((event) => JSON.parse(event.body).data.visitId)).toEqual([visit.id]);
    const late = await send(
      second ? done(second) : recordOf({ kind: 'part-used', name: 'grease', quantity: '1' }, place),
    );
    expect(late.body).toMatchObject({ state: 'review', reviewReason: expect.stringContaining('finished before') });
    const count = async () =>
      second
        ? (await manager.get(`/v1/completions?machineId=${machine.id}`)).body.items.length - early
        : (await manager.get(`/v1/part-uses?visitId=${visit.id}`)).body.items.length;
    expect(await count()).toBe(0);
    const decide = () =>
      manager.send('POST', `/v1/field-records/${late.body.id}/decision`, { decision: 'accept' }, { 'if-match': '"1"' });
    expect((await decide()).body.state).toBe('accepted');
    expect((await decide()).status).toBe(412);
    expect(await count()).toBe(1);
    const after = await drafts();
    expect(after).toHaveLength(1);
    expect(after[0].version).toBe(draft.version + 1);
    // A meter runs on, whatever became of the visit.
    expect((await send(recordOf({ kind: 'reading', hours: '950' }, place))).body.state).toBe('applied');
  });

  it('waits for the shop where a clock ran for more than twelve hours', async () => {
    const span = (hours: number) => {
      const startedAt = '2026-06-08T12:00:00Z';
      const endedAt = new Date(Date.parse(startedAt) + hours * 3_600_000).toISOString();
      return recordOf({ kind: 'work-time', startedAt, endedAt }, { machineId: null });
    };
    const forgotten = (await send(span(65))).body;
    expect(forgotten).toMatchObject({ state: 'review', reviewReason: expect.stringMatching(/twelve hours.*Ask/) });
    const times = () => database.store.asOwner((tx) => tx.workTime.count());
    const before = await times();
    expect((await send(span(12))).body.state).toBe('applied');
    expect(await times()).toBe(before + 1);
    const accept = { decision: 'accept' };
    await manager.send('POST', `/v1/field-records/${forgotten.id}/decision`, accept, { 'if-match': '"1"' });
    expect(await times()).toBe(before + 2);
  });

  it('goes on without its visit when planning again has replaced it', async () => {
    const answer = await send(
      recordOf({ kind: 'part-used', name: 'grease', quantity: '2' }, { visitId: randomUUID() }),
    );
    expect(answer.body.state).toBe('applied');
    const finish = recordOf({ kind: 'visit-finish', signedBy: 'S' }, { visitId: randomUUID(), machineId: null });
    expect((await send(finish)).body.state).toBe('review');
  });

  it('is refused as a whole when it makes no sense, and leaves nothing behind', async () => {
    const facts = [
      recordOf({ kind: 'finding', itemCode: 'no-such-item', observation: 'x' }),
      recordOf({ kind: 'reading', hours: '-4' }),
      recordOf({ kind: 'reading', hours: '1' }, { machineId: null }),
      recordOf({ kind: 'stopgap', description: 'x', minutes: 5 }),
      recordOf({ kind: 'reading', hours: '1' }, { machineId: randomUUID() }),
    ];
    const statuses = [];
    for (const fact of facts) statuses.push((await send(fact)).status);
    expect(statuses).toEqual([422, 422, 422, 422, 404]);
    const ids = facts.map((fact) => fact.id);
    expect(await database.store.asOwner((tx) => tx.fieldRecord.count({ where: { id: { in: ids } } }))).toBe(0);
    expect((await send(recordOf({ kind: 'reading', hours: '1' }), await api.signIn('supervisor'))).status).toBe(403);
  });
});

describe('a photo', () => {
  const PICTURE = Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg==',
    'base64',
  );
  const put = async (id: string, bytes: Buffer, type = 'image/png', code = 'M1') => {
    const token = (technician as unknown as { token: string }).token;
    const machineId = shop.machineIds.get(code);
    return fetch(`${api.service.address}/v1/photos/${id}?machineId=${machineId}&takenAt=2026-06-08T12:00:00Z`, {
      method: 'PUT',
      headers: { authorization: `Bearer ${token}`, 'content-type': type },
      body: new Uint8Array(bytes),
    });
  };

  it('is kept once and given back as it was, only to those who may see the machine', async () => {
    const id = randomUUID();
    expect((await put(id, PICTURE)).status).toBe(200);
    expect((await put(id, PICTURE)).status).toBe(200);
    expect((await put(id, Buffer.concat([PICTURE, Buffer.from('x')]))).status).toBe(409);
    const listed = (await manager.get(`/v1/photos?machineId=${shop.machineIds.get('M1')}`)).body.items;
    expect(listed).toHaveLength(1);
    const supervisor = await api.signIn('supervisor');
    const image = await supervisor.get(`/v1/photos/${id}/image`);
    expect([image.status, image.headers.get('content-type')]).toEqual([200, 'image/png']);
    const foreign = randomUUID();
    await put(foreign, PICTURE, 'image/png', 'M2');
    expect((await supervisor.get(`/v1/photos/${foreign}/image`)).status).toBe(404);
  });

  it('is refused when it is no picture, of another type, or too large', async () => {
    expect((await put(randomUUID(), Buffer.from('<svg/>'))).status).toBe(422);
    expect((await put(randomUUID(), PICTURE, 'image/svg+xml')).status).toBe(415);
    expect((await put(randomUUID(), Buffer.concat([PICTURE, Buffer.alloc(5_000_000)]))).status).toBe(413);
  });
});
