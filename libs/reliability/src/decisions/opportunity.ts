import { mean, meanLifeTo, survival, type Weibull } from '../life/weibull.js';
import { bestAge, costRate, type ReplacementCosts } from './age-replacement.js';

export interface OpportunityThreshold {
  /** While the machine is open anyway, replace parts older than this; null = leave them. */
  readonly age: number | null;
  /** What replacing at the present age would gain (positive) or lose, per age of the curve. */
  readonly sentence: string;
}

/**
 * Age from which a part is worth replacing while its place is open anyway, so that a replacement costs only
 * `planned − shared` now. Against the best policy without opportunities (cost rate g, age T*), a part of age a left in
 * place costs until its own end
 *   keep(a) = [cp S(T*|a) + cf (1 − S(T*|a))] − g · ∫ₐ^T* S(u|a) du,
 * the relative value of a part of that age; a new one is worth 0. Replacing now pays when planned − shared < keep(a).
 *
 * @source renewal reward argument (relative values of a semi-Markov decision process), own derivation
 */
export function opportunityThreshold(life: Weibull, costs: ReplacementCosts, shared: number): OpportunityThreshold {
  const now = Math.max(0, costs.planned - shared);
  const best = bestAge(life, costs);
  const g = best.costRate;
  const end = best.age ?? life.scale * 30 ** (1 / life.shape);
  const keep = (age: number) => {
    const s = survival(life, age);
    const endGiven = best.age === null ? 0 : survival(life, end) / s;
    const hours = ((best.age === null ? mean(life) : meanLifeTo(life, end)) - meanLifeTo(life, age)) / s;
    return costs.planned * endGiven + costs.failed * (1 - endGiven) - g * hours;
  };
  if (life.shape <= 1)
    return {
      age: null,
      sentence: 'These parts do not age: replacing a working one gains nothing, even when it is open.',
    };
  const steps = 400;
  for (let i = 0; i <= steps; i++) {
    const age = (end * i) / steps;
    if (survival(life, age) < 1e-9) break;
    if (keep(age) >= now)
      return {
        age,
        sentence: `While it is open anyway, replace parts older than ${Math.round(age)} h.`,
      };
  }
  return { age: null, sentence: 'Opening it anyway saves too little: leave working parts in place.' };
}

/** Extra cost rate of a policy against the best one, share of the best. */
export function costAboveBest(truth: Weibull, costs: ReplacementCosts, age: number | null): number {
  const best = bestAge(truth, costs).costRate;
  const rate = age === null ? costs.failed / mean(truth) : costRate(truth, costs, age);
  return rate / best - 1;
}
