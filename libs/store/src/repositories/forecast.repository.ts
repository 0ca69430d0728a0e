import type { Tx } from '../store.js';
import { documentsOf } from './document-rows.js';

export interface NewDueForecast {
  readonly machineId: string;
  readonly serviceItemId: string | null;
  readonly stopgapId: string | null;
  readonly code: string;
  readonly slot: string | null;
  readonly title: string;
  /** Days, YYYY-MM-DD. */
  readonly p10: string | null;
  readonly p50: string | null;
  readonly p90: string | null;
  /** One entry per day from the day that costs are counted from. */
  readonly probabilityOverdue: readonly number[];
  readonly timingCostCents: readonly number[];
  readonly deferralCents: number;
  readonly why: object;
}

export interface NewUsageForecast {
  readonly machineId: string;
  readonly lifetimeHoursNow: number;
  readonly hoursPerWeek: number;
  readonly p10: readonly number[];
  readonly p25: readonly number[];
  readonly p50: readonly number[];
  readonly p75: readonly number[];
  readonly p90: readonly number[];
}

/** @param costFrom day that costs are counted from, YYYY-MM-DD */
export async function insertDueForecasts(
  tx: Tx,
  { shopId, runId, costFrom }: { readonly shopId: string; readonly runId: string; readonly costFrom: string },
  rows: readonly NewDueForecast[],
): Promise<void> {
  for (const part of documentsOf(rows)) {
    await tx.$executeRaw`
      insert into due_forecast (shop_id, run_id, machine_id, service_item_id, stopgap_id, code, slot, title, p10, p50, p90,
        cost_from, probability_overdue, timing_cost_cents, deferral_cents, why)
      select ${shopId}::uuid, ${runId}::uuid, "machineId", "serviceItemId", "stopgapId", code, slot, title, p10, p50, p90,
        ${costFrom}::date, "probabilityOverdue", "timingCostCents", "deferralCents", why
      from jsonb_to_recordset(${part}::jsonb) as new (
        "machineId" uuid, "serviceItemId" uuid, "stopgapId" uuid, code text, slot text, title text,
        p10 date, p50 date, p90 date,
        "probabilityOverdue" float8[], "timingCostCents" int[], "deferralCents" int, why jsonb)`;
  }
}

/** @param asOf day of the forecasts, YYYY-MM-DD */
export async function insertUsageForecasts(
  tx: Tx,
  { shopId, asOf }: { readonly shopId: string; readonly asOf: string },
  rows: readonly NewUsageForecast[],
): Promise<void> {
  for (const part of documentsOf(rows)) {
    await tx.$executeRaw`
      insert into usage_forecast (shop_id, machine_id, as_of, lifetime_hours_now, hours_per_week, p10, p25, p50, p75, p90)
      select ${shopId}::uuid, "machineId", ${asOf}::date, "lifetimeHoursNow", "hoursPerWeek", p10, p25, p50, p75, p90
      from jsonb_to_recordset(${part}::jsonb) as new (
        "machineId" uuid, "lifetimeHoursNow" float8, "hoursPerWeek" float8,
        p10 float8[], p25 float8[], p50 float8[], p75 float8[], p90 float8[])`;
  }
}
