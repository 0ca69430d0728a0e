import { COVARIATES, type WeatherSeries } from './weather-series.js';

/** Days after which what is special about the present growth has faded to 1/e. Own choice. */
const FADES_DAYS = 15;
/** Weather moves hours by a factor of e to the power of this at most. Own choice. */
const STRONGEST = 1.2;

/** Σ β_k x_k on a day, over the first `count` covariates, kept within bounds. */
export function strengthOn(
  series: WeatherSeries,
  coefficients: readonly number[],
  day: number,
  count = COVARIATES,
): number {
  let sum = 0;
  for (let k = 0; k < count; k++) sum += coefficients[k]! * series.value(day, k);
  return Math.min(STRONGEST, Math.max(-STRONGEST, sum));
}

/** How the hours of a climate answer to its weather: factor on the season's rate, 1 when the weather is as usual. */
export class WeatherEffect {
  constructor(
    readonly series: WeatherSeries,
    readonly coefficients: readonly number[],
  ) {}

  /** exp(Σ β_k x_k) on an observed day. */
  factor(day: number): number {
    return Math.exp(strengthOn(this.series, this.coefficients, day));
  }

  /**
   * Factor foreseen for a day when the weather is known up to `knownUntil` only: what is special fades,
   * exp(Σ β_k x_k · e^(−days since/15)); rain on the day itself cannot be foreseen.
   */
  foreseen(day: number, knownUntil: number): number {
    const known = Math.min(knownUntil, this.series.to);
    if (day <= known) return this.factor(day);
    const fade = Math.exp(-(day - known) / FADES_DAYS);
    return Math.exp(fade * strengthOn(this.series, this.coefficients, known, COVARIATES - 1));
  }
}
