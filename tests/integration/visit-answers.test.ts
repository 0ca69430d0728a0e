import { stoppedClock } from '@deckround/platform';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { type ApiClient, until } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { plannedShop } from '../support/planned-shop.js';
import { runningApi } from '../support/running-api.js';
import type { SmallShop } from '../support/small-shop.js';
import { WEEK } from '../support/small-shop.js';

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let shop: SmallShop;
let manager: ApiClient;
let supervisor: ApiClient;

beforeAll(async () => {
  database = await freshDatabase();
  api = await runningApi(database, undefined, stoppedClock('2026-06-07T15:00:00Z'));
  shop = await plannedShop(database, api);
  manager = await api.signIn('manager');
  supervisor = await api.signIn('supervisor');
}, 60_000);
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

async function visitAt(site: string) {
  const { items } = (await manager.get(`/v1/visits?from=${WEEK}&siteId=${shop.siteIds.get(site)}`)).body;
  return items.find((visit: { state: string }) => /proposed|confirmed/.test(visit.state));
}
const alertsFor = async (visitId: string) =>
  (await manager.get('/v1/alerts')).body.items.filter(
    (alert: { kind: string; visitId: string }) => alert.kind === 'move-asked' && alert.visitId === visitId,
  );

describe('a site’s word on its visit', () => {
  it('is given for own sites only, with a reason where one is owed', async () => {
    const own = await visitAt('S1');
    const other = await visitAt('S2');
    expect((await supervisor.post(`/v1/visits/${other.id}/answers`, { kind: 'suits' })).status).toBe(404);
    expect((await supervisor.post(`/v1/visits/${own.id}/answers`, { kind: 'move' })).status).toBe(422);
    const said = await supervisor.post(`/v1/visits/${own.id}/answers`, { kind: 'suits' });
    expect(said).toMatchObject({ status: 201, body: { kind: 'suits', state: 'noted', aboutStart: own.startAt } });
    expect((await visitAt('S1')).answer).toMatchObject({ id: said.body.id, kind: 'suits' });
    const technician = await api.signIn('technician');
    expect((await technician.get('/v1/visit-answers')).status).toBe(403);
  });

  it('asks for another day: the shop is warned with a price, moves the visit, and that is the reply', async () => {
    const visit = await visitAt('S1');
    await manager.patch(`/v1/visits/${visit.id}`, { state: 'confirmed' }, `"${visit.version}"`);
    const days = ['2026-06-11', '2026-06-12'];
    const said = await supervisor.post(`/v1/visits/${visit.id}/answers`, { kind: 'move', reason: 'tournament', days });
    expect(said.body).toMatchObject({ state: 'open', days });
    const before = (await supervisor.get('/v1/visit-answers')).body.items;
    expect(before.map((each: { state: string }) => each.state).sort()).toEqual(['open', 'withdrawn']);
    const [alert] = await alertsFor(visit.id);
    expect(alert).toMatchObject({
      answerId: said.body.id,
      sentence: `Site S1 asks to move the visit on ${visit.date} to 2026-06-11, 2026-06-12: tournament`,
    });
    expect(days).toContain(alert.move.date);
    const { technicianId, date, order, stamp } = alert.move;
    const moved = await manager.post(`/v1/visits/${visit.id}/move`, { technicianId, date, order, stamp });
    expect(moved.status).toBe(201);
    expect((await visitAt('S1')).answer).toMatchObject({ state: 'met', id: said.body.id });
    expect(await alertsFor(visit.id)).toEqual([]);
  });

  it('is declined with words, which the site reads', async () => {
    const visit = await visitAt('S1');
    const said = await supervisor.post(`/v1/visits/${visit.id}/answers`, { kind: 'move', reason: 'rain' });
    const path = `/v1/visit-answers/${said.body.id}/reply`;
    const tell = (client: ApiClient, body: object, etag = '"1"') => client.post(path, body, { 'if-match': etag });
    expect((await tell(supervisor, { decision: 'met' })).status).toBe(403);
    expect((await tell(manager, { decision: 'declined' })).status).toBe(422);
    expect((await tell(manager, { decision: 'declined', reply: 'x' }, '"7"')).status).toBe(412);
    expect((await tell(manager, { decision: 'declined', reply: 'The crew is only near on that day.' })).status).toBe(
      200,
    );
    expect((await tell(manager, { decision: 'met' }, '"2"')).status).toBe(409);
    const seen = (await supervisor.get(`/v1/visits/${visit.id}`)).body.answer;
    expect(seen).toMatchObject({ state: 'declined', reply: 'The crew is only near on that day.' });
    const acts = (await manager.get('/v1/audit-entries')).body.items.map((each: { action: string }) => each.action);
    expect(acts).toEqual(expect.arrayContaining(['visit.suits', 'visit.move-asked', 'visit.move-declined']));
  });

  it('does not outlive a visit that planning again replaces', async () => {
    const visit = await visitAt('S1');
    await database.store.asOwner((tx) =>
      tx.visit.update({ where: { id: visit.id }, data: { state: 'proposed', pinned: false } }),
    );
    const said = await supervisor.post(`/v1/visits/${visit.id}/answers`, { kind: 'move', reason: 'rain' });
    const run = await manager.post('/v1/plan-runs', { weekOf: WEEK, iterations: 1000 });
    await until(
      () => manager.get(`/v1/plan-runs/${run.body.id}`),
      ({ body }) => body.status === 'done',
    );
    const row = (await supervisor.get(`/v1/visit-answers/${said.body.id}`)).body;
    expect(row).toMatchObject({ state: 'met', visitId: null });
  });
});
