import { invert } from '../numeric/linear.js';
import { normalAbove, normalDensity } from '../numeric/normal.js';
import { BETWEEN, type CannotTell, cannotTell, FAILED, type LifeSample, tooLittle } from './life.js';

/** The law of (ln t − x·θ)/σ: smallest extreme value gives a Weibull life, normal a lognormal one. */
export type Law = 'smallest-extreme-value' | 'normal';

export interface LocationScaleFit {
  readonly ok: true;
  /** Intercept μ first, then one coefficient per covariate. */
  readonly coefficients: readonly number[];
  readonly sigma: number;
  /** Of (coefficients…, ln σ); a fixed ln σ has no row. */
  readonly covariance: readonly (readonly number[])[];
  /** Density of t itself. */
  readonly logLikelihood: number;
}

export interface LocationScaleOptions {
  /** One row per sample row, one column per covariate, without the intercept. */
  readonly covariates?: readonly Float64Array[];
  readonly fixedLogSigma?: number;
  /** Holds one coefficient (0 = intercept) at a value, for profiles. */
  readonly fixed?: { readonly index: number; readonly value: number };
}

/**
 * Accelerated failure time model, ln t = θ₀ + x·θ + σ ε, by maximum likelihood: exact, right-censored,
 * interval-censored and left-truncated lives; Newton's method with exact second derivatives and step halving.
 *
 * @source Lawless 2003, ch. 6 (from memory); answers are held against R's survreg and against direct maximisation in
 * tests/published
 */
export function fitLocationScale(
  sample: LifeSample,
  law: Law,
  options: LocationScaleOptions = {},
): LocationScaleFit | CannotTell {
  if (options.fixedLogSigma === undefined) {
    const refusal = tooLittle(sample);
    if (refusal) return refusal;
  }
  const size = 1 + (options.covariates?.length ?? 0);
  const free = Array.from({ length: size + 1 }, (_, i) => i).filter(
    (i) => i !== options.fixed?.index && !(i === size && options.fixedLogSigma !== undefined),
  );
  let at = start(sample, size, options);
  let here = evaluate(sample, law, at, options.covariates);
  for (let i = 0; i < 200; i++) {
    const { score, information } = here;
    const step = solve(
      free.map((a) => free.map((b) => information[a]![b]!)),
      free.map((a) => score[a]!),
    );
    // The whole step is shortened, never turned: a turned one need not lead upward.
    let share = Math.min(1, 3 / Math.max(...step.map(Math.abs)));
    let next = here;
    let moved = at;
    for (let half = 0; half < 40; half++, share /= 2) {
      moved = at.slice();
      free.forEach((a, k) => {
        moved[a] = at[a]! + share * step[k]!;
      });
      next = evaluate(sample, law, moved, options.covariates);
      if (next.logLikelihood >= here.logLikelihood - 1e-12 * Math.abs(here.logLikelihood)) break;
    }
    const change = Math.max(...free.map((a) => Math.abs(moved[a]! - at[a]!)));
    at = moved;
    here = next;
    if (change < 1e-11) break;
    if (Math.abs(at[size]!) > 6) break;
  }
  if (Math.abs(at[size]!) > 6 || at.some((each) => !Number.isFinite(each)) || Math.abs(at[0]!) > 60)
    return cannotTell(
      'one-age',
      'The failures lie at one age, or one group has none at all: no spread of lives can be told from them.',
    );
  const covariance = invert(free.map((a) => free.map((b) => here.information[a]![b]!)));
  if (!covariance)
    return cannotTell('shape-out-of-range', 'The lives do not separate the figures asked for: leave one of them out.');
  return {
    ok: true,
    coefficients: at.slice(0, size),
    sigma: Math.exp(at[size]!),
    covariance,
    logLikelihood: here.logLikelihood,
  };
}

function start(sample: LifeSample, size: number, options: LocationScaleOptions): number[] {
  let [time, failures] = [0, 0];
  for (let i = 0; i < sample.age.length; i++) {
    time += sample.count[i]! * (0.5 * (sample.age[i]! + sample.failedBy[i]!) - sample.entry[i]!);
    if (sample.kind[i] !== 0) failures += sample.count[i]!;
  }
  const at = new Array<number>(size + 1).fill(0);
  at[0] = Math.log(time / Math.max(1, failures));
  at[size] = options.fixedLogSigma ?? Math.log(0.7);
  if (options.fixed) at[options.fixed.index] = options.fixed.value;
  return at;
}

/** Newton's step; where the information is not positive definite, a step along the score instead. */
function solve(information: readonly (readonly number[])[], score: readonly number[]): number[] {
  const inverse = invert(information);
  const step = inverse?.map((row) => row.reduce((sum, each, j) => sum + each * score[j]!, 0));
  if (step?.every(Number.isFinite) && step.reduce((sum, each, j) => sum + each * score[j]!, 0) > 0) return step;
  const size = Math.hypot(...score) || 1;
  return score.map((each) => (0.5 * each) / size);
}

interface Evaluation {
  readonly logLikelihood: number;
  readonly score: readonly number[];
  readonly information: readonly (readonly number[])[];
}

