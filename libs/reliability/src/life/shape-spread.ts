/** Peak of a concave-ish log weight over ln β by golden section, and its width from the curvature there. */
export function bestLogShapeSpread(
  logWeight: (s: number) => number,
  low: number,
  high: number,
): { centre: number; spread: number } {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [low, high];
  let x1 = b - ratio * (b - a);
  let x2 = a + ratio * (b - a);
  let [f1, f2] = [logWeight(x1), logWeight(x2)];
  for (let i = 0; i < 16; i++) {
    if (f1 > f2) {
      [b, x2, f2] = [x2, x1, f1];
      x1 = b - ratio * (b - a);
      f1 = logWeight(x1);
    } else {
      [a, x1, f1] = [x1, x2, f2];
      x2 = a + ratio * (b - a);
      f2 = logWeight(x2);
    }
  }
  const centre = (a + b) / 2;
  const h = 0.02;
  const curvature = (2 * logWeight(centre) - logWeight(centre - h) - logWeight(centre + h)) / (h * h);
  return { centre, spread: curvature > 0.3 ? Math.min(1.2, 1 / Math.sqrt(curvature)) : 1.2 };
}
