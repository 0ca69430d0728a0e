import type { ComponentLife, IntervalProposal, LearnedItem, LifeHistory, MachineRecord } from '@deckround/learning';
import type { PlanningSnapshot, WeekPlan } from '@deckround/planning';
import type { Register } from '@deckround/register';
import type { SharedMeeting } from '@deckround/routing';
import type { DueForecast, UpkeepSnapshot } from '@deckround/upkeep';
import type { BacktestOptions, BacktestRow, UsageSnapshot } from '@deckround/usage';

/** Daily quantiles of lifetime hours, one entry per day from the day after the forecast origin. */
export interface UsageCurve {
  readonly machineId: string;
  readonly lifetimeHoursNow: number;
  readonly hoursPerWeek: number;
  readonly p10: number[];
  readonly p25: number[];
  readonly p50: number[];
  readonly p75: number[];
  readonly p90: number[];
}

export interface ForecastResult {
  readonly due: DueForecast[];
  readonly usage: UsageCurve[];
}

export interface LivesResult {
  readonly lives: readonly ComponentLife[];
  readonly records: readonly MachineRecord[];
}

export interface LearnResult {
  readonly learned: readonly LearnedItem[];
  readonly proposals: readonly IntervalProposal[];
}

export interface PlanProgress {
  readonly iterations: number;
  readonly totalCents: number;
  readonly visits: number;
  readonly items: number;
  readonly leftOut: number;
  readonly mustDoMissing: number;
}

/** What the computing thread is asked. */
export type ComputeTask =
  | { readonly kind: 'forecast'; readonly snapshot: UpkeepSnapshot }
  | { readonly kind: 'backtest'; readonly snapshot: UsageSnapshot; readonly options: BacktestOptions }
  | { readonly kind: 'lives'; readonly register: Register; readonly asOf: string; readonly history: LifeHistory }
  | { readonly kind: 'learn'; readonly register: Register; readonly asOf: string; readonly history: LifeHistory }
  | {
      readonly kind: 'search-beside';
      readonly snapshot: PlanningSnapshot;
      readonly seed: number;
      readonly beside: Beside;
      readonly cancelFlag: SharedArrayBuffer;
    }
  | {
      readonly kind: 'plan';
      readonly snapshot: PlanningSnapshot;
      readonly snapshotHash: string;
      readonly seed: number;
      readonly seconds: number | null;
      readonly iterations: number | null;
      /** Combine routes by set partitioning near the end. */
      readonly combine: boolean;
      /** Where a second search is met; null = one search. */
      readonly beside: Beside | null;
      /** One Int32 in shared memory; anything but 0 asks the search to stop with its best. */
      readonly cancelFlag: SharedArrayBuffer;
    };

/** What two searching threads share. */
export interface Beside {
  readonly meeting: SharedMeeting;
  /** 16 bytes: iterations that both are to take, as Float64; then an Int32 that is 1 once the first thread knows them. */
  readonly planned: SharedArrayBuffer;
}

export type ComputeMessage =
  | { readonly kind: 'forecast-done'; readonly result: ForecastResult }
  | { readonly kind: 'backtest-done'; readonly rows: BacktestRow[] }
  | { readonly kind: 'lives-done'; readonly result: LivesResult }
  | { readonly kind: 'learn-done'; readonly result: LearnResult }
  | { readonly kind: 'plan-progress'; readonly progress: PlanProgress }
  | { readonly kind: 'plan-done'; readonly plan: WeekPlan };
