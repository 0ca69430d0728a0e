import type { LifeSample } from './life.js';
import { LifePosterior, type LifePrior } from './life-posterior.js';
import { WeibullLikelihood } from './weibull-likelihood.js';

export interface PooledPrior {
  /** For each group's own fit. */
  readonly prior: LifePrior;
  /** Groups and failures that it was learned from. */
  readonly groups: number;
  readonly failures: number;
  readonly sentence: string;
}

/** How far shapes of like groups may differ, standard deviation of ln β. Own choice. */
const SHAPE_SPREAD = 0.15;
/** What a pool may count for in a group, in failures: chosen among these by its evidence. */
const WORTHS = [0.5, 1, 2, 3, 4, 6, 8, 12, 16];
/** Stated preference among them before seeing groups: about four failures, a factor e either way. */
const WORTH_MEDIAN = 4;

/**
 * Partial pooling: like groups (slots, classes, sites) share a shape, and their λ = η^(−β) come from one gamma law
 * whose mean and spread are learned from the groups themselves (empirical Bayes). A group with three failures is then
 * drawn toward the others by what they are worth, and one with two hundred is not.
 *
 * @param stated what is believed before any life of the pool is seen
 * @source gamma–Poisson form with its marginal likelihood, from memory; the bounds are own choices
 */
export function poolGroups(samples: readonly LifeSample[], stated: LifePrior): PooledPrior {
  const groups = samples.filter((each) => each.lives > 0).map((each) => new WeibullLikelihood(each));
  const failures = groups.reduce((sum, each) => sum + each.failures, 0);
  if (groups.length === 0 || failures === 0)
    return {
      prior: stated,
      groups: groups.length,
      failures,
      sentence: 'No failure in the pool: the stated prior alone.',
    };
  const shape = pooledShape(groups, stated);
  const data = groups.map((each) => ({
    failures: each.failures,
    power: each.power(shape.median) * each.unit ** shape.median,
  }));
  const total = data.reduce((sum, each) => sum + each.power, 0);
  const crude = failures / total;
  let best = { worth: WORTHS[0]!, lambda: crude, score: Number.NEGATIVE_INFINITY };
  for (const worth of WORTHS) {
    for (let i = -20; i <= 20; i++) {
      const lambda = crude * Math.exp(i / 10);
      const score =
        data.reduce(
          (sum, each) => sum + LifePosterior.logEvidence(each.failures, each.power, worth / lambda, worth),
          0,
        ) -
        0.5 * Math.log(worth / WORTH_MEDIAN) ** 2;
      if (score > best.score) best = { worth, lambda, score };
    }
  }
  const scale = best.lambda ** (-1 / shape.median);
  // One group alone knows nothing of its like: its own lives must not be counted twice.
  if (groups.length === 1)
    return {
      prior: stated,
      groups: 1,
      failures,
      sentence: 'There is no other group to learn from: the stated prior and the group’s own lives.',
    };
  return {
    prior: { shape, scale: { scale, worthFailures: best.worth } },
    groups: groups.length,
    failures,
    sentence: `Learned from ${failures} ${failures === 1 ? 'failure' : 'failures'} in ${groups.length} groups: shape about ${shape.median.toFixed(2)}, scale about ${Math.round(scale)} h; in each group the pool counts like ${best.worth} ${best.worth === 1 ? 'failure' : 'failures'}.`,
  };
}

/** Shape from all groups, each with a scale of its own, so that mixing good and bad groups does not pass for no ageing. */
function pooledShape(groups: readonly WeibullLikelihood[], stated: LifePrior): { median: number; sdLog: number } {
  const known = groups.filter((each) => each.failures > 0);
  const grid = Array.from({ length: 81 }, (_, i) => Math.log(0.3) + (i / 80) * Math.log(10 / 0.3));
  const logs = grid.map((s) => {
    const shape = Math.exp(s);
    const prior = stated.shape ? -0.5 * ((s - Math.log(stated.shape.median)) / stated.shape.sdLog) ** 2 : 0;
    // The scale of each group integrated out under a flat prior: Γ(r) β^(r−1) e^(β Σ ln t) S^−r.
    return known.reduce(
      (sum, each) => sum + (each.failures - 1) * s + shape * each.sumLog - each.failures * Math.log(each.power(shape)),
      prior,
    );
  });
  const top = Math.max(...logs);
  const weights = logs.map((each) => Math.exp(each - top));
  const sum = weights.reduce((a, b) => a + b, 0);
  const mean = weights.reduce((total, w, i) => total + w * grid[i]!, 0) / sum;
  const variance = weights.reduce((total, w, i) => total + w * (grid[i]! - mean) ** 2, 0) / sum;
  return { median: Math.exp(mean), sdLog: Math.sqrt(variance + SHAPE_SPREAD ** 2) };
}
