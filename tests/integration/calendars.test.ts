import { stoppedClock } from '@deckround/platform';
import { dropOldEntries } from '@deckround/register-store';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import ICAL from 'ical.js';
import { type ApiClient, until } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { plannedVisit } from '../support/finished-visit.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop, WEEK } from '../support/small-shop.js';

let database: TestDatabase;
let shop: SmallShop;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;
let technicianIds: string[];

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  api = await runningApi(database, undefined, stoppedClock(new Date('2026-06-05T12:00:00Z')));
  manager = await api.signIn('manager');
  technicianIds = (await manager.get('/v1/technicians')).body.items.map((each: { id: string }) => each.id);
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

interface Shown {
  uid: string;
  status: string;
  sequence: number;
  start: string;
  summary: string;
}

async function open(whose: { technicianId: string } | { siteId: string }) {
  const { status, body } = await manager.post('/v1/calendar-addresses', whose);
  expect(status).toBe(201);
  return { ...body, read: () => feed(body.path) } as { id: string; path: string; read(): Promise<Shown[]> };
}

async function feed(path: string): Promise<Shown[]> {
  const { status, body } = await api.client.get(path);
  expect(status).toBe(200);
  return new ICAL.Component(ICAL.parse(body)).getAllSubcomponents('vevent').map((each) => {
    const event = new ICAL.Event(each);
    return {
      uid: event.uid,
      status: String(each.getFirstPropertyValue('status')),
      sequence: event.sequence,
      start: event.startDate.toJSDate().toISOString(),
      summary: event.summary,
    };
  });
}

const change = (id: string, data: object) =>
  database.store.inShop(shop.shopId, (tx) => tx.visit.update({ where: { id }, data }));

describe('a calendar address', () => {
  it('is read without a sign-in, is not kept by anyone on the way, and is a hash at rest', async () => {
    const address = await open({ siteId: shop.siteIds.get('S1')! });
    await plannedVisit(database.store, shop, '2026-06-09');
    const answer = await api.client.get(address.path);
    expect(answer.headers.get('content-type')).toBe('text/calendar; charset=utf-8');
    expect(answer.headers.get('cache-control')).toMatch(/private/);
    const again = await api.client.get(address.path, { 'if-none-match': answer.headers.get('etag')! });
    expect([again.status, again.body]).toEqual([304, '']);
    const secret = /drc_[\w-]{43}/.exec(address.path)![0]; // 43 characters of base64url: 256 bits
    const [row] = (await manager.get('/v1/calendar-addresses')).body.items;
    expect(row.lastReadAt).not.toBeNull();
    const stored = await database.store.inShop(shop.shopId, (tx) => tx.calendarAddress.findMany());
    const audited = await database.store.inShop(shop.shopId, (tx) => tx.auditEntry.findMany());
    expect(audited.map((each) => each.action)).toContain('calendar.opened');
    expect(JSON.stringify([row, stored, audited])).not.toContain(secret);
  });

  it('leads nowhere once revoked, or when it never was', async () => {
    const address = await open({ technicianId: technicianIds[0]! });
    expect((await api.client.get(address.path)).status).toBe(200);
    expect((await manager.delete(`/v1/calendar-addresses/${address.id}`)).status).toBe(204);
    expect((await api.client.get(address.path)).status).toBe(404);
    expect((await api.client.get(`/v1/calendars/drc_${'x'.repeat(43)}.ics`)).status).toBe(404);
    expect((await api.client.get('/v1/calendars/anything')).status).toBe(404);
  });

  it('is for the own days and the own sites', async () => {
    const technician = await api.signIn('technician');
    const supervisor = await api.signIn('supervisor');
    const ask = async (who: ApiClient, body: object) => (await who.post('/v1/calendar-addresses', body)).status;
    expect(await ask(technician, { technicianId: technicianIds[0] })).toBe(201);
    expect(await ask(technician, { technicianId: technicianIds[1] })).toBe(403);
    expect(await ask(technician, { siteId: shop.siteIds.get('S1') })).toBe(403);
    expect(await ask(supervisor, { siteId: shop.siteIds.get('S1') })).toBe(201);
    expect(await ask(supervisor, { siteId: shop.siteIds.get('S2') })).toBe(403);
    expect(await ask(manager, {})).toBe(422);
    const [theirs] = (await supervisor.get('/v1/calendar-addresses')).body.items;
    expect(theirs.siteId).toBe(shop.siteIds.get('S1'));
    const ofTechnician = (await technician.get('/v1/calendar-addresses')).body.items[0].id;
    expect((await supervisor.delete(`/v1/calendar-addresses/${ofTechnician}`)).status).toBe(404);
  });

  it('ends for a supervisor with the site', async () => {
    const supervisor = await api.signIn('supervisor');
    const { body } = await supervisor.post('/v1/calendar-addresses', { siteId: shop.siteIds.get('S1')! });
    expect((await api.client.get(body.path)).status).toBe(200);
    const people = (await manager.get('/v1/people')).body.items;
    const person = people.find((each: { role: string }) => each.role === 'supervisor');
    const siteIds = (ids: string[], version: number) =>
      manager.patch(`/v1/people/${person.id}`, { siteIds: ids }, `"${version}"`);
    const taken = await siteIds([shop.siteIds.get('S2')!], person.version);
    expect(taken.status).toBe(200);
    expect((await api.client.get(body.path)).status).toBe(404);
    expect((await siteIds([shop.siteIds.get('S1')!], taken.body.version)).status).toBe(200);
    expect((await api.client.get(body.path)).status).toBe(200);
  });

  it('ends with the person who opened it', async () => {
    const supervisor = await api.signIn('supervisor');
    const { path } = (await supervisor.post('/v1/calendar-addresses', { siteId: shop.siteIds.get('S1') })).body;
    const { items } = (await manager.get('/v1/people')).body;
    const { id } = items.find((each: { role: string }) => each.role === 'supervisor');
    expect((await manager.delete(`/v1/people/${id}`)).status).toBe(204);
    expect((await api.client.get(path)).status).toBe(404);
  });
});

