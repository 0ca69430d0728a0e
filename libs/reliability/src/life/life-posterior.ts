import { gammaP, gammaQ, gammaQuantile, logGamma } from '../numeric/gamma.js';
import { findRoot } from '../numeric/root.js';
import { bestLogShapeSpread } from './shape-spread.js';
import type { Weibull } from './weibull.js';
import type { WeibullLikelihood } from './weibull-likelihood.js';

/** What is believed before the shop's own lives are looked at. */
export interface LifePrior {
  /** ln β is normal about ln `median` with this standard deviation; null = flat in ln β. */
  readonly shape: { readonly median: number; readonly sdLog: number } | null;
  /** The scale is taken to be near `scale`, as if `worthFailures` failures had shown it; null = flat in ln η. */
  readonly scale: { readonly scale: number; readonly worthFailures: number } | null;
}

/** Flat in (ln η, ln σ): its intervals are the exact conditional ones for complete and failure-censored lives. */
export const FLAT_PRIOR: LifePrior = { shape: null, scale: null };

/** Shapes looked at when nothing else bounds them. */
const LOG_SHAPE_LOW = Math.log(0.1);
const LOG_SHAPE_HIGH = Math.log(30);
const POINTS = 41;

/**
 * Belief about a Weibull life after seeing the lives: a grid over ln β with, for each β, a gamma law for λ = η^(−β).
 *
 * Likelihood for given β: λ^r exp(−λ S(β)), S(β) = Σ w x^β; prior λ | β ~ Gamma(a, rate a η₀^β), a = worthFailures.
 * Then λ | β, lives ~ Gamma(a + r, S + a η₀^β), and the weight of β is its prior times
 *   β^r e^(β Σ_f ln t) · rate^a Γ(a + r)/Γ(a) · (S + rate)^−(a+r).
 * With the flat prior dμ dσ/σ: λ | β ~ Gamma(r, S), weight of ln β ∝ β^(r−1) e^(β Σ_f ln t) S^−r.
 *
 * @source for the flat prior these are the conditional intervals of Lawless 1978 (from memory): their coverage for
 * complete and failure-censored lives is exact at any number of failures, which plain profile likelihood is not at 8;
 * the gamma law is the conjugate one (from memory). Coverage is measured by tests/bench/reliability.mjs
 */
export class LifePosterior {
  /** Grid of shapes with their weights (sum 1). */
  readonly shapes: Float64Array;
  readonly weights: Float64Array;
  /** Parameters of the gamma law of λ for each shape; rate in units of `unit`. */
  readonly gammaShape: number;
  readonly rates: Float64Array;
  readonly unit: number;
  readonly #logShapes: Float64Array;

  private constructor(
    logShapes: Float64Array,
    logWeights: Float64Array,
    gammaShape: number,
    rates: Float64Array,
    unit: number,
  ) {
    const top = logWeights.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
    const weights = logWeights.map((each) => Math.exp(each - top));
    const sum = weights.reduce((a, b) => a + b, 0);
    this.weights = weights.map((each) => each / sum);
    this.#logShapes = logShapes;
    this.shapes = logShapes.map(Math.exp);
    this.gammaShape = gammaShape;
    this.rates = rates;
    this.unit = unit;
  }

  /**
   * @param likelihood of the lives; null when there are none, and then the prior alone speaks
   * @param near       centre and width in ln β where the weight lies, when a fit knows them already
   * @throws RangeError when neither lives (two failures) nor the prior bound the belief
   */
  static of(
    likelihood: WeibullLikelihood | null,
    prior: LifePrior,
    near?: { readonly centre: number; readonly spread: number },
  ): LifePosterior {
    const r = likelihood?.failures ?? 0;
    if ((prior.shape === null && r < 2) || (prior.scale === null && r < 1))
      throw new RangeError('Two failures, or a prior of shape and scale, are needed to say anything about life.');
    const unit = likelihood?.unit ?? prior.scale!.scale;
    const a = prior.scale?.worthFailures ?? 0;
    const total = a + r;
    const logRatio = prior.scale ? Math.log(prior.scale.scale / unit) : 0;
    const sumLog = likelihood?.sumLog ?? 0;
    const power = (shape: number) => likelihood?.power(shape) ?? 0;
    const logWeight = (s: number, rates?: { at: number }) => {
      const shape = Math.exp(s);
      const own = power(shape);
      const rate = prior.scale ? a * Math.exp(shape * logRatio) : 0;
      if (rates) rates.at = own + rate;
      const shapePrior = prior.shape ? -0.5 * ((s - Math.log(prior.shape.median)) / prior.shape.sdLog) ** 2 : 0;
      const flat = prior.scale ? 0 : -s;
      const scalePrior = prior.scale ? a * Math.log(rate) : 0;
      return shapePrior + flat + r * s + shape * sumLog + scalePrior - total * Math.log(own + rate);
    };
    const { centre, spread } = near ?? bestLogShapeSpread(logWeight, LOG_SHAPE_LOW, LOG_SHAPE_HIGH);
    const low = Math.max(LOG_SHAPE_LOW, centre - 6.5 * spread);
    const high = Math.min(LOG_SHAPE_HIGH, centre + 5 * spread);
    const logShapes = Float64Array.from({ length: POINTS }, (_, i) => low + ((high - low) * i) / (POINTS - 1));
    const rates = new Float64Array(POINTS);
    const slot = { at: 0 };
    const logWeights = logShapes.map((s, i) => {
      const weight = logWeight(s, slot);
      rates[i] = slot.at;
      return weight;
    });
    return new LifePosterior(logShapes, logWeights, total, rates, unit);
  }

