import type { Weibull } from '../life/weibull.js';

export interface BlockReplacement {
  /** null: β ≤ 1, minimal repair does not grow, never replace. */
  readonly interval: number | null;
  readonly costRate: number | null;
}

/** Cost per hour of replacing every T hours and repairing minimally between: [cp + cm (T/η)^β]/T. */
export function blockCostRate(life: Weibull, planned: number, minimalRepair: number, interval: number): number {
  return (planned + minimalRepair * (interval / life.scale) ** life.shape) / interval;
}

/**
 * T* = η (cp/(cm(β − 1)))^(1/β), C* = β cp/((β − 1) T*).
 *
 * @source Barlow & Hunter 1960 (from memory); checked in tests/published/replacement-policies.test.ts
 */
export function bestBlock(life: Weibull, planned: number, minimalRepair: number): BlockReplacement {
  const { shape, scale } = life;
  if (shape <= 1 || minimalRepair <= 0) return { interval: null, costRate: null };
  const interval = scale * (planned / (minimalRepair * (shape - 1))) ** (1 / shape);
  return { interval, costRate: (shape * planned) / ((shape - 1) * interval) };
}
