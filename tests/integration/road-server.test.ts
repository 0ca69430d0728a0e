import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { checkPlan, type PlanningSnapshot, type WeekPlan } from '@deckround/planning';
import { parseConfig, stoppedClock } from '@deckround/platform';
import { createProcessors } from '@deckround/worker';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { askRoadServer } from '../../apps/worker/src/travel/road-server.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { createSmallShop, WEEK } from '../support/small-shop.js';
import { workerContext } from '../support/worker-context.js';

let database: TestDatabase;
let shopId: string;
let server: Server;
let root: string;
const asked: string[] = [];
let failNext = 0;

/** Drives at 10 m/s along the axes: unlike any estimate of ours. */
function drive(a: number[], b: number[]): number {
  return (Math.abs(a[0]! - b[0]!) * 83_000 + Math.abs(a[1]! - b[1]!) * 111_000) / 10;
}

beforeAll(async () => {
  database = await freshDatabase();
  ({ shopId } = await createSmallShop(database.store));
  server = createServer((request, response) => {
    asked.push(request.url!);
    if (failNext > 0) {
      failNext--;
      response.writeHead(503).end();
      return;
    }
    const [, coordinates, query] = /\/table\/v1\/driving\/([^?]+)\?(.*)$/.exec(request.url!)!;
    const places = coordinates!.split(';').map((pair) => pair.split(',').map(Number));
    const parameters = new URLSearchParams(query);
    const indices = (name: string) => parameters.get(name)!.split(';').map(Number);
    const durations = indices('sources').map((i) => indices('destinations').map((j) => drive(places[i]!, places[j]!)));
    const distances = durations.map((row) => row.map((seconds) => seconds * 10));
    response.setHeader('content-type', 'application/json');
    response.end(JSON.stringify({ code: 'Ok', durations, distances }));
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  root = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
});
afterAll(async () => {
  server.close();
  await database.drop();
});

async function plan() {
  const { store } = database;
  const run = await store.inShop(shopId, (tx) =>
    tx.planRun.create({
      data: { shopId, weekOf: new Date(`${WEEK}T00:00:00Z`), days: 7, seconds: 5, iterations: 1000 },
    }),
  );
  const config = parseConfig({ TRAVEL_TABLE_URL: root });
  const clock = stoppedClock('2026-06-05T15:00:00Z');
  await createProcessors(workerContext(store, { config, clock })).plan({ shopId, runId: run.id });
  const row = await store.inShop(shopId, (tx) => tx.planRun.findUniqueOrThrow({ where: { id: run.id } }));
  expect(row.status).toBe('done');
  return { snapshot: row.snapshot as unknown as PlanningSnapshot, plan: row.plan as unknown as WeekPlan, row };
}

describe('a road server', () => {
  it('is asked in blocks, again when it stumbles, and each drive lands in its place', async () => {
    const positions = Array.from({ length: 120 }, (_, k) => ({
      latitude: 41 + k / 500,
      longitude: -94 + (k % 7) / 50,
    }));
    failNext = 2;
    asked.length = 0;
    const { seconds, metres } = await askRoadServer(root, positions, AbortSignal.timeout(10_000));
    expect(asked).toHaveLength(9 + 2);
    for (const [i, j] of [
      [0, 119],
      [60, 3],
      [51, 49],
      [7, 7],
    ] as const) {
      const [a, b] = [positions[i]!, positions[j]!];
      const should = drive([a.longitude, a.latitude], [b.longitude, b.latitude]);
      expect(seconds[i * 120 + j]).toBeCloseTo(should, 6);
      expect(metres[i * 120 + j]).toBeCloseTo(should * 10, 5);
    }
  });

  it('gives up with its reason when it keeps failing or answers nonsense', async () => {
    failNext = 3;
    const two = [
      { latitude: 41, longitude: -94 },
      { latitude: 41.1, longitude: -94 },
    ];
    await expect(askRoadServer(root, two, AbortSignal.timeout(5000))).rejects.toThrow(/answered 503/);
  });

  it('tells the drives of a plan, and is asked once for the same places', async () => {
    asked.length = 0;
    const first = await plan();
    expect(first.row.warning).toBeNull();
    expect(first.snapshot.drives!.places).toHaveLength(5);
    expect(checkPlan(first.snapshot, first.plan)).toEqual([]);
    const [route] = first.plan.routes;
    const visit = first.plan.visits.find((each) => each.id === route!.visitIds[0])!;
    const site = first.snapshot.sites.find((each) => each.id === visit.siteId)!;
    const technician = first.snapshot.technicians.find((each) => each.id === route!.technicianId)!;
    const seconds = drive([technician.longitude, technician.latitude], [site.longitude, site.latitude]);
    expect(visit.driveMinutes).toBe(Math.ceil(seconds / 60));
    await plan();
    expect(asked).toHaveLength(1);
  });

  it('does not stop planning when it is away: drives are estimated, and the run says so', async () => {
    await database.store.inShop(shopId, (tx) => tx.driveTable.deleteMany());
    failNext = 1000;
    const { row, snapshot, plan: without } = await plan();
    expect(row.warning).toMatch(/gave no answer: drive times were estimated/);
    expect(snapshot.drives).toBeUndefined();
    expect(checkPlan(snapshot, without)).toEqual([]);
  });
});
