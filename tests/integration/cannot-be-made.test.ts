import { stoppedClock } from '@deckround/platform';
import { afterAll, beforeAll, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runPlan } from '../support/planned-shop.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, WEEK } from '../support/small-shop.js';

interface VisitView {
  id: string;
  version: number;
  technicianId: string;
  siteId: string;
  date: string;
  startAt: string;
  state: string;
  items: { id: string; machineId: string }[];
}
interface WeekView {
  routes: { technicianId: string; date: string; visits: VisitView[] }[];
  cannotBeMade: { visitId: string; why: string }[];
  cost: Record<string, number>;
}

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;
const clock = stoppedClock('2026-06-05T15:00:00Z');

beforeAll(async () => {
  database = await freshDatabase();
  await createSmallShop(database.store);
  api = await runningApi(database, undefined, clock);
  manager = await api.signIn('manager');
  await runPlan(manager);
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

const week = async (): Promise<WeekView> => (await manager.get(`/v1/week?weekOf=${WEEK}`)).body;
const on = ({ technicianId, date }: VisitView, view: WeekView) =>
  view.routes.find((route) => route.technicianId === technicianId && route.date === date)?.visits ?? [];
const prices = async (id: string) => (await manager.get(`/v1/visits/${id}/move-prices`)).body;
const why = async (id: string) => (await week()).cannotBeMade.find((each) => each.visitId === id)?.why ?? null;

it('names the visits of somebody who turns out ill, and lets each go to somebody else at its price', async () => {
  const before = await week();
  expect(before.cannotBeMade).toEqual([]);
  // Of the fullest day: how the few visits of the small shop share the days differs from run to run.
  const [fullest] = before.routes.toSorted((a, b) => b.visits.length - a.visits.length);
  const [first] = fullest!.visits;
  const promise = { state: 'confirmed', moveCents: 4000 };
  expect((await manager.patch(`/v1/visits/${first!.id}`, promise, `"${first!.version}"`)).status).toBe(200);
  const ill = { technicianId: first!.technicianId, from: first!.date, to: first!.date, reason: 'ill' };
  const { body: absence } = await manager.post('/v1/absences', ill);
  // In the middle of that day nobody has begun them.
  clock.moveTo(new Date(Date.parse(first!.startAt) + 600_000).toISOString());
  const theirs = on(first!, before);
  const lost = theirs.map(({ id }) => ({ visitId: id, why: 'technician-away' }));
  expect((await week()).cannotBeMade).toEqual(expect.arrayContaining(lost));
  expect((await week()).cannotBeMade).toHaveLength(lost.length);
  // Nobody drives or works for them, and their work waits.
  const { cost } = await week();
  for (const part of ['travel', 'labour']) expect(cost[part]).toBeLessThan(before.cost[part]!);
  expect(cost['deferral']).toBeGreaterThan(before.cost['deferral']!);
  const { total, ...parts } = cost;
  expect(Object.values(parts).reduce((sum, cents) => sum + cents, 0)).toBe(total);

  // Planned before they are rescued, the week to come would take their work for done.
  const { body: run } = await manager.get(`/v1/plan-runs/${await runPlan(manager, { weekOf: '2026-06-15' })}`);
  expect(run.warning).toBe(
    `Visits before these days that nobody can make where they stand: ${lost.length}; their work counts as done here, so plan their week again first, then this one.`,
  );

  for (const { id, items } of theirs) {
    const { places, stamp } = await prices(id);
    expect(places.length).toBeGreaterThan(0);
    expect(places.filter((place: { isWhereItStands: boolean }) => place.isWhereItStands)).toEqual([]);
    const [place] = places.toSorted((a: { cents: number }, b: { cents: number }) => a.cents - b.cents);
    const { technicianId, date, order } = place;
    const moved = await manager.post(`/v1/visits/${id}/move`, { technicianId, date, order, stamp });
    expect(moved.status).toBe(201);
    expect(moved.body.difference).toMatchObject({ cents: { total: place.cents } });
    const told = moved.body.difference.visits.find((each: { visitId: string }) => each.visitId === id);
    expect(told).toMatchObject({ what: 'moved', from: null, breaksPromise: id === first!.id });
    const { body: after } = await manager.get(`/v1/visits/${id}`);
    expect(after).toMatchObject({ technicianId, date, state: 'proposed' });
    expect(after.items.map((item: { id: string }) => item.id).sort()).toEqual(items.map((item) => item.id).sort());
    expect(await why(id)).toBeNull();
    // What nobody makes yet stays in sight.
    const seen = new Set((await week()).routes.flatMap((route) => route.visits.map((visit) => visit.id)));
    expect(theirs.every((visit) => seen.has(visit.id))).toBe(true);
  }
  expect(on(first!, await week())).toEqual([]);
  const route = (await week()).routes.find(
    ({ technicianId, date }) => technicianId === first!.technicianId && date === first!.date,
  );
  expect(route).toBeUndefined();
  await manager.delete(`/v1/absences/${absence.id}`);
});

it('counts their cost again once they can be made', async () => {
  const before = await week();
  const { technicianId, date } = before.routes.flatMap((route) => route.visits)[0]!;
  const ill = { technicianId, from: date, to: date, reason: 'ill' };
  const { body: absence } = await manager.post('/v1/absences', ill);
  expect((await week()).cost['total']).not.toBe(before.cost['total']);
  await manager.delete(`/v1/absences/${absence.id}`);
  expect((await week()).cost).toEqual(before.cost);
});

it('names those whose site is closed or barred by now, and those of past days no more', async () => {
  clock.moveTo('2026-06-07T15:00:00Z');
  const [visit] = (await week()).routes.flatMap((route) => route.visits);
  const { id, siteId, technicianId, date } = visit!;
  const barred = await manager.post('/v1/visit-bars', { siteId, technicianId });
  expect(barred.status).toBe(201);
  expect(await why(id)).toBe('barred');
  expect((await manager.post('/v1/week/confirm', { weekOf: WEEK })).status).toBe(201);
  const states = (await week()).routes.flatMap((route) => route.visits.map((each) => [each.id === id, each.state]));
  expect(states).toContainEqual([false, 'confirmed']);
  expect(states.filter(([isBarred]) => isBarred)).toEqual([[true, 'proposed']]);
  const event = await manager.post('/v1/site-events', { siteId, date, name: 'fair', from: '05:00' });
  expect(event.status).toBe(201);
  expect(await why(id)).toBe('site-closed');
  await manager.delete(`/v1/site-events/${event.body.id}`);
  const closed = await manager.post('/v1/blackouts', { siteId, from: date, to: date, reason: 'ceremony' });
  expect(closed.status).toBe(201);
  expect(await why(id)).toBe('site-closed');
  // Once it has begun, somebody is there.
  clock.moveTo(new Date(Date.parse(visit!.startAt) + 600_000).toISOString());
  expect(await why(id)).toBeNull();
  clock.moveTo('2026-06-07T15:00:00Z');
  const off = { active: false };
  const { body: technician } = await manager.get(`/v1/technicians/${technicianId}`);
  expect((await manager.patch(`/v1/technicians/${technicianId}`, off, `"${technician.version}"`)).status).toBe(200);
  expect(await why(id)).toBe('technician-off');
  clock.moveTo('2026-06-22T15:00:00Z');
  expect((await week()).cannotBeMade).toEqual([]);
});

it('marks work on a machine that stands at another site by now, for the shop and for who goes there', async () => {
  clock.moveTo('2026-06-07T15:00:00Z');
  await runPlan(manager);
  const visits = (await week()).routes.flatMap((route) => route.visits);
  const { id, siteId, technicianId, date, items } = visits.find((visit) => visit.items.length > 0)!;
  const { machineId } = items[0]!;
  const away = visits.find((visit) => visit.siteId !== siteId)!.siteId;
  type Line = { partId: string | null; name: string; quantity: number };
  const amounts = (lines: Line[]) => {
    const sums = new Map<string, number>();
    for (const { partId, name, quantity } of lines)
      sums.set(partId ?? name, (sums.get(partId ?? name) ?? 0) + quantity);
    return [...sums].map(([key, sum]) => [key, Number(sum.toFixed(3))]).sort();
  };
  const moved = await manager.patch(`/v1/machines/${machineId}`, { siteId: away }, '*');
  expect(moved.status).toBe(200);
  type Marked = { machineId: string; isElsewhere: boolean };
  const elsewhere = (all: Marked[]) => all.filter((item) => item.isElsewhere).map((item) => item.machineId);
  const own = items.filter((item) => item.machineId === machineId).map((item) => item.machineId);
  expect(elsewhere((await manager.get(`/v1/visits/${id}`)).body.items)).toEqual(own);
  const shown = (await week()).routes.flatMap((route) => route.visits);
  expect(shown.flatMap((visit) => elsewhere(visit.items as never))).toEqual(own);
  const { body: day } = await manager.get(`/v1/field-day?date=${date}&technicianId=${technicianId}`);
  // What it would have needed is not loaded.
  type Work = { isElsewhere: boolean; parts: Line[] };
  const work: Work[] = day.visits.flatMap((visit: { machines: { items: Work[] }[] }) =>
    visit.machines.flatMap((machine) => machine.items),
  );
  expect(work.filter((item) => item.isElsewhere).flatMap((item) => item.parts).length).toBeGreaterThan(0);
  expect(amounts(day.route.load)).toEqual(
    amounts(work.filter((item) => !item.isElsewhere).flatMap((item) => item.parts)),
  );
  const machines = day.visits.find((visit: { id: string }) => visit.id === id).machines;
  expect(machines.flatMap((machine: { items: Marked[] }) => elsewhere(machine.items))).toEqual(own);
  await runPlan(manager);
  const again = (await week()).routes.flatMap((route) => route.visits);
  expect(again.flatMap((visit) => elsewhere(visit.items as never))).toEqual([]);
});
