import { chiSquareCdf } from '../numeric/gamma.js';
import type { WeibullFit } from './fit-weibull.js';
import { kaplanMeier, type SurvivalStep } from './kaplan-meier.js';
import type { LifeSample } from './life.js';
import { fitExponential, fitLognormal } from './other-laws.js';
import { survival } from './weibull.js';

export interface GoodnessOfFit {
  /** Akaike's criterion, lower is better; null when that law cannot be fitted. */
  readonly aic: { readonly weibull: number; readonly exponential: number | null; readonly lognormal: number | null };
  /** Likelihood-ratio test of no ageing (shape 1) against the Weibull law. */
  readonly noAgeingP: number | null;
  /** Share of Kaplan–Meier points whose 90 % interval holds the fitted curve. */
  readonly pointsHeld: number;
  readonly sentence: string;
}

/** How well a Weibull law describes the lives, in three plain measures. */
export function goodnessOfFit(
  sample: LifeSample,
  fit: WeibullFit,
  steps: readonly SurvivalStep[] = kaplanMeier(sample, 0.9),
): GoodnessOfFit {
  const exponential = fitExponential(sample);
  const lognormal = fitLognormal(sample);
  const aic = {
    weibull: 4 - 2 * fit.logLikelihood,
    exponential: exponential.ok ? 2 - 2 * exponential.logLikelihood : null,
    lognormal: lognormal.ok ? 4 - 2 * lognormal.logLikelihood : null,
  };
  const noAgeingP = exponential.ok
    ? 1 - chiSquareCdf(Math.max(0, 2 * (fit.logLikelihood - exponential.logLikelihood)), 1)
    : null;
  // The last point often has nobody left at risk; its interval is a point.
  const judged = steps.filter((each) => each.high > each.low);
  const held = judged.filter((each) => {
    const s = survival(fit, each.age);
    return s >= each.low && s <= each.high;
  }).length;
  const pointsHeld = judged.length === 0 ? 1 : held / judged.length;
  return { aic, noAgeingP, pointsHeld, sentence: sentenceOf(pointsHeld, judged.length, aic, noAgeingP) };
}

function sentenceOf(pointsHeld: number, points: number, aic: GoodnessOfFit['aic'], noAgeingP: number | null): string {
  const share =
    points === 0 ? '' : `the curve lies inside ${Math.round(pointsHeld * 100)} % of the intervals of the points`;
  const ageing =
    noAgeingP === null
      ? ''
      : noAgeingP < 0.1
        ? 'lives differ clearly from pure chance'
        : 'pure chance (no ageing) would explain them too';
  const other =
    aic.lognormal !== null && aic.lognormal < aic.weibull - 4 ? 'a lognormal law would fit clearly better' : '';
  const parts = [share, ageing, other].filter((each) => each !== '');
  const text = parts.join('; ');
  return text === '' ? 'Too few points to judge the fit.' : `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
