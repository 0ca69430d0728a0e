/**
 * Growing degree days of one day: max((Tmax + Tmin)/2 − base, 0); unit of the temperatures. State base and start date
 * with every total.
 *
 * @source mean-temperature method as in turf models; see `tests/published/growing-degree-days.test.ts`
 */
export function growingDegreeDays(highest: number, lowest: number, base: number): number {
  return Math.max((highest + lowest) / 2 - base, 0);
}

/**
 * Growth potential exp(−((T − T₀)/v)²/2), 0..1. Cool-season turf T₀ 20 °C, v 5.5; warm-season 31 °C, v 7.
 *
 * @source growth potential after PACE Turf, from memory
 */
export function growthPotential(celsius: number, turf: 'cool' | 'warm'): number {
  const [optimum, width] = turf === 'cool' ? [20, 5.5] : [31, 7];
  return Math.exp(-(((celsius - optimum) / width) ** 2) / 2);
}
