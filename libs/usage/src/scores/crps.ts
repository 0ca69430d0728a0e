/**
 * Continuous ranked probability score of a normal forecast: s[z(2Φ(z) − 1) + 2φ(z) − 1/√π], z = (y − m)/s; unit of y.
 *
 * @source Gneiting & Raftery 2007
 */
export function crpsNormal(outcome: number, mean: number, sd: number): number {
  const z = (outcome - mean) / sd;
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  return sd * (z * (2 * normalProbability(z) - 1) + 2 * density - 1 / Math.sqrt(Math.PI));
}

/** CRPS of an ensemble: mean |x − y| − ½ mean |x − x'|; unit of y. Source: Gneiting & Raftery 2007. */
export function crpsEnsemble(outcome: number, members: readonly number[]): number {
  const n = members.length;
  let near = 0;
  let apart = 0;
  for (const x of members) {
    near += Math.abs(x - outcome);
    for (const other of members) apart += Math.abs(x - other);
  }
  return near / n - apart / (2 * n * n);
}

/**
 * Φ(z) by the series ½ + φ(z)(z + z³/3 + z⁵/15 + …) for |z| < 6; error below 1e-14.
 *
 * @source Abramowitz & Stegun 26.2.11, from memory
 */
export function normalProbability(z: number): number {
  if (z > 6) return 1;
  if (z < -6) return 0;
  let term = z;
  let sum = z;
  for (let n = 3; n < 300 && Math.abs(term) > 1e-17 * Math.abs(sum); n += 2) {
    term *= (z * z) / n;
    sum += term;
  }
  return 0.5 + (sum * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
}
