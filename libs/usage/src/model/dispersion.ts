import { unitGammaProbability } from './gamma-table.js';
import type { LookBack } from './look-back.js';
import { sharedVariance, skyOf } from './shared-sky.js';

/**
 * Spread of hours about their mean: V(μ) = φ·μ + (σ² + τ²)·μ² + φ·μ²/evidence + D².
 * φ (hours): lumpiness of single days; σ (no unit): a machine's own workload and its site's weather, shared by all days
 * ahead; τ (no unit): what all machines of a climate have in common; then how well the machine's own pace is known, and
 * D (hours): what is not known of a season that has not been seen.
 */
export interface Dispersion {
  readonly phi: number;
  readonly sigma2: number;
  readonly tau2: number;
  /** Probability maps where few hours are expected (idle weeks, machines standing still) and where many are. */
  readonly few: ProbabilityMap;
  readonly many: ProbabilityMap;
}

/** Stated probabilities and the gamma law's probabilities to use for them; both rising. */
export interface ProbabilityMap {
  readonly stated: readonly number[];
  readonly used: readonly number[];
}

const IDENTITY: ProbabilityMap = { stated: [0, 1], used: [0, 1] };
export const WIDE: Dispersion = { phi: 6, sigma2: 0.35, tau2: 0, few: IDENTITY, many: IDENTITY };

/** Expected hours below which the one map holds, and above which the other; mixed in between on a log scale. */
const FEW_HOURS = 3;
const MANY_HOURS = 9;

/** Look-backs needed before the history's own spread is fully trusted. */
const TRUSTED = 120;
const KNOTS = [0.025, 0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95, 0.975];

export function varianceOf(
  expected: number,
  evidenceHours: number,
  seasonHours: number,
  { phi, sigma2, tau2 }: Dispersion,
): number {
  return phi * expected + (sigma2 + tau2 + phi / evidenceHours) * expected * expected + seasonHours * seasonHours;
}

/**
 * φ and σ² by weighted least squares of squared errors on (μ + μ²/evidence, μ²), the largest percent left out; then
 * the probability map that makes past outcomes fall below each stated quantile as often as stated; both after what each
 * period had in common has been taken out (`shared-sky.ts`), which comes back as τ².
 * Few look-backs are mixed with a stated wide default.
 *
 * @param years seen, at least 1: the season was learned from so many, weather included
 * @source quasi-likelihood moments for over-dispersed counts (McCullagh & Nelder); probability recalibration after
 * Kuleshov, Fenner & Ermon 2018; both from memory
 */
export function fitDispersion(lookBacks: readonly LookBack[], years: number): Dispersion {
  const sky = skyOf(lookBacks);
  const own = lookBacks.map((each) => ({ ...each, expected: each.expected * sky.factor(each) }));
  const many = own.filter((each) => each.expected >= 6);
  const few = own.filter((each) => each.expected >= 1.5 && each.expected < 6);
  const trust = trustIn(many);
  const { phi, sigma2 } = many.length > 0 ? moments(many) : WIDE;
  const spread = {
    phi: Math.max(1e-3, trust * phi + (1 - trust) * WIDE.phi),
    sigma2: Math.max(1e-5, trust * sigma2 + (1 - trust) * WIDE.sigma2),
    tau2: 0,
    few: IDENTITY,
    many: IDENTITY,
  };
  const tau2 = sharedVariance(sky.periods, spread.sigma2, years);
  return { ...spread, tau2, few: recalibrated(few, spread), many: recalibrated(many, spread) };
}

