import {
  goodnessOfFit,
  kaplanMeier,
  type LifePosterior,
  type LifePrior,
  poolGroups,
  reportGroup,
} from '@deckround/reliability';
import type { ComponentLife } from './component-life.js';
import { assumptionsOf, toSample } from './life-group.js';
import { type LifeMark, lifeMarks } from './life-marks.js';

export interface FitPoint {
  readonly ageHours: number;
  readonly atRisk: number;
  readonly failures: number;
  readonly survival: number;
  readonly low: number;
  readonly high: number;
}

export interface CurvePoint {
  readonly ageHours: number;
  readonly survival: number;
  readonly low: number;
  readonly high: number;
}

export interface FitAnswer {
  readonly lives: number;
  readonly failures: number;
  /** own: the group's lives alone; pooled: with like groups; prior: the stated assumption alone. */
  readonly basis: 'own' | 'pooled' | 'prior';
  readonly shape: Figure | null;
  readonly scaleHours: Figure | null;
  readonly b10Hours: Figure | null;
  readonly points: readonly FitPoint[];
  readonly marks: readonly LifeMark[];
  readonly curve: readonly CurvePoint[];
  readonly goodness: string | null;
  readonly statement: string;
  readonly assumptions: readonly string[];
  readonly leftOut: readonly string[];
}

export interface Figure {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** From so many failures a group speaks for itself. Own choice: at 20 the shape is known to a quarter or so. */
export const ENOUGH_FAILURES = 20;

export const REPORT_LEVEL = 0.9;

/** A group's belief: its own lives, like groups while it has few failures, and a stated prior where nothing is known. */
export interface Belief {
  readonly basis: FitAnswer['basis'];
  readonly posterior: LifePosterior;
  readonly words: string;
  readonly report: ReturnType<typeof reportGroup>;
}

export function believe(
  lives: readonly ComponentLife[],
  likeGroups: readonly (readonly ComponentLife[])[],
  stated: { readonly prior: LifePrior; readonly words: string },
): Belief {
  const sample = toSample(lives);
  if (sample.failures >= ENOUGH_FAILURES) {
    const report = reportGroup(sample, undefined, REPORT_LEVEL);
    if (report.belief)
      return {
        basis: 'own',
        posterior: report.belief,
        words: `From ${sample.failures} failures of its own.`,
        report,
      };
  }
  const pool = poolGroups(likeGroups.map(toSample), stated.prior);
  const isPooled = pool.groups > 1 && pool.failures > 0;
  const report = reportGroup(sample, pool.prior, REPORT_LEVEL);
  const own = `${sample.failures} ${sample.failures === 1 ? 'failure' : 'failures'} of its own`;
  return {
    basis: isPooled ? 'pooled' : 'prior',
    posterior: report.belief!,
    words: isPooled ? `Only ${own}. ${pool.sentence}` : `Only ${own}: assumed before, ${stated.words}.`,
    report,
  };
}

/** Points, curve and figures of one group of lives, ready to be drawn or read. */
export function answerFit(
  lives: readonly ComponentLife[],
  likeGroups: readonly (readonly ComponentLife[])[],
  stated: { readonly prior: LifePrior; readonly words: string },
): FitAnswer {
  const sample = toSample(lives);
  const belief = believe(lives, likeGroups, stated);
  const { report, posterior } = belief;
  const steps = kaplanMeier(sample, REPORT_LEVEL);
  const longest = Math.max(posterior.quantileOfLife(0.9, 0.5), ...lives.map((each) => each.ageHours));
  const curve = Array.from({ length: 41 }, (_, i): CurvePoint => {
    const ageHours = (longest * i) / 40;
    if (i === 0) return { ageHours: 0, survival: 1, low: 1, high: 1 };
    return {
      ageHours,
      survival: posterior.survival(ageHours),
      low: posterior.quantileOfSurvival(ageHours, (1 - REPORT_LEVEL) / 2),
      high: posterior.quantileOfSurvival(ageHours, (1 + REPORT_LEVEL) / 2),
    };
  });
  return {
    lives: sample.lives,
    failures: sample.failures,
    basis: belief.basis,
    shape: report.shape,
    scaleHours: report.scale,
    b10Hours: report.b10,
    points: steps.map((step) => ({
      ageHours: step.age,
      atRisk: step.atRisk,
      failures: step.failures,
      survival: step.survival,
      low: step.low,
      high: step.high,
    })),
    marks: lifeMarks(lives),
    curve,
    goodness: report.fit.ok ? goodnessOfFit(sample, report.fit, steps).sentence : null,
    statement: `${belief.words}${report.fit.ok ? '' : ` ${report.fit.statement}`}`,
    assumptions: assumptionsOf(lives),
    leftOut: sample.leftOut,
  };
}
