import { stoppedClock } from '@deckround/platform';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runPlan } from '../support/planned-shop.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop, WEEK } from '../support/small-shop.js';

interface VisitView {
  id: string;
  version: number;
  technicianId: string;
  siteId: string;
  date: string;
  startAt: string;
  endAt: string;
  state: string;
  pinned: boolean;
  items: { id: string; code: string; machineId: string }[];
}

let database: TestDatabase;
let shop: SmallShop;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;
const clock = stoppedClock('2026-06-05T15:00:00Z');

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  api = await runningApi(database, undefined, clock);
  manager = await api.signIn('manager');
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

const plan = (weekOf = WEEK) => runPlan(manager, { weekOf });

const visits = async (): Promise<VisitView[]> => (await manager.get('/v1/visits?limit=500')).body.items;
const visit = async (id: string): Promise<VisitView> => (await manager.get(`/v1/visits/${id}`)).body;

describe('moving a visit by hand', () => {
  it('needs a plan', async () => {
    expect((await manager.get('/v1/visits/00000000-0000-4000-8000-000000000000/move-prices')).status).toBe(404);
  });

  it('costs what its price said, moves it with its items, and tells whom else it moves', async () => {
    await plan();
    const [first] = await visits();
    const prices = await manager.get(`/v1/visits/${first!.id}/move-prices`);
    expect(prices.status).toBe(200);
    const { places, stamp } = prices.body;
    expect(places.filter((place: { isWhereItStands: boolean }) => place.isWhereItStands)).toMatchObject([{ cents: 0 }]);
    const other = places.find((place: { date: string }) => place.date !== first!.date);
    const moved = await manager.post(`/v1/visits/${first!.id}/move`, {
      technicianId: other.technicianId,
      date: other.date,
      order: other.order,
      stamp,
    });
    expect(moved.status).toBe(201);
    expect(moved.body.difference.cents.total).toBe(other.cents);
    expect(moved.body.difference.visits[0]).toMatchObject({ customerName: 'Meadow Trust', breaksPromise: false });
    const after = await visit(first!.id);
    expect(after).toMatchObject({ date: other.date, technicianId: other.technicianId, pinned: true });
    expect(new Date(after.startAt).getTime()).toBe(new Date(other.startAt).getTime());
    expect(after.items.map((item) => item.id).sort()).toEqual(first!.items.map((item) => item.id).sort());
    const week = (await manager.get(`/v1/week?weekOf=${WEEK}`)).body;
    const day = week.routes.find(
      (route: { technicianId: string; date: string }) =>
        route.technicianId === other.technicianId && route.date === other.date,
    );
    expect(day.visits.map((each: { id: string }) => each.id)).toContain(first!.id);
    const changes = (await manager.get('/v1/week-changes')).body.items;
    expect(changes).toMatchObject([{ kind: 'move', cents: other.cents }]);
    // The week is another one now: the old stamp is refused and nothing is done.
    const again = await manager.post(`/v1/visits/${first!.id}/move`, { ...bare(first!), stamp });
    expect(again.status).toBe(409);
    expect((await visit(first!.id)).version).toBe(after.version);
  });

  it('holds it fast when the week is planned again, until it is let go', async () => {
    const held = (await visits()).find((each) => each.pinned)!;
    await plan();
    expect(await visit(held.id)).toMatchObject({
      startAt: held.startAt,
      technicianId: held.technicianId,
      pinned: true,
    });
    const letGo = await manager.patch(
      `/v1/visits/${held.id}`,
      { pinned: false },
      `"${(await visit(held.id)).version}"`,
    );
    expect(letGo.body.pinned).toBe(false);
  });

  it('can be moved again and taken back, and breaks a promise only where one was given', async () => {
    // Of two sites: what else stands where differs from run to run.
    const [one, ...others] = (await visits()).filter((each) => each.state === 'proposed');
    const other = others.find((each) => each.siteId !== one!.siteId);
    const day = { technicianId: one!.technicianId, date: '2026-06-11' };
    const moveTo = async (id: string, order: number, pinned = true) => {
      const moved = await manager.post(`/v1/visits/${id}/move`, { ...day, order, pinned });
      expect(moved.status).toBe(201);
      return moved.body.difference.visits;
    };
    const broken = (changes: { breaksPromise: boolean }[]) => changes.filter((each) => each.breaksPromise);
    const placesOf = async (id: string) => (await manager.get(`/v1/visits/${id}/move-prices`)).body.places;
    await moveTo(one!.id, 0);
    await moveTo(other!.id, 1);
    for (const place of await placesOf(other!.id)) expect(place.breaks).toEqual([]);
    // While the first is held fast nothing may put it off; let go, the two can change places.
    await manager.patch(`/v1/visits/${one!.id}`, { pinned: false }, `"${(await visit(one!.id)).version}"`);
    const placesNow = await placesOf(other!.id);
    expect(placesNow.filter((place: { date: string; order: number }) => place.date === day.date)).toContainEqual(
      expect.objectContaining({ technicianId: day.technicianId, order: 0, isWhereItStands: false, breaks: [] }),
    );
    const swapped = await moveTo(other!.id, 0);
    expect(swapped.length).toBeGreaterThanOrEqual(2);
    expect(broken(swapped)).toEqual([]);
    expect(broken(await moveTo(other!.id, 1, false))).toEqual([]);

    // Held fast and promised: within what was told it breaks nothing, on another day it does.
    const { version, startAt } = await visit(other!.id);
    const around = (hours: number) => new Date(Date.parse(startAt) + hours * 3_600_000).toISOString();
    const told = await manager.patch(
      `/v1/visits/${other!.id}`,
      { ...{ state: 'confirmed', pinned: true, moveCents: 4000 }, promisedFrom: around(-6), promisedTo: around(6) },
      `"${version}"`,
    );
    expect(told.body).toMatchObject({ state: 'confirmed', pinned: true });
    for (const place of await placesOf(other!.id)) {
      const isSameDay = place.date === day.date && place.technicianId === day.technicianId;
      expect(place.breaks).toEqual(isSameDay ? [] : [other!.id]);
    }
    expect(broken(await moveTo(other!.id, 0))).toEqual([]);
    expect(await visit(other!.id)).toMatchObject({ state: 'confirmed', pinned: true });
    const elsewhere = (await placesOf(other!.id)).find((place: { date: string }) => place.date !== day.date);
    const away = await manager.post(`/v1/visits/${other!.id}/move`, { ...bare(elsewhere), pinned: false });
    expect(away.body.difference.visits).toContainEqual(expect.objectContaining({ breaksPromise: true }));
    expect(await visit(other!.id)).toMatchObject({ state: 'proposed', pinned: false });
  });

  it('is refused where somebody cannot be sent, with the reason', async () => {
    const [first] = await visits();
    const bar = await manager.post('/v1/visit-bars', { siteId: first!.siteId, technicianId: first!.technicianId });
    expect(bar.status).toBe(201);
    const { places, closed } = (await manager.get(`/v1/visits/${first!.id}/move-prices`)).body;
    const { technicianId, date } = first!;
    expect(closed).toContainEqual({ technicianId, date, obstacle: 'access' });
    expect(places.filter((place: { technicianId: string }) => place.technicianId === technicianId)).toEqual([]);
    await plan();
    for (const each of await visits()) {
      if (each.siteId === first!.siteId && each.state === 'proposed')
        expect(each.technicianId).not.toBe(first!.technicianId);
    }
    expect((await manager.delete(`/v1/visit-bars/${bar.body.id}`)).status).toBe(204);
    expect((await manager.post('/v1/visit-bars', { siteId: first!.siteId })).status).toBe(422);
  });
});

