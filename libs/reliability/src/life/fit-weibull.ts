import { chiSquareQuantile } from '../numeric/gamma.js';
import { normalQuantile } from '../numeric/normal.js';
import { findRootOutward } from '../numeric/root.js';
import { type CannotTell, cannotTell, type LifeSample, tooLittle } from './life.js';
import { fitLocationScale } from './location-scale.js';
import { quantile, type Weibull } from './weibull.js';
import { WeibullLikelihood } from './weibull-likelihood.js';

/** Shapes outside this range are no property of a part but of too few, or equal, ages. */
export const SHAPE_RANGE = [0.05, 100] as const;

export interface Interval {
  readonly low: number;
  /** null: the data set no upper bound. */
  readonly high: number | null;
}

export interface WeibullFit extends Weibull {
  readonly ok: true;
  readonly lives: number;
  readonly failures: number;
  /** Delta method from the observed information in (μ = ln η, ln σ), σ = 1/β. */
  readonly seShape: number;
  readonly seScale: number;
  /** Variance of μ, covariance with ln σ, variance of ln σ. */
  readonly variance: readonly [number, number, number];
  /** Density of t itself. */
  readonly logLikelihood: number;
}

/**
 * Maximum likelihood fit of a Weibull life. Exact, right-censored and left-truncated lives: Newton's method on the
 * profile likelihood of the shape; with interval-censored lives the general location-scale fit.
 *
 * @source profile score r/β + Σ_f ln t − r Σ w x^β ln x / Σ w x^β = 0 (Lawless 2003, from memory); figures are checked
 * against R's survreg in tests/published/weibull-fits.test.ts
 */
export function fitWeibull(sample: LifeSample): WeibullFit | CannotTell {
  const refusal = tooLittle(sample);
  if (refusal) return refusal;
  return sample.intervals > 0 ? fitWithIntervals(sample) : fitExact(sample, new WeibullLikelihood(sample));
}

export function fitExact(sample: LifeSample, likelihood: WeibullLikelihood): WeibullFit | CannotTell {
  const shape = bestShape(likelihood);
  if (shape === null) return equalAges();
  const scale = likelihood.bestScale(shape);
  const r = likelihood.failures;
  const [, s1, s2] = likelihood.moments(shape, scale);
  // Observed information in (μ, ln σ), with z = β ln(x/η).
  const a = shape * shape * r;
  const b = shape * (shape * s1);
  const c = shape * s1 + shape * shape * s2 - shape * likelihood.sumLogAt(scale);
  const determinant = a * c - b * b;
  const variance = [c / determinant, -b / determinant, a / determinant] as const;
  return {
    ok: true,
    shape,
    scale,
    lives: sample.lives,
    failures: r,
    seShape: shape * Math.sqrt(variance[2]),
    seScale: scale * Math.sqrt(variance[0]),
    variance,
    logLikelihood: likelihood.at(shape, scale),
  };
}

/** Root of the profile score in ln β: Newton, kept between bounds that close in; null when it runs out of range. */
function bestShape(likelihood: WeibullLikelihood): number | null {
  let [low, high] = [Math.log(SHAPE_RANGE[0]), Math.log(SHAPE_RANGE[1])];
  const r = likelihood.failures;
  let x = Math.log(1.5);
  for (let i = 0; i < 100; i++) {
    const shape = Math.exp(x);
    const [s0, s1, s2] = likelihood.moments(shape, likelihood.unit);
    const m = s1 / s0;
    const score = r + shape * (likelihood.sumLog - r * m); // β · score
    if (score > 0) low = x;
    else high = x;
    const slope = shape * (likelihood.sumLog - r * m) - r * shape * shape * (s2 / s0 - m * m);
    let next = x - score / slope;
    if (!(next > low && next < high)) next = (low + high) / 2;
    const isClose = Math.abs(next - x) < 1e-13;
    x = next;
    if (isClose) break;
  }
  const shape = Math.exp(x);
  return shape < SHAPE_RANGE[0] * 1.01 || shape > SHAPE_RANGE[1] * 0.99 ? null : shape;
}

function fitWithIntervals(sample: LifeSample): WeibullFit | CannotTell {
  const fit = fitLocationScale(sample, 'smallest-extreme-value');
  if (!fit.ok) return fit;
  const shape = 1 / fit.sigma;
  const scale = Math.exp(fit.coefficients[0]!);
  const variance = [fit.covariance[0]![0]!, fit.covariance[0]![1]!, fit.covariance[1]![1]!] as const;
  return {
    ok: true,
    shape,
    scale,
    lives: sample.lives,
    failures: sample.failures,
    seShape: shape * Math.sqrt(variance[2]),
    seScale: scale * Math.sqrt(variance[0]),
    variance,
    logLikelihood: fit.logLikelihood,
  };
}

