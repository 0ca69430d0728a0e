import { until } from './api-client.js';
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
  const plan = await manager.post('/v1/plan-runs', { weekOf: WEEK, iterations: 2000 });
  for (const path of [`forecast-runs/${forecast.body.id}`, `plan-runs/${plan.body.id}`])
    await until(
      () => manager.get(`/v1/${path}`),
      ({ body }) => body.status === 'done',
    );
}