describe('a road call in mid-week', () => {
  let callId: string;

  it('knows what to ask and what to load', async () => {
    const { items } = (await manager.get('/v1/symptoms')).body;
    expect(items.find((each: { code: string }) => each.code === 'bearing-noise').questions.length).toBeGreaterThan(2);
    const supervisor = await api.signIn('supervisor');
    clock.moveTo('2026-06-08T14:40:00Z');
    const call = await supervisor.post('/v1/road-calls', {
      machineId: shop.machineIds.get('M1')!,
      calledAt: '2026-06-08T09:40:00-05:00',
      symptom: 'howls under load',
      symptomCode: 'bearing-noise',
      answers: { 'which-spindle': 'left' },
    });
    expect(call.body).toMatchObject({ minutes: 75, skill: 'mechanical', downCentsPerDay: 15_000, state: 'open' });
    callId = call.body.id;
    const odd = await supervisor.post('/v1/road-calls', {
      machineId: shop.machineIds.get('M1')!,
      calledAt: '2026-06-08T09:40:00-05:00',
      symptom: 'odd',
      symptomCode: 'nonsense',
    });
    expect(odd.status).toBe(422);
  });

  it('gives options in the next planned week when no plan covers today', async () => {
    clock.moveTo('2026-06-05T15:00:00Z');
    const given = await manager.post(`/v1/road-calls/${callId}/options`, {});
    clock.moveTo('2026-06-08T14:40:00Z');
    expect(given.status).toBe(200);
    expect(given.body.options.length).toBeGreaterThan(0);
    for (const option of given.body.options) expect(option.date >= WEEK).toBe(true);
  });

  it('gives options with cost and whom they move, and carries one out in one go', async () => {
    // Which days the plan uses differs with the ids: one visit is put on a day still to come.
    clock.moveTo('2026-06-05T15:00:00Z');
    const [proposed] = (await visits()).filter((each) => each.state === 'proposed');
    const { places, stamp: asPlanned } = (await manager.get(`/v1/visits/${proposed!.id}/move-prices`)).body;
    const ahead = places.find((place: VisitView) => place.date > WEEK);
    const moved = await manager.post(`/v1/visits/${proposed!.id}/move`, { ...bare(ahead), stamp: asPlanned });
    expect(moved.status).toBe(201);
    clock.moveTo('2026-06-08T14:40:00Z');
    const before = await visits();
    const promised = before.find((each) => each.id === proposed!.id)!;
    await manager.patch(`/v1/visits/${promised.id}`, { state: 'confirmed', moveCents: 4000 }, `"${promised.version}"`);
    const given = await manager.post(`/v1/road-calls/${callId}/options`, {});
    expect(given.status).toBe(200);
    const { options, stamp, likelyParts, cautions } = given.body;
    expect(options.length).toBeGreaterThan(0);
    expect(options[0].kind).toBe('squeeze-in');
    // Which of two equal plans stands differs with the ids: the call rides along where a visit of its site is near.
    expect(options[0].sentence).toMatch(
      /Technician T\d (squeezes it in|takes it along on the visit already planned there,) on \w+day \d\d:\d\d\..* It costs \$/,
    );
    for (const option of options) expect(new Date(option.startAt).getTime()).toBeGreaterThanOrEqual(+clock.now());
    expect(likelyParts[0]).toMatchObject({ because: 'Replace spindle bearings', onHand: 10 });
    expect(cautions.length).toBeGreaterThan(0);

    const chosen = await manager.post(`/v1/road-calls/${callId}/choose`, { kind: 'squeeze-in', stamp });
    expect(chosen.body).toMatchObject({ state: 'planned' });
    const made = await visit(chosen.body.visitId);
    expect(made.items.map((item) => item.code)).toContain('road-call');
    expect(new Date(made.startAt).getTime()).toBe(new Date(options[0].startAt).getTime());
    expect(await visit(promised.id)).toMatchObject({ state: 'confirmed' });
    expect((await manager.post(`/v1/road-calls/${callId}/choose`, { kind: 'squeeze-in', stamp })).status).toBe(409);
    expect((await manager.post(`/v1/road-calls/${callId}/options`, {})).status).toBe(409);
  });

  it('is kept when the week is planned again, and closed with its visit', async () => {
    await plan();
    const call = (await manager.get(`/v1/road-calls/${callId}`)).body;
    expect(call.state).toBe('planned');
    const made = await visit(call.visitId);
    const finished = await manager.post(`/v1/visits/${made.id}/finish`, {
      finishedAt: clock.now().toISOString(),
      done: made.items.map((item) => item.id),
    });
    expect(finished.status).toBe(201);
    expect((await manager.get(`/v1/road-calls/${callId}`)).body.state).toBe('closed');
    expect((await manager.get(`/v1/machines/${shop.machineIds.get('M1')}`)).body.condition).toBe('working');
  });
});