describe('a visit in a calendar', () => {
  it('keeps its name while it moves, is promised, goes to somebody else and is given up', async () => {
    const visit = await plannedVisit(database.store, shop, '2026-06-10');
    const site = await open({ siteId: visit.siteId });
    const first = await open({ technicianId: technicianIds[0]! });
    const second = await open({ technicianId: technicianIds[1]! });
    const shown = async (calendar: { read(): Promise<Shown[]> }) =>
      (await calendar.read()).filter((each) => each.uid.startsWith(visit.id));
    const start = visit.startAt.toISOString();
    expect(await shown(site)).toEqual([
      expect.objectContaining({ status: 'CONFIRMED', sequence: 0, start, summary: 'Small shop: M1' }),
    ]);

    await change(visit.id, { startAt: new Date('2026-06-10T15:00:00Z'), endAt: new Date('2026-06-10T17:00:00Z') });
    expect(await shown(site)).toEqual([
      expect.objectContaining({ status: 'CONFIRMED', sequence: 1, start: '2026-06-10T15:00:00.000Z' }),
    ]);
    await change(visit.id, { startAt: new Date('2026-06-10T15:00:00Z'), reason: 'the same again' });
    expect(await shown(site)).toEqual([expect.objectContaining({ sequence: 1 })]);

    await change(visit.id, { technicianId: technicianIds[1]! });
    expect(await shown(first)).toEqual([expect.objectContaining({ status: 'CANCELLED', sequence: 2 })]);
    expect(await shown(second)).toEqual([expect.objectContaining({ status: 'CONFIRMED', sequence: 2 })]);
    expect(await shown(site)).toEqual([expect.objectContaining({ status: 'CONFIRMED', sequence: 2 })]);

    await change(visit.id, { technicianId: technicianIds[0]! });
    expect(await shown(first)).toEqual([expect.objectContaining({ status: 'CONFIRMED', sequence: 3 })]);
    expect(await shown(second)).toEqual([expect.objectContaining({ status: 'CANCELLED', sequence: 3 })]);

    const { version } = (await manager.get(`/v1/visits/${visit.id}`)).body;
    expect((await manager.patch(`/v1/visits/${visit.id}`, { state: 'cancelled' }, `"${version}"`)).status).toBe(200);
    expect(await shown(site)).toEqual([expect.objectContaining({ status: 'CANCELLED', sequence: 4 })]);
  });

  it('is tentative while it is a proposal; planning again moves it or cancels it, and forgets none', async () => {
    const calendars = [
      await open({ siteId: shop.siteIds.get('S2')! }),
      ...(await Promise.all(technicianIds.map((technicianId) => open({ technicianId })))),
    ];
    const plan = async (seed: number) => {
      const { body } = await manager.post('/v1/plan-runs', { weekOf: WEEK, iterations: 1000, seed });
      await until(
        () => manager.get(`/v1/plan-runs/${body.id}`),
        (answer) => answer.body.status === 'done',
      );
    };
    const forecast = await manager.post('/v1/forecast-runs', { asOf: '2026-06-05', costFrom: WEEK, costDays: 14 });
    await until(
      () => manager.get(`/v1/forecast-runs/${forecast.body.id}`),
      ({ body }) => body.status === 'done',
    );
    await plan(1);
    const visits = async () =>
      (await manager.get(`/v1/visits?from=${WEEK}&state=proposed`)).body.items as {
        id: string;
        siteId: string;
        technicianId: string;
        startAt: string;
      }[];
    const proposed = (await visits()).filter((each) => each.siteId === shop.siteIds.get('S2'));
    expect(proposed.length).toBeGreaterThan(0);
    const before = await Promise.all(calendars.map((each) => each.read()));
    expect(before[0]!.map((each) => each.status)).toEqual(proposed.map(() => 'TENTATIVE'));

    await plan(2);
    const kept = (await visits()).filter((each) => each.siteId === shop.siteIds.get('S2'));
    expect(kept.map((each) => each.id)).not.toEqual(proposed.map((each) => each.id)); // a new plan makes new rows …
    const after = await Promise.all(calendars.map((each) => each.read()));
    expect(after[0]!.map((each) => each.uid)).toEqual(before[0]!.map((each) => each.uid)); // … under the names they had
    expect(after[0]!.filter((each) => each.status !== 'CANCELLED').map((each) => each.start)).toEqual(
      kept.map((each) => each.startAt),
    );
    for (const [index, shown] of before.entries()) {
      for (const each of shown) {
        const now = after[index]!.find((entry) => entry.uid === each.uid)!;
        expect(now.sequence).toBeGreaterThanOrEqual(each.sequence);
        if (now.start !== each.start || now.status !== each.status) expect(now.sequence).toBeGreaterThan(each.sequence);
      }
    }

    await database.store.inShop(shop.shopId, (tx) => tx.visit.deleteMany({ where: { state: 'proposed' } }));
    const gone = await calendars[0]!.read();
    expect(gone.map((each) => each.status)).toEqual(before[0]!.map(() => 'CANCELLED'));
    expect(gone.every((each, index) => each.sequence > after[0]![index]!.sequence)).toBe(true);

    // Long after, nobody has them any more.
    const dropped = await database.store.asOwner((tx) => dropOldEntries(tx, new Date('2026-12-01T00:00:00Z')));
    expect(dropped).toBeGreaterThan(0);
    expect(await calendars[0]!.read()).toEqual([]);
  });
});
