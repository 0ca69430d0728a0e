import { stoppedClock } from '@deckround/platform';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { plannedShop, runPlan } from '../support/planned-shop.js';
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

  describe('ends a wish with its visit', () => {
    const wish = async (visitId: string, days: string[] = []) =>
      (await supervisor.post(`/v1/visits/${visitId}/answers`, { kind: 'move', reason: 'rain', days })).body.id;
    const now = async (id: string) => (await supervisor.get(`/v1/visit-answers/${id}`)).body;
    /** As planning again finds it: free to be replaced. */
    const freeVisit = async () => {
      const visit = await visitAt('S1');
      await database.store.asOwner((tx) =>
        tx.visit.update({ where: { id: visit.id }, data: { state: 'proposed', pinned: false } }),
      );
      return visit;
    };

    it('that planning again replaces: the new one takes it over, and meets it where it suits', async () => {
      const visit = await freeVisit();
      const never = await wish(visit.id, ['2026-06-30']);
      await runPlan(manager, { iterations: 1000 });
      const next = await visitAt('S1');
      expect(await now(never)).toMatchObject({ state: 'open', visitId: next.id, repliedAt: null });
      expect(await alertsFor(next.id)).toHaveLength(1);
      await freeVisit();
      const friday = await wish(next.id, ['2026-06-12']);
      const bars = ['2026-06-08', '2026-06-09', '2026-06-10', '2026-06-11'].map((date) =>
        manager.post('/v1/visit-bars', { siteId: shop.siteIds.get('S1'), date }),
      );
      for (const { status } of await Promise.all(bars)) expect(status).toBe(201);
      await runPlan(manager, { iterations: 1000 });
      const moved = await visitAt('S1');
      expect(await now(friday)).toMatchObject({ state: moved.date === next.date ? 'open' : 'met', visitId: moved.id });
    });

    it('that is given up: that is no other day', async () => {
      const visit = await visitAt('S1');
      const id = await wish(visit.id);
      await manager.patch(`/v1/visits/${visit.id}`, { state: 'cancelled' }, '*');
      expect(await now(id)).toMatchObject({ state: 'given-up', visitId: visit.id, repliedAt: expect.any(String) });
    });

    it('that is made all the same', async () => {
      await runPlan(manager, { iterations: 1000 });
      const visit = await visitAt('S1');
      const id = await wish(visit.id);
      const finished = { finishedAt: '2026-06-07T14:00:00Z', done: [] };
      expect((await manager.post(`/v1/visits/${visit.id}/finish`, finished)).status).toBe(201);
      expect(await now(id)).toMatchObject({ state: 'made', repliedAt: '2026-06-07T14:00:00.000Z' });
      expect(await alertsFor(visit.id)).toEqual([]);
    });
  });
});
