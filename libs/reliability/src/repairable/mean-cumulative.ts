/** Recurring events of one machine between the ages it was watched. */
export interface MachineHistory {
  readonly id: string;
  /** Age at which watching began; 0 = new. */
  readonly from?: number;
  readonly to: number;
  /** `amount`: cost of the event; 1 counts events. */
  readonly events: readonly { readonly age: number; readonly amount: number }[];
}

export interface CumulativeStep {
  readonly age: number;
  readonly atRisk: number;
  /** Mean amount per machine up to and including this age. */
  readonly mean: number;
  /** Robust standard error (each machine's own deviations summed). */
  readonly se: number;
  /** The same with sample variance, n − 1. */
  readonly sampleSe: number;
}

/**
 * Mean cumulative function: at each event age the mean jumps by (sum of amounts)/(machines watched at that age); a
 * machine whose watching ends at an age still counts there. Several events of one machine at one age are one sum.
 *
 * Robust variance: Σ_machines (Σ_ages (own amount − mean)/at risk)²; with sample variance each age's spread is divided
 * by n − 1 instead of n, covariances likewise over the machines at risk at the later age.
 *
 * @source Nelson 2003; robust form Lawless & Nadeau 1995 (from memory); checked in tests/published/repairable-machines.test.ts
 */
export function meanCumulative(machines: readonly MachineHistory[]): CumulativeStep[] {
  const ages = [...new Set(machines.flatMap((each) => each.events.map((event) => event.age)))].sort((a, b) => a - b);
  const amounts = machines.map((each) => {
    const at = new Map<number, number>();
    for (const { age, amount } of each.events) at.set(age, (at.get(age) ?? 0) + amount);
    return at;
  });
  const deviation = new Float64Array(machines.length);
  const steps: CumulativeStep[] = [];
  let [mean, sampleVariance] = [0, 0];
  for (const age of ages) {
    const watched = machines.map((each) => age <= each.to && age > (each.from ?? 0));
    const atRisk = watched.filter(Boolean).length;
    if (atRisk === 0) continue;
    const own = Float64Array.from(machines, (_, i) => (watched[i] ? (amounts[i]!.get(age) ?? 0) : 0));
    const step = own.reduce((sum, each) => sum + each, 0) / atRisk;
    mean += step;
    let [spread, cross] = [0, 0];
    for (let i = 0; i < machines.length; i++) {
      if (!watched[i]) continue;
      const jump = own[i]! - step;
      spread += jump * jump;
      // What this machine has deviated so far, each earlier jump over those at risk then: covariance with all of them.
      cross += jump * deviation[i]!;
      deviation[i]! += jump / atRisk;
    }
    if (atRisk > 1) sampleVariance += (spread / atRisk + 2 * cross) / (atRisk - 1);
    const robust = deviation.reduce((sum, each) => sum + each * each, 0);
    steps.push({ age, atRisk, mean, se: Math.sqrt(robust), sampleSe: Math.sqrt(Math.max(0, sampleVariance)) });
  }
  return steps;
}

/** Value of the step function at an age. */
export function meanCumulativeAt(steps: readonly CumulativeStep[], age: number): number {
  let value = 0;
  for (const step of steps) {
    if (step.age > age) break;
    value = step.mean;
  }
  return value;
}
