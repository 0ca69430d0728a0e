import { type CannotTell, type LifeSample, tooLittle } from './life.js';
import { fitLocationScale } from './location-scale.js';

export interface LognormalFit {
  readonly ok: true;
  /** Mean and standard deviation of ln t. */
  readonly mu: number;
  readonly sigma: number;
  readonly seMu: number;
  readonly seSigma: number;
  readonly logLikelihood: number;
}

/** Lognormal life: ln t is normal. Cracks and corrosion often look like it. */
export function fitLognormal(sample: LifeSample): LognormalFit | CannotTell {
  const fit = fitLocationScale(sample, 'normal');
  if (!fit.ok) return fit;
  return {
    ok: true,
    mu: fit.coefficients[0]!,
    sigma: fit.sigma,
    seMu: Math.sqrt(fit.covariance[0]![0]!),
    seSigma: fit.sigma * Math.sqrt(fit.covariance[1]![1]!),
    logLikelihood: fit.logLikelihood,
  };
}

export interface ExponentialFit {
  readonly ok: true;
  /** Mean life: watched hours divided by failures. */
  readonly mean: number;
  readonly seMean: number;
  readonly logLikelihood: number;
}

/** Exponential life: no ageing, a used part is as good as a new one. */
export function fitExponential(sample: LifeSample): ExponentialFit | CannotTell {
  if (sample.failures === 0) return tooLittle(sample)!;
  if (sample.intervals > 0) {
    const fit = fitLocationScale(sample, 'smallest-extreme-value', { fixedLogSigma: 0 });
    if (!fit.ok) return fit;
    const mean = Math.exp(fit.coefficients[0]!);
    return { ok: true, mean, seMean: mean * Math.sqrt(fit.covariance[0]![0]!), logLikelihood: fit.logLikelihood };
  }
  let time = 0;
  for (let i = 0; i < sample.age.length; i++) time += sample.count[i]! * (sample.age[i]! - sample.entry[i]!);
  const r = sample.failures;
  const mean = time / r;
  return { ok: true, mean, seMean: mean / Math.sqrt(r), logLikelihood: -r * Math.log(mean) - r };
}
