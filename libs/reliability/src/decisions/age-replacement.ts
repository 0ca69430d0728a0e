import type { LifePosterior } from '../life/life-posterior.js';
import { conditionalSurvival, hazard, mean, meanLifeTo, survival, type Weibull } from '../life/weibull.js';
import { findRoot } from '../numeric/root.js';

/** Costs of one replacement, in any one unit of money. */
export interface ReplacementCosts {
  readonly planned: number;
  /** Unplanned, with the harm that a failure does: road call, downtime, a scored housing. */
  readonly failed: number;
}

/**
 * Long-run cost per hour of replacing at age T or at failure, whichever comes first:
 * C(T) = [cp S(T) + cf (1 − S(T))] / ∫₀^T S(u) du.
 *
 * @source Barlow & Hunter 1960; Barlow & Proschan 1965 (from memory); checked in tests/published/replacement-policies.test.ts
 */
export function costRate(life: Weibull, costs: ReplacementCosts, age: number): number {
  const s = survival(life, age);
  return (costs.planned * s + costs.failed * (1 - s)) / meanLifeTo(life, age);
}

/** Cost per hour of waiting for failure, cf / mean life. */
export function runToFailureRate(life: Weibull, costs: ReplacementCosts): number {
  return costs.failed / mean(life);
}

export interface AgeReplacement {
  /** null: waiting for failure is cheapest at any age. */
  readonly age: number | null;
  readonly costRate: number;
}

/**
 * Cheapest replacement age: h(T) ∫₀^T S − F(T) = cp/(cf − cp), the rising hazard's only root. None when β ≤ 1, when a
 * failure costs no more than a planned replacement, or when the optimum lies where hardly any part still lives.
 */
export function bestAge(life: Weibull, costs: ReplacementCosts): AgeReplacement {
  const never = { age: null, costRate: runToFailureRate(life, costs) };
  if (life.shape <= 1 || costs.failed <= costs.planned) return never;
  if (costs.planned <= 0) return never;
  const target = costs.planned / (costs.failed - costs.planned);
  const unit = { shape: life.shape, scale: 1 };
  const gap = (t: number) => hazard(unit, t) * meanLifeTo(unit, t) - (1 - survival(unit, t)) - target;
  // Beyond this age fewer than one part in 10^13 still works.
  const beyond = 30 ** (1 / life.shape);
  const root = findRoot(gap, 1e-9, beyond);
  if (root === null) return never;
  return { age: root * life.scale, costRate: ((costs.failed - costs.planned) * hazard(unit, root)) / life.scale };
}

/** Cost rate and chance of failing before a planned age, for life laws that are not Weibull (survival known). */
export function costRateOf(
  survivalAt: (age: number) => number,
  meanTo: (age: number) => number,
  costs: ReplacementCosts,
  age: number,
): number {
  const s = survivalAt(age);
  return (costs.planned * s + costs.failed * (1 - s)) / meanTo(age);
}

export interface CostRatePoint {
  readonly age: number;
  readonly costRate: number;
  /** 90 % of the belief lies between these. */
  readonly low: number;
  readonly high: number;
}

export interface ReplacementAdvice {
  /** Age with the least expected cost under the belief; null: wait for failure. */
  readonly age: number | null;
  readonly costRate: number;
  /** Where the true optimum lies at 90 %; high null = it may be best never to replace before failure. */
  readonly low: number | null;
  readonly high: number | null;
  /** Chance, under the belief, that replacing before failure saves at least 2 % against waiting. */
  readonly chancePlannedPays: number;
  readonly runToFailure: number;
  readonly current: { readonly age: number; readonly costRate: number; readonly excess: number } | null;
  readonly curve: readonly CostRatePoint[];
}

/**
 * Replacement advice that carries what is not known: the expected cost rate is averaged over the belief, its minimum is
 * the advice, and the optimum of each scenario gives the interval. Averaging protects against the lopsided harm of
 * waiting too long.
 *
 * @param currentAge the age at which the shop replaces now; null = it waits for failure
 */
export function adviseAge(
  belief: LifePosterior,
  costs: ReplacementCosts,
  currentAge: number | null,
): ReplacementAdvice {
  const scenarios = belief.scenarios();
  const total = scenarios.reduce((sum, each) => sum + each.weight, 0);
  const expected = (age: number) =>
    scenarios.reduce((sum, { life, weight }) => sum + weight * costRate(life, costs, age), 0) / total;
  const middle = belief.quantileOfLife(0.5, 0.5);
  const ages = Array.from({ length: 48 }, (_, i) => middle * 0.05 * 80 ** (i / 47));
  const runToFailure =
    scenarios.reduce((sum, { life, weight }) => sum + weight * runToFailureRate(life, costs), 0) / total;
  const rates = ages.map(expected);
  const best = rates.indexOf(Math.min(...rates));
  const age = best >= ages.length - 1 || costs.failed <= costs.planned ? null : refine(expected, ages, best);
  const lowest = age === null ? runToFailure : expected(age);
  const pays = age !== null && lowest < runToFailure;
  const optima = scenarios.map(({ life, weight }) => {
    const { age: at, costRate: rate } = bestAge(life, costs);
    return { at: at ?? Number.POSITIVE_INFINITY, saves: rate < 0.98 * runToFailureRate(life, costs), weight };
  });
  const optimumAt = (p: number) => {
    const value = weightedQuantile(
      optima.map(({ at, weight }) => ({ value: at, weight })),
      p,
    );
    return Number.isFinite(value) ? value : null;
  };
  const currentRate = currentAge === null ? runToFailure : expected(currentAge);
  return {
    age: pays ? age : null,
    costRate: pays ? lowest : runToFailure,
    low: optimumAt(0.05),
    high: optimumAt(0.95),
    chancePlannedPays: optima.reduce((sum, each) => sum + (each.saves ? each.weight : 0), 0) / total,
    runToFailure,
    current:
      currentAge === null
        ? null
        : { age: currentAge, costRate: currentRate, excess: currentRate - (pays ? lowest : runToFailure) },
    curve: ages.map((at, i) => {
      const spread = scenarios.map(({ life, weight }) => ({ value: costRate(life, costs, at), weight }));
      return {
        age: at,
        costRate: rates[i]!,
        low: weightedQuantile(spread, 0.05),
        high: weightedQuantile(spread, 0.95),
      };
    }),
  };
}

function refine(f: (x: number) => number, ages: readonly number[], best: number): number {
  let [a, b] = [Math.log(ages[Math.max(0, best - 1)]!), Math.log(ages[best + 1]!)];
  const ratio = (Math.sqrt(5) - 1) / 2;
  for (let i = 0; i < 18; i++) {
    const x1 = b - ratio * (b - a);
    const x2 = a + ratio * (b - a);
    if (f(Math.exp(x1)) < f(Math.exp(x2))) b = x2;
    else a = x1;
  }
  return Math.exp((a + b) / 2);
}

export function weightedQuantile(values: readonly { value: number; weight: number }[], p: number): number {
  const sorted = values.toSorted((a, b) => a.value - b.value);
  const total = sorted.reduce((sum, each) => sum + each.weight, 0);
  let below = 0;
  for (const { value, weight } of sorted) {
    below += weight;
    if (below >= p * total) return value;
  }
  return sorted[sorted.length - 1]!.value;
}

/** Chance that a part of a given age fails within the hours ahead. */
export function chanceOfFailure(life: Weibull, age: number, hoursAhead: number): number {
  return 1 - conditionalSurvival(life, age + hoursAhead, age);
}