  /** Age by which a share `failed` of parts has failed, at probability p of the belief; failed = 1 − 1/e: the scale. */
  quantileOfLife(failed: number, p: number): number {
    const k = -Math.log1p(-failed);
    const logUnit = Math.log(this.unit);
    const chanceBelow = (logX: number) => {
      let sum = 0;
      for (let i = 0; i < this.shapes.length; i++) {
        if (this.weights[i]! < 1e-9) continue;
        const lambda = k * Math.exp(-this.shapes[i]! * (logX - logUnit));
        // The age is at most x when λ is at least k x^−β.
        sum += this.weights[i]! * gammaQ(this.gammaShape, lambda * this.rates[i]!);
      }
      return sum - p;
    };
    const heaviest = this.weights.indexOf(this.weights.reduce((a, b) => Math.max(a, b), 0));
    const middle = logUnit + Math.log((k * this.rates[heaviest]!) / this.gammaShape) / this.shapes[heaviest]!;
    let [low, high] = [middle, middle];
    for (let step = 0.2; step < 60 && chanceBelow(low) > 0; step *= 1.8) low -= step;
    for (let step = 0.2; step < 60 && chanceBelow(high) < 0; step *= 1.8) high += step;
    const root = findRoot(chanceBelow, low, high, 1e-9);
    return root === null ? Number.NaN : Math.exp(root);
  }

  quantileOfShape(p: number): number {
    return Math.exp(quantileOnGrid(this.#logShapes, this.weights, p));
  }

  /** Chance that a part works at an age, averaged over the belief. */
  survival(age: number): number {
    let sum = 0;
    for (let i = 0; i < this.shapes.length; i++)
      sum += this.weights[i]! * (1 + (age / this.unit) ** this.shapes[i]! / this.rates[i]!) ** -this.gammaShape;
    return sum;
  }

  /** Chance of working at `age` at probability p of the belief (p = 0.05: pessimistic). */
  quantileOfSurvival(age: number, p: number): number {
    const chanceBelow = (hazardSum: number) => {
      let sum = 0;
      for (let i = 0; i < this.shapes.length; i++)
        sum +=
          this.weights[i]! *
          gammaP(this.gammaShape, (hazardSum / (age / this.unit) ** this.shapes[i]!) * this.rates[i]!);
      return sum;
    };
    // S ≤ s when the cumulative hazard is at least −ln s.
    const root = findRoot((logH) => chanceBelow(Math.exp(logH)) - (1 - p), -40, 12, 1e-9);
    return root === null ? (chanceBelow(1e-17) > 1 - p ? 1 : 0) : Math.exp(-Math.exp(root));
  }

  /** Equally spaced representatives of the belief with their weights, `perShape` scales for each shape. */
  scenarios(perShape = 7): { life: Weibull; weight: number }[] {
    const quantiles = Array.from({ length: perShape }, (_, j) => gammaQuantile(this.gammaShape, (j + 0.5) / perShape));
    return Array.from(this.shapes).flatMap((shape, i) =>
      this.weights[i]! < 1e-6
        ? []
        : quantiles.map((g) => ({
            life: { shape, scale: this.unit * (g / this.rates[i]!) ** (-1 / shape) },
            weight: this.weights[i]! / perShape,
          })),
    );
  }

  /** Log of the chance of the lives under a prior, up to what does not depend on the prior's worth or scale. */
  static logEvidence(failures: number, power: number, rate: number, worth: number): number {
    return (
      worth * Math.log(rate) +
      logGamma(worth + failures) -
      logGamma(worth) -
      (worth + failures) * Math.log(power + rate)
    );
  }
}

/** Quantile of a density given on an even grid: cumulative by the trapezium rule, linear between points. */
function quantileOnGrid(grid: Float64Array, weights: Float64Array, p: number): number {
  const step = grid[1]! - grid[0]!;
  let total = 0;
  for (let i = 1; i < grid.length; i++) total += (weights[i - 1]! + weights[i]!) / 2;
  let below = 0;
  for (let i = 1; i < grid.length; i++) {
    const [left, right] = [weights[i - 1]!, weights[i]!];
    const mass = (left + right) / 2 / total;
    if (below + mass >= p) {
      // Inside one step the density is a straight line: solve its quadratic.
      const need = (p - below) * total;
      const slope = right - left;
      const share =
        Math.abs(slope) < 1e-12 * (left + right)
          ? need / left
          : (Math.sqrt(left * left + 2 * slope * need) - left) / slope;
      return grid[i - 1]! + share * step;
    }
    below += mass;
  }
  return grid[grid.length - 1]!;
}
