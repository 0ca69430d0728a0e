import { type ApiClient, until } from './api-client.js';
import type { TestDatabase } from './database.js';
import type { runningApi } from './running-api.js';
import { createSmallShop, type SmallShop, WEEK } from './small-shop.js';

type Api = Awaited<ReturnType<typeof runningApi>>;

/** The small shop with its forecast and its week planned. */
export async function plannedShop(database: TestDatabase, api: Api): Promise<SmallShop> {
  const shop = await createSmallShop(database.store);
  await planWeek(api);
  return shop;
}

export async function planWeek(api: Api): Promise<void> {
  const manager = await api.signIn('manager');
  const forecast = await manager.post('/v1/forecast-runs', { asOf: '2026-06-07', costFrom: WEEK, costDays: 14 });
  await runPlan(manager);
  await until(
    () => manager.get(`/v1/forecast-runs/${forecast.body.id}`),
    ({ body }) => body.status === 'done',
  );
}

/** Asks for a plan and waits until it stands. @returns the run's id */
export async function runPlan(manager: ApiClient, wanted: object = {}): Promise<string> {
  const asked = await manager.post('/v1/plan-runs', { weekOf: WEEK, iterations: 2000, ...wanted });
  const { body } = await until(
    () => manager.get(`/v1/plan-runs/${asked.body.id}`),
    (seen) => ['done', 'failed'].includes(seen.body.status),
  );
  if (body.status !== 'done') throw new Error(`The plan failed: ${body.error}`);
  return body.id;
}
