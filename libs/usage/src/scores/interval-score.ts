/**
 * Interval (Winkler) score of a central interval with coverage 1 − α:
 * (u − l) + (2/α)(l − y) when y < l, + (2/α)(y − u) when y > u; unit of y, small is good.
 *
 * @param coverage 1 − α, e.g. 0.9
 * @source Winkler 1972; Gneiting & Raftery 2007
 */
export function intervalScore(outcome: number, low: number, high: number, coverage: number): number {
  const penalty = 2 / (1 - coverage);
  return high - low + penalty * Math.max(0, low - outcome) + penalty * Math.max(0, outcome - high);
}
