import { gammaP, gammaQ } from './gamma.js';

export function normalDensity(z: number): number {
  return Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
}

/** Chance that a standard normal is above z, accurate far out. */
export function normalAbove(z: number): number {
  const half = 0.5 * gammaQ(0.5, 0.5 * z * z);
  return z >= 0 ? half : 0.5 + 0.5 * gammaP(0.5, 0.5 * z * z);
}

export function normalCdf(z: number): number {
  return normalAbove(-z);
}

/**
 * z with Φ(z) = p: Acklam's rational approximation (relative error 1e-9, from memory) and two steps of Halley's method.
 */
export function normalQuantile(p: number): number {
  if (p <= 0) return Number.NEGATIVE_INFINITY;
  if (p >= 1) return Number.POSITIVE_INFINITY;
  let z = firstGuess(p);
  for (let i = 0; i < 2; i++) {
    const error = (z < 0 ? normalCdf(z) - p : 1 - p - normalAbove(z)) / normalDensity(z);
    z -= error / (1 + (z * error) / 2);
  }
  return z;
}

const CENTRE_A = [
  -39.69683028665376, 220.9460984245205, -275.9285104469687, 138.357751867269, -30.66479806614716, 2.506628277459239,
];
const CENTRE_B = [-54.47609879822406, 161.5858368580409, -155.6989798598866, 66.80131188771972, -13.28068155288572, 1];
const TAIL_C = [
  -0.007784894002430293, -0.3223964580411365, -2.400758277161838, -2.549732539343734, 4.374664141464968,
  2.938163982698783,
];
const TAIL_D = [0.007784695709041462, 0.3224671290700398, 2.445134137142996, 3.754408661907416, 1];

function firstGuess(p: number): number {
  if (p < 0.02425) return tail(p);
  if (p > 1 - 0.02425) return -tail(1 - p);
  const q = p - 0.5;
  return (q * polynomial(CENTRE_A, q * q)) / polynomial(CENTRE_B, q * q);
}

function tail(p: number): number {
  const q = Math.sqrt(-2 * Math.log(p));
  return polynomial(TAIL_C, q) / polynomial(TAIL_D, q);
}

function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduce((sum, c) => sum * x + c, 0);
}
