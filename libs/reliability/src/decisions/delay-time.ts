import { findRoot } from '../numeric/root.js';

/**
 * Delay-time model: defects arise at `defectRate` per hour and fail after an exponential delay with rate `delayRate`
 * unless an inspection, every T hours, finds them first. Inspection is taken as perfect.
 *
 * @source Christer & Waller 1984; Wang, Delay Time Modelling (text read, no numbers printed); figures recomputed
 */
export interface DelayTime {
  readonly defectRate: number;
  readonly delayRate: number;
}

/** Share of defects that fail before an inspection sees them: b(T) = 1 − (1 − e^(−aT))/(aT). */
export function shareFailing(delayRate: number, interval: number): number {
  const x = delayRate * interval;
  return x < 1e-8 ? x / 2 : 1 + Math.expm1(-x) / x;
}

/** Share of time down: (k T b db + di)/(T + di), with hours down per failure and per inspection. */
export function downtimeRate(model: DelayTime, perFailure: number, perInspection: number, interval: number): number {
  const b = shareFailing(model.delayRate, interval);
  return (model.defectRate * interval * b * perFailure + perInspection) / (interval + perInspection);
}

export interface InspectionCosts {
  readonly failure: number;
  /** Repair of a defect found in time. */
  readonly found: number;
  readonly inspection: number;
}

/** Cost per hour: (k T (b cb + (1 − b) cr) + ci)/T. */
export function inspectionCostRate(model: DelayTime, costs: InspectionCosts, interval: number): number {
  const b = shareFailing(model.delayRate, interval);
  return (model.defectRate * interval * (b * costs.failure + (1 - b) * costs.found) + costs.inspection) / interval;
}

export interface BestInspection {
  /** null: inspecting never pays. */
  readonly interval: number | null;
  readonly rate: number;
}

export function bestByDowntime(model: DelayTime, perFailure: number, perInspection: number): BestInspection {
  return least((t) => downtimeRate(model, perFailure, perInspection, t), 1 / model.delayRate);
}

export function bestByCost(model: DelayTime, costs: InspectionCosts): BestInspection {
  return least((t) => inspectionCostRate(model, costs, t), 1 / model.delayRate);
}

/** Least of a smooth rate: coarse scan over ages around the mean delay, then the root of its slope. */
function least(rate: (interval: number) => number, meanDelay: number): BestInspection {
  const at = (i: number) => meanDelay * 10 ** ((i - 60) / 20);
  let best = 0;
  for (let i = 1; i <= 120; i++) if (rate(at(i)) < rate(at(best))) best = i;
  if (best === 0 || best === 120) return { interval: null, rate: rate(at(120)) };
  const slope = (t: number) => {
    const h = t * 1e-4;
    return (rate(t - 2 * h) - 8 * rate(t - h) + 8 * rate(t + h) - rate(t + 2 * h)) / (12 * h);
  };
  const interval = findRoot(slope, at(best - 1), at(best + 1)) ?? at(best);
  return { interval, rate: rate(interval) };
}
