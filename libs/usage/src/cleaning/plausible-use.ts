/**
 * How hard it is to believe that a machine ran `hours` in `days`.
 * With m = q·days + a (q: high quantile of the machine's daily rate; a: one hard day) and ρ = hours / m,
 *   doubt = 0.3·ρ²  (ρ ≤ 1),  0.3 + 3·(ρ − 1)  (ρ > 1),  ∞ above 24 h a day.
 * Measured like a negative log-likelihood, so that it can be weighed against the price of setting a reading aside.
 *
 * @source own heavy-tailed form, common practice, no source
 */
export function doubtOfUse(hours: number, days: number, use: PlausibleUse): number {
  if (hours > 24 * days + BACKWARD_TOLERANCE) return Number.POSITIVE_INFINITY;
  const rho = Math.max(0, hours) / (use.peakRate * days + use.hardDay);
  return rho <= 1 ? 0.3 * rho * rho : 0.3 + 3 * (rho - 1);
}

/** A meter is read to a tenth and rounded now and then; a smaller step back is no contradiction, hours. */
export const BACKWARD_TOLERANCE = 0.15;

export interface PlausibleUse {
  /** Hours per day that a machine reaches in its busy weeks. */
  readonly peakRate: number;
  /** Hours of one very long day. */
  readonly hardDay: number;
}

/** Number of pairs after which a machine's own rates count as much as its fleet's. */
const FLEET_PAIRS = 5;
const TOP = 0.9;

/** Rates between neighbouring readings, without those that no machine can reach; hours per day. */
export function neighbourRates(moments: readonly number[], hours: readonly number[]): number[] {
  const rates: number[] = [];
  for (let i = 1; i < moments.length; i++) {
    const days = moments[i]! - moments[i - 1]!;
    const grown = hours[i]! - hours[i - 1]!;
    if (days >= 2 && grown >= 0 && grown <= 16 * days) rates.push(grown / days);
  }
  return rates;
}

/** The fleet's peak rate: median over machines of each machine's 90 % quantile; 2 h a day before anything is known. */
export function fleetPeakRate(ratesByMachine: Iterable<readonly number[]>): number {
  const peaks: number[] = [];
  for (const rates of ratesByMachine) if (rates.length >= 3) peaks.push(quantileOf(rates, TOP));
  return peaks.length === 0 ? 2 : Math.max(0.5, quantileOf(peaks, 0.75));
}

/** The machine's own peak rate, drawn toward its fleet's while it has few readings. */
export function plausibleUse(rates: readonly number[], fleetPeak: number): PlausibleUse {
  const own = rates.length === 0 ? fleetPeak : quantileOf(rates, TOP);
  const weight = rates.length / (rates.length + FLEET_PAIRS);
  return { peakRate: Math.min(16, Math.max(0.3, weight * own + (1 - weight) * fleetPeak)), hardDay: 12 };
}

function quantileOf(values: readonly number[], p: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(p * sorted.length))]!;
}