/** ℓ with its first and minus its second derivatives in (θ, τ = ln σ), by the chain rule from z = (ln t − x·θ)/σ. */
function evaluate(
  sample: LifeSample,
  law: Law,
  at: readonly number[],
  covariates: readonly Float64Array[] = [],
): Evaluation {
  const size = at.length - 1;
  const sigma = Math.exp(at[size]!);
  const x = new Array<number>(size).fill(1);
  const score = new Array<number>(size + 1).fill(0);
  const information = Array.from({ length: size + 1 }, () => new Array<number>(size + 1).fill(0));
  let logLikelihood = 0;

  /** Adds a term that depends on one z: its slope d and curvature dd there. */
  const add = (z: number, d: number, dd: number, weight: number) => {
    for (let j = 0; j < size; j++) {
      const zj = -x[j]! / sigma;
      score[j]! += weight * d * zj;
      for (let k = 0; k <= j; k++) information[j]![k]! -= weight * dd * zj * (-x[k]! / sigma);
      information[size]![j]! -= weight * (dd * zj * -z + d * (x[j]! / sigma));
    }
    score[size]! += weight * d * -z;
    information[size]![size]! -= weight * (dd * z * z + d * z);
  };
  /** The cross term of a function of two z. */
  const cross = (z1: number, z2: number, d12: number, weight: number) => {
    for (let j = 0; j < size; j++) {
      for (let k = 0; k <= j; k++) information[j]![k]! -= (weight * d12 * 2 * x[j]! * x[k]!) / (sigma * sigma);
      information[size]![j]! -= (weight * d12 * x[j]! * (z1 + z2)) / sigma;
    }
    information[size]![size]! -= weight * d12 * 2 * z1 * z2;
  };

  for (let i = 0; i < sample.age.length; i++) {
    let location = at[0]!;
    for (let j = 1; j < size; j++) {
      x[j] = covariates[j - 1]![i]!;
      location += at[j]! * x[j]!;
    }
    const weight = sample.count[i]!;
    const z = (Math.log(sample.age[i]!) - location) / sigma;
    if (sample.kind[i] === FAILED) {
      const [f, d, dd] = logDensity(law, z);
      logLikelihood += weight * (f - at[size]! - Math.log(sample.age[i]!));
      score[size]! -= weight;
      add(z, d, dd, weight);
    } else if (sample.kind[i] === BETWEEN) {
      const z2 = (Math.log(sample.failedBy[i]!) - location) / sigma;
      const [s1, f1, g1] = sample.age[i]! > 0 ? tailOf(law, z) : [1, 0, 0];
      const [s2, f2, g2] = tailOf(law, z2);
      const mass = Math.max(1e-300, s1 - s2);
      logLikelihood += weight * Math.log(mass);
      const [a1, a2] = [-f1 / mass, f2 / mass];
      if (sample.age[i]! > 0) add(z, a1, -g1 / mass - a1 * a1, weight);
      add(z2, a2, g2 / mass - a2 * a2, weight);
      if (sample.age[i]! > 0) cross(z, z2, -a1 * a2, weight);
    } else {
      const [s, d, dd] = logSurvival(law, z);
      logLikelihood += weight * s;
      add(z, d, dd, weight);
    }
    if (sample.entry[i]! > 0) {
      const entered = (Math.log(sample.entry[i]!) - location) / sigma;
      const [s, d, dd] = logSurvival(law, entered);
      logLikelihood -= weight * s;
      add(entered, d, dd, -weight);
    }
  }
  for (let j = 0; j <= size; j++) for (let k = j + 1; k <= size; k++) information[j]![k] = information[k]![j]!;
  return { logLikelihood: Number.isNaN(logLikelihood) ? Number.NEGATIVE_INFINITY : logLikelihood, score, information };
}

function logDensity(law: Law, z: number): [number, number, number] {
  if (law === 'smallest-extreme-value') {
    const e = Math.exp(Math.min(700, z));
    return [z - e, 1 - e, -e];
  }
  return [-0.5 * z * z - 0.5 * Math.log(2 * Math.PI), -z, -1];
}

function logSurvival(law: Law, z: number): [number, number, number] {
  if (law === 'smallest-extreme-value') {
    const e = Math.exp(Math.min(700, z));
    return [-e, -e, -e];
  }
  const above = normalAbove(z);
  // Far out the hazard of the normal law is z + 1/z.
  const h = above > 1e-290 ? normalDensity(z) / above : z + 1 / z;
  const logAbove = above > 1e-290 ? Math.log(above) : -0.5 * z * z - Math.log(h * Math.sqrt(2 * Math.PI));
  return [logAbove, -h, -h * (h - z)];
}

/** S(z), f(z) and f'(z). */
function tailOf(law: Law, z: number): [number, number, number] {
  const [logF, slope] = logDensity(law, z);
  const f = Math.exp(logF);
  const s = law === 'smallest-extreme-value' ? Math.exp(-Math.exp(Math.min(700, z))) : normalAbove(z);
  return [s, f, f * slope];
}
