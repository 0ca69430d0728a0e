import { gamma, gammaP, gammaQ, logGamma } from '../numeric/gamma.js';

/**
 * Weibull life: S(t) = exp(−(t/η)^β), t ≥ 0.
 * shape β (no unit): below 1 early failures, 1 chance, above 1 ageing; scale η (hours): age by which 63.2 % have failed.
 *
 * @source definitions; point values are checked in tests/published/weibull-points.test.ts
 */
export interface Weibull {
  readonly shape: number;
  readonly scale: number;
}

export function survival({ shape, scale }: Weibull, age: number): number {
  return age <= 0 ? 1 : Math.exp(-((age / scale) ** shape));
}

export function density(life: Weibull, age: number): number {
  return hazard(life, age) * survival(life, age);
}

/** h(t) = (β/η)(t/η)^(β−1), failures per hour among those still working. */
export function hazard({ shape, scale }: Weibull, age: number): number {
  return (shape / scale) * (age / scale) ** (shape - 1);
}

/** Age by which a share p has failed: η(−ln(1 − p))^(1/β); p = 0.1 is the B10 life. */
export function quantile({ shape, scale }: Weibull, p: number): number {
  return scale * (-Math.log1p(-p)) ** (1 / shape);
}

/** Mean life, ηΓ(1 + 1/β). */
export function mean({ shape, scale }: Weibull): number {
  return scale * gamma(1 + 1 / shape);
}

export function standardDeviation({ shape, scale }: Weibull): number {
  const first = gamma(1 + 1 / shape);
  return scale * Math.sqrt(gamma(1 + 2 / shape) - first * first);
}

/** Chance of working until `age` for a part that works at `survivedTo`: R(t | s) = exp((s/η)^β − (t/η)^β). */
export function conditionalSurvival(life: Weibull, age: number, survivedTo: number): number {
  if (age <= survivedTo) return 1;
  return Math.exp((survivedTo / life.scale) ** life.shape - (age / life.scale) ** life.shape);
}

/** ∫₀^T S(u) du = (η/β) Γ(1/β) P(1/β, (T/η)^β): mean running hours of a part that is taken out at age T. */
export function meanLifeTo({ shape, scale }: Weibull, age: number): number {
  if (age <= 0) return 0;
  return scale * gamma(1 + 1 / shape) * gammaP(1 / shape, (age / scale) ** shape);
}

/** Mean of what is left at age s: ∫ₛ^∞ S(u) du / S(s). */
export function meanResidualLife({ shape, scale }: Weibull, age: number): number {
  const x = (age / scale) ** shape;
  return Math.exp(x + Math.log(scale) + logGamma(1 + 1 / shape)) * gammaQ(1 / shape, x);
}

/** Median of what is left at age s. */
export function medianResidualLife({ shape, scale }: Weibull, age: number): number {
  return scale * ((age / scale) ** shape + Math.LN2) ** (1 / shape) - age;
}
