const Z95 = 1.959963984540054;

/**
 * 95 % interval for a coverage of k in n by Wilson's score: how far a measured coverage may be off by chance alone.
 *
 * @source Wilson 1927, from memory
 */
export function wilsonInterval(k: number, n: number): [number, number] {
  const p = k / n;
  const z2 = Z95 * Z95;
  const middle = (p + z2 / (2 * n)) / (1 + z2 / n);
  const half = (Z95 / (1 + z2 / n)) * Math.sqrt((p * (1 - p)) / n + z2 / (4 * n * n));
  return [Math.max(0, middle - half), Math.min(1, middle + half)];
}

/**
 * Exact 95 % interval (Clopper–Pearson): the p at which P(X ≥ k) and P(X ≤ k) are 0.025, found by bisection.
 *
 * @source Clopper & Pearson 1934, from memory
 */
export function clopperPearsonInterval(k: number, n: number): [number, number] {
  const low = k === 0 ? 0 : solve((p) => 1 - atMost(k - 1, n, p), 0.025);
  const high = k === n ? 1 : solve((p) => 1 - atMost(k, n, p), 0.975);
  return [low, high];
}

/** The p at which a rising function reaches the target. */
function solve(rising: (p: number) => number, target: number): number {
  let low = 0;
  let high = 1;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (rising(middle) < target) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** P(X ≤ k) of a binomial variable, terms by recursion on their logarithms. */
function atMost(k: number, n: number, p: number): number {
  if (p <= 0) return 1;
  if (p >= 1) return k >= n ? 1 : 0;
  let log = n * Math.log1p(-p);
  let sum = Math.exp(log);
  for (let i = 1; i <= k; i++) {
    log += Math.log((n - i + 1) / i) + Math.log(p) - Math.log1p(-p);
    sum += Math.exp(log);
  }
  return Math.min(1, sum);
}