function equalAges(): CannotTell {
  return cannotTell(
    'one-age',
    'All failures lie at one age, or so near to it that no spread of lives can be told: a shape has to be assumed.',
  );
}

/** Standard error of the logarithm of the age by which a share p has failed. */
export function seLogQuantile(fit: WeibullFit, p: number): number {
  const k = Math.log(-Math.log1p(-p)) / fit.shape;
  const [mu, cov, logSigma] = fit.variance;
  return Math.sqrt(mu + 2 * k * cov + k * k * logSigma);
}

/** Normal approximation on the logarithm, two-sided. */
export function normalInterval(estimate: number, seLog: number, level: number): Interval {
  const z = normalQuantile((1 + level) / 2);
  return { low: estimate * Math.exp(-z * seLog), high: estimate * Math.exp(z * seLog) };
}

/** Likelihood-ratio interval of the shape: where 2(ℓ̂ − ℓ_profile) is within the χ²(1) quantile. */
export function profileShapeInterval(sample: LifeSample, fit: WeibullFit, level: number): Interval {
  const drop = chiSquareQuantile(level, 1) / 2;
  const profile = shapeProfile(sample);
  const inside = (logShape: number) => profile(Math.exp(logShape)) - (fit.logLikelihood - drop);
  return outward(inside, Math.log(fit.shape), fit.seShape / fit.shape);
}

function shapeProfile(sample: LifeSample): (shape: number) => number {
  if (sample.intervals === 0) {
    const likelihood = new WeibullLikelihood(sample);
    return (shape) => likelihood.profileShape(shape);
  }
  return (shape) => {
    const fit = fitLocationScale(sample, 'smallest-extreme-value', { fixedLogSigma: -Math.log(shape) });
    return fit.ok ? fit.logLikelihood : Number.NEGATIVE_INFINITY;
  };
}

/**
 * Likelihood-ratio interval of the age by which a share p has failed; p = 1 − 1/e is the scale.
 * In terms of that age x: ℓ = r ln k + r ln β − Σ_f ln t + β Σ_f ln(t/x) − k Σ w (t/x)^β, k = −ln(1 − p).
 * Interval-censored lives: normal approximation on the logarithm instead.
 */
export function profileQuantileInterval(sample: LifeSample, fit: WeibullFit, p: number, level: number): Interval {
  const estimate = quantile(fit, p);
  const se = seLogQuantile(fit, p);
  if (sample.intervals > 0) return normalInterval(estimate, se, level);
  const likelihood = new WeibullLikelihood(sample);
  const k = -Math.log1p(-p);
  const drop = chiSquareQuantile(level, 1) / 2;
  const inside = (logX: number) =>
    profileAtQuantile(likelihood, Math.exp(logX), k, fit.shape) - (fit.logLikelihood - drop);
  return outward(inside, Math.log(estimate), se);
}

export const SCALE_SHARE = -Math.expm1(-1);

function profileAtQuantile(likelihood: WeibullLikelihood, x: number, k: number, start: number): number {
  const r = likelihood.failures;
  const sumLog = likelihood.sumLogAt(x);
  let [low, high] = [Math.log(1e-4), Math.log(1e4)];
  let y = Math.log(start);
  let sums: [number, number, number] = [0, 0, 0];
  for (let i = 0; i < 200; i++) {
    const shape = Math.exp(y);
    sums = likelihood.moments(shape, x);
    const score = r + shape * (sumLog - k * sums[1]);
    if (!Number.isFinite(score)) {
      high = y;
      y = (low + high) / 2;
      continue;
    }
    if (score > 0) low = y;
    else high = y;
    const slope = shape * (sumLog - k * sums[1]) - k * shape * shape * sums[2];
    let next = y - score / slope;
    if (!(next > low && next < high)) next = (low + high) / 2;
    if (Math.abs(next - y) < 1e-12) break;
    y = next;
  }
  const shape = Math.exp(y);
  return r * Math.log(k * shape) + shape * sumLog - (sumLog + r * Math.log(x)) - k * sums[0];
}

function outward(inside: (log: number) => number, centre: number, step: number): Interval {
  const reach = 12;
  const low = findRootOutward(inside, centre, -step, centre - reach);
  const high = findRootOutward(inside, centre, step, centre + reach);
  return { low: low === null ? 0 : Math.exp(low), high: high === null ? null : Math.exp(high) };
}
