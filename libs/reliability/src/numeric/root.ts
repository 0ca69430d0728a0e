/**
 * Zero of f between low and high, where f changes sign: Brent's method (inverse quadratic steps, bisection when they
 * do not help). Returns null when f has the same sign at both ends.
 *
 * @source R. P. Brent 1973, from memory
 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance = 1e-13): number | null {
  let [a, b] = [low, high];
  let [fa, fb] = [f(a), f(b)];
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) return null;
  let [c, fc] = [a, fa];
  let last = b - a;
  let step = last;
  for (let i = 0; i < 200; i++) {
    if (fb * fc > 0) {
      [c, fc] = [a, fa];
      step = b - a;
      last = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const near = 2 * Number.EPSILON * Math.abs(b) + (tolerance * Math.max(1e-300, Math.abs(b))) / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= near || fb === 0) return b;
    if (Math.abs(last) >= near && Math.abs(fa) > Math.abs(fb)) {
      const s = fb / fa;
      let p: number;
      let q: number;
      if (a === c) {
        p = 2 * half * s;
        q = 1 - s;
      } else {
        const r = fb / fc;
        const t = fa / fc;
        p = s * (2 * half * t * (t - r) - (b - a) * (r - 1));
        q = (t - 1) * (r - 1) * (s - 1);
      }
      if (p > 0) q = -q;
      else p = -p;
      if (2 * p < Math.min(3 * half * q - Math.abs(near * q), Math.abs(last * q))) {
        last = step;
        step = p / q;
      } else {
        step = half;
        last = half;
      }
    } else {
      step = half;
      last = half;
    }
    [a, fa] = [b, fb];
    b += Math.abs(step) > near ? step : Math.sign(half) * near;
    fb = f(b);
  }
  return b;
}

/** Root of f beyond `from`, stepping outward by a growing factor until the sign changes; null when it never does. */
export function findRootOutward(
  f: (x: number) => number,
  from: number,
  firstStep: number,
  limit: number,
): number | null {
  let inner = from;
  let step = firstStep;
  for (let i = 0; i < 80; i++) {
    const outer = step > 0 ? Math.min(limit, inner + step) : Math.max(limit, inner + step);
    if (f(outer) <= 0) return findRoot(f, inner, outer);
    if (outer === limit) return null;
    inner = outer;
    step *= 1.6;
  }
  return null;
}
