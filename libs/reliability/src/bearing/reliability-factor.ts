/** ISO 281:2007, reliability % → a1. */
const TABLE: readonly (readonly [reliability: number, a1: number])[] = [
  [90, 1],
  [95, 0.64],
  [96, 0.55],
  [97, 0.47],
  [98, 0.37],
  [99, 0.25],
  [99.2, 0.22],
  [99.4, 0.19],
  [99.6, 0.16],
  [99.8, 0.12],
  [99.9, 0.093],
  [99.92, 0.087],
  [99.94, 0.08],
  [99.95, 0.077],
];

/** Life that a share of bearings reaches, as a part of L10: table value where there is one, else the formula behind it. */
export function reliabilityFactor(percent: number): number {
  return TABLE.find(([reliability]) => reliability === percent)?.[1] ?? reliabilityFactorFormula(percent);
}

/**
 * a1 = 0.05 + 0.95 (ln(1/R)/ln(1/0.9))^(1/1.5): every entry of the 2007 table is this, rounded.
 *
 * @source recomputed against the table (tests/published/iso-281-bearing-life.test.ts)
 */
export function reliabilityFactorFormula(percent: number): number {
  return 0.05 + 0.95 * relativeLife(percent);
}

/** The 1990 edition's factor: the Weibull law with slope 1.5 and no guaranteed life. */
export function relativeLife(percent: number): number {
  return (Math.log(100 / percent) / Math.log(1 / 0.9)) ** (1 / 1.5);
}