function recalibrated(lookBacks: readonly LookBack[], spread: Dispersion): ProbabilityMap {
  if (lookBacks.length === 0) return IDENTITY;
  const trust = trustIn(lookBacks);
  const ranks = lookBacks
    .map((each) => {
      const k = each.expected ** 2 / varianceOf(each.expected, each.evidenceHours, 0, spread);
      return { rank: unitGammaProbability(k, each.hours / each.expected), weight: each.weight };
    })
    .sort((a, b) => a.rank - b.rank);
  const total = ranks.reduce((sum, each) => sum + each.weight, 0);
  let at = 0;
  let below = 0;
  const used = KNOTS.map((p) => {
    while (at < ranks.length - 1 && below + ranks[at]!.weight < p * total) below += ranks[at++]!.weight;
    return Math.min(0.9975, Math.max(0.0025, trust * ranks[at]!.rank + (1 - trust) * p));
  });
  return { stated: [0, ...KNOTS, 1], used: [0, ...used, 1] };
}

/** Effective number of look-backs (Σw)²/Σw² against the number that is trusted, at most 1. */
function trustIn(lookBacks: readonly LookBack[]): number {
  let sum = 0;
  let squares = 0;
  for (const { weight } of lookBacks) {
    sum += weight;
    squares += weight * weight;
  }
  return squares > 0 ? Math.min(1, (sum * sum) / squares / TRUSTED) : 0;
}

function moments(usable: readonly LookBack[]): { phi: number; sigma2: number } {
  const scaled = usable.map((each) => ((each.hours - each.expected) / each.expected) ** 2);
  const cut = [...scaled].sort((a, b) => a - b)[Math.floor(0.99 * scaled.length)]!;
  let aa = 0;
  let ab = 0;
  let bb = 0;
  let ay = 0;
  let by = 0;
  usable.forEach((each, n) => {
    if (scaled[n]! > cut) return;
    const m = each.expected;
    const a = m + (m * m) / each.evidenceHours;
    const b = m * m;
    const y = (each.hours - m) ** 2;
    const weight = each.weight / (6 * m + 0.1 * m * m) ** 2;
    aa += weight * a * a;
    ab += weight * a * b;
    bb += weight * b * b;
    ay += weight * a * y;
    by += weight * b * y;
  });
  const det = aa * bb - ab * ab;
  let phi = det > 1e-12 * aa * bb ? (ay * bb - by * ab) / det : ay / Math.max(aa, 1e-12);
  let sigma2 = det > 1e-12 * aa * bb ? (by * aa - ay * ab) / det : 0;
  if (sigma2 < 0) {
    sigma2 = 0;
    phi = ay / Math.max(aa, 1e-12);
  } else if (phi < 0) {
    phi = 0;
    sigma2 = by / Math.max(bb, 1e-12);
  }
  return { phi, sigma2 };
}

/** The gamma law's probability to ask for so that outcomes fall below it in a share p of cases. */
export function usedProbability(p: number, expected: number, { few, many }: Dispersion): number {
  const share = shareOfMany(expected);
  return (
    (share < 1 ? (1 - share) * interpolate(p, few.stated, few.used) : 0) +
    (share > 0 ? share * interpolate(p, many.stated, many.used) : 0)
  );
}

/** Inverse of `usedProbability` in its first argument, by bisection. */
export function statedProbability(u: number, expected: number, dispersion: Dispersion): number {
  let low = 0;
  let high = 1;
  for (let n = 0; n < 20; n++) {
    const middle = (low + high) / 2;
    if (usedProbability(middle, expected, dispersion) < u) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function shareOfMany(expected: number): number {
  return Math.min(1, Math.max(0, Math.log(Math.max(expected, 1e-9) / FEW_HOURS) / Math.log(MANY_HOURS / FEW_HOURS)));
}

function interpolate(x: number, xs: readonly number[], ys: readonly number[]): number {
  let k = 1;
  while (k < xs.length - 1 && xs[k]! < x) k++;
  const width = xs[k]! - xs[k - 1]!;
  const share = width > 1e-12 ? Math.min(1, Math.max(0, (x - xs[k - 1]!) / width)) : 0.5;
  return ys[k - 1]! + share * (ys[k]! - ys[k - 1]!);
}
