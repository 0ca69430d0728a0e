import { fitExact, fitWeibull, type WeibullFit } from './fit-weibull.js';
import type { CannotTell, LifeSample } from './life.js';
import { FLAT_PRIOR, LifePosterior, type LifePrior } from './life-posterior.js';
import { WeibullLikelihood } from './weibull-likelihood.js';

export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface GroupReport {
  /** Maximum likelihood, or why there is none. */
  readonly fit: WeibullFit | CannotTell;
  /** 90 % (or `level`) intervals of the belief; null when neither lives nor prior bound it. */
  readonly shape: Estimate | null;
  readonly scale: Estimate | null;
  readonly b10: Estimate | null;
  readonly belief: LifePosterior | null;
}

/**
 * One group's life with the intervals we report: from the belief of `LifePosterior`. Without a prior these are the
 * conditional intervals (exact coverage for complete and failure-censored lives); with one, the stated assumptions count.
 * An interval-censored life counts as failed in the middle of its interval here.
 */
export function reportGroup(sample: LifeSample, prior: LifePrior = FLAT_PRIOR, level = 0.9): GroupReport {
  const likelihood = sample.lives > 0 ? new WeibullLikelihood(atMiddle(sample)) : null;
  const fit =
    likelihood && sample.intervals === 0 && sample.failures > 1 ? fitExact(sample, likelihood) : fitWeibull(sample);
  const isBounded = prior.shape !== null && prior.scale !== null;
  if (!isBounded && !fit.ok) return { fit, shape: null, scale: null, b10: null, belief: null };
  const isFlat = prior.shape === null && prior.scale === null;
  const near = isFlat && fit.ok ? { centre: Math.log(fit.shape), spread: fit.seShape / fit.shape } : undefined;
  const belief = LifePosterior.of(likelihood, prior, near);
  const [pLow, pHigh] = [(1 - level) / 2, (1 + level) / 2];
  const estimate = (at: (p: number) => number, best: number): Estimate => ({
    value: best,
    low: at(pLow),
    high: at(pHigh),
  });
  const shapeAt = (p: number) => belief.quantileOfShape(p);
  const lifeAt = (failed: number) => (p: number) => belief.quantileOfLife(failed, p);
  const scaleShare = -Math.expm1(-1);
  return {
    fit,
    shape: estimate(shapeAt, isFlat && fit.ok ? fit.shape : shapeAt(0.5)),
    scale: estimate(lifeAt(scaleShare), isFlat && fit.ok ? fit.scale : lifeAt(scaleShare)(0.5)),
    b10: estimate(lifeAt(0.1), isFlat && fit.ok ? fit.scale * (-Math.log(0.9)) ** (1 / fit.shape) : lifeAt(0.1)(0.5)),
    belief,
  };
}

function atMiddle(sample: LifeSample): LifeSample {
  if (sample.intervals === 0) return sample;
  const age = sample.age.map((each, i) => (sample.kind[i] === 2 ? (each + sample.failedBy[i]!) / 2 : each));
  return { ...sample, age, failedBy: age, kind: sample.kind.map((each) => (each === 2 ? 1 : each)), intervals: 0 };
}
