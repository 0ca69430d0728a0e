/** Life exponent: 3 for ball bearings, 10/3 for roller bearings. */
export const BALL = 3;
export const ROLLER = 10 / 3;

/**
 * Basic rating life in million revolutions, reached by 90 % of bearings: L10 = (C/P)^p.
 *
 * @param ratingN  C, basic dynamic load rating, newtons (any unit, the same as the load's)
 * @param loadN    P, equivalent dynamic load
 * @source ISO 281 (its own text not seen); the same formula in bearing makers' stored pages
 */
export function ratingLife(ratingN: number, loadN: number, exponent = BALL): number {
  return (ratingN / loadN) ** exponent;
}

/** L10h = 10⁶/(60 n) · L10, hours at n revolutions a minute. */
export function ratingLifeHours(millionRevolutions: number, rpm: number): number {
  return (millionRevolutions * 1e6) / (60 * rpm);
}

/** Rating needed for a life: C = P (60 n L10h/10⁶)^(1/p). */
export function requiredRating(loadN: number, rpm: number, hours: number, exponent = BALL): number {
  return loadN * ((60 * rpm * hours) / 1e6) ** (1 / exponent);
}

/**
 * Rating needed for a multiple x of rated life at a reliability, after a three-parameter Weibull life of bearings:
 * C = F (x/(x₀ + (θ − x₀)(ln 1/R)^(1/b)))^(1/p).
 *
 * @source Budynas & Nisbett, Shigley's Mechanical Engineering Design, solutions 11-1 to 11-3
 */
export function requiredRatingAt(
  load: number,
  lifeMultiple: number,
  reliability: number,
  exponent = BALL,
  weibull = MAKER_WEIBULL,
): number {
  const { x0, spread, slope } = weibull;
  return load * (lifeMultiple / (x0 + spread * Math.log(1 / reliability) ** (1 / slope))) ** (1 / exponent);
}

/** Reliability that a bearing of a given rating has at that load and life; the inverse of `requiredRatingAt`. */
export function reliabilityOfRating(
  rating: number,
  load: number,
  lifeMultiple: number,
  exponent = BALL,
  weibull = MAKER_WEIBULL,
): number {
  const { x0, spread, slope } = weibull;
  const x = lifeMultiple * (load / rating) ** exponent;
  return Math.exp(-((Math.max(0, x - x0) / spread) ** slope));
}

/** Multiples of rated life: guaranteed part, spread θ − x₀, slope. */
export const MAKER_WEIBULL = { x0: 0.02, spread: 4.439, slope: 1.483 } as const;

/** One load that does as much harm as a mix: Pm = (Σ qᵢ nᵢ Pᵢ^p / Σ qᵢ nᵢ)^(1/p). */
export function meanLoad(
  parts: readonly { readonly share: number; readonly rpm: number; readonly loadN: number }[],
  exponent = BALL,
): number {
  const turns = parts.reduce((sum, each) => sum + each.share * each.rpm, 0);
  return (
    (parts.reduce((sum, each) => sum + each.share * each.rpm * each.loadN ** exponent, 0) / turns) ** (1 / exponent)
  );
}

/**
 * Life of several bearings taken together, the first failure of any: L = (Σ Lᵢ^−e)^(−1/e), e = 1.5; three equal ones
 * live 0.48 of one.
 *
 * @source the exponent that ISO 281's reliability factors imply; 10/9 is also seen for ball bearings (from memory)
 */
export function systemLife(lives: readonly number[], exponent = 1.5): number {
  return lives.reduce((sum, each) => sum + each ** -exponent, 0) ** (-1 / exponent);
}
