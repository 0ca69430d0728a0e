/** Bins of the seasonal shape: a year in 52 equal parts of 7.02 days. */
export const SEASON_BINS = 52;

/** Moving about in the dormant season, before data say that there is none. Own assumption, no source. */
const IDLE = 0.02;

/**
 * Mowing activity through the year before any season has been seen, mean 1 over the year:
 *   s(x) ∝ max(0.02, a + cos 2π(x − x₀)),  a = clamp((50 − |latitude|)/25, −0.2, 3)
 * with x₀ = 15 July north and 14 January south of the equator: flat in the tropics, about seven months at 40°.
 *
 * @param latitude degrees; null is taken as 40° north
 * @returns one value per bin
 * @source own assumption (warmth follows latitude), no source; replaced by data as soon as a year has been seen
 */
export function seasonPrior(latitude: number | null): Float64Array<ArrayBuffer> {
  const degrees = latitude ?? 40;
  const breadth = Math.min(3, Math.max(-0.2, (50 - Math.abs(degrees)) / 25));
  const peak = degrees >= 0 ? 195 / 365.2425 : 13 / 365.2425;
  const shape = new Float64Array(SEASON_BINS);
  let sum = 0;
  for (let bin = 0; bin < SEASON_BINS; bin++) {
    const x = (bin + 0.5) / SEASON_BINS;
    shape[bin] = Math.max(IDLE, breadth + Math.cos(2 * Math.PI * (x - peak)));
    sum += shape[bin]!;
  }
  return shape.map((value) => (value * SEASON_BINS) / sum);
}