describe('an event', () => {
  it('has the machines of its site ready before it begins', async () => {
    const siteId = shop.siteIds.get('S2')!;
    const event = await manager.post('/v1/site-events', {
      siteId,
      date: '2026-06-11',
      from: '12:00',
      name: 'Sports day',
    });
    expect(event.body).toMatchObject({ from: '12:00', name: 'Sports day' });
    await plan();
    const there = (await visits()).filter(
      (each) => each.siteId === siteId && ['proposed', 'confirmed'].includes(each.state),
    );
    expect(there.length).toBeGreaterThan(0);
    for (const each of there) {
      expect([each.date <= '2026-06-10', each.endAt <= '2026-06-11T17:00:00Z']).toContain(true);
    }
  });
});

describe('a road call when the week is over', () => {
  const nextWeek = '2026-06-15';
  // Friday, half past five in the afternoon at the shop: nobody works before Monday.
  const evening = '2026-06-12T22:30:00Z';
  let callId: string;

  const options = async (daysAhead = 3) => {
    const given = await manager.post(`/v1/road-calls/${callId}/options`, { daysAhead });
    expect(given.status).toBe(200);
    return given.body;
  };

  const call = async (machine: string, calledAt: string) => {
    const taken = await manager.post('/v1/road-calls', {
      ...{ machineId: shop.machineIds.get(machine)!, calledAt, symptom: 'belt came off' },
    });
    expect(taken.status).toBe(201);
    callId = taken.body.id;
  };

  it('has no way while the next week is not planned, and is in that plan then', async () => {
    clock.moveTo(evening);
    await call('M2', evening);
    expect(await options()).toMatchObject({ options: [], lookedAt: null });
    await plan(nextWeek);
    expect((await manager.get(`/v1/road-calls/${callId}`)).body.state).toBe('planned');
  });

  it('is fit into the next week where that is planned', async () => {
    await call('M3', evening);
    const given = await options();
    expect(given.lookedAt).toEqual({ from: '2026-06-15', until: '2026-06-17' });
    expect(given.options.length).toBeGreaterThan(0);
    for (const { date } of given.options) expect(date >= '2026-06-15' && date <= '2026-06-17').toBe(true);
    const [{ kind, startAt }] = given.options;
    const chosen = await manager.post(`/v1/road-calls/${callId}/choose`, { kind, stamp: given.stamp });
    expect(chosen.body.state).toBe('planned');
    expect(new Date((await visit(chosen.body.visitId)).startAt).getTime()).toBe(new Date(startAt).getTime());
  });

  it('is offered the cheapest of each kind from both weeks while both have days left', async () => {
    clock.moveTo('2026-06-12T12:30:00Z');
    await call('M1', '2026-06-12T12:20:00Z');
    const far = await options(3);
    expect(far.lookedAt).toEqual({ from: '2026-06-12', until: '2026-06-16' });
    const near = await options(1);
    expect(near.lookedAt).toEqual({ from: '2026-06-12', until: '2026-06-12' });
    const cents = (given: { options: { difference: { cents: { total: number } } }[] }) =>
      Math.min(...given.options.map((option) => option.difference.cents.total));
    expect(cents(far)).toBeLessThanOrEqual(cents(near));
    // Asked anew meanwhile: what was shown before is not done.
    const stale = await manager.post(`/v1/road-calls/${callId}/choose`, {
      kind: far.options[0].kind,
      stamp: far.stamp,
    });
    expect(stale.status).toBe(409);
    expect((await manager.get(`/v1/road-calls/${callId}`)).body.state).toBe('open');
  });

  it('is planned for the rest of a day under way, when the week is planned again, beside what stands', async () => {
    const todays = async () => (await visits()).filter((each) => each.date === '2026-06-12');
    const before = await todays();
    await plan();
    const places = (await todays()).map(({ id, startAt }) => [id, startAt]);
    expect(places).toEqual(expect.arrayContaining(before.map(({ id, startAt }) => [id, startAt])));
    const week = (await manager.get(`/v1/week?weekOf=${WEEK}`)).body;
    expect(week.warning).toBe('Work had begun on 2026-06-12: what was planned for that day stays as it was.');
    const call = (await manager.get(`/v1/road-calls/${callId}`)).body;
    expect(call.state).toBe('planned');
    // Told at half past seven: an hour to come.
    const added = await visit(call.visitId);
    expect(added.date).toBe('2026-06-12');
    expect(new Date(added.startAt).getTime()).toBeGreaterThanOrEqual(Date.parse('2026-06-12T13:30:00Z'));
    const route = week.routes.find(
      (each: { technicianId: string; date: string }) =>
        each.technicianId === added.technicianId && each.date === added.date,
    );
    expect(route.visits.map((each: VisitView) => each.id)).toContain(added.id);
    for (const each of route.visits as VisitView[]) {
      expect(route.leaveAt < each.startAt && each.endAt < route.returnAt).toBe(true);
    }
  });
});

/** A place without what only a price has. */
function bare({ technicianId, date }: VisitView) {
  return { technicianId, date };
}
