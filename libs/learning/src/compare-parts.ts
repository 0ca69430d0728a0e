import type { Register } from '@deckround/register';
import { compareGrades, type GradeComparison, kaplanMeier, sampleOf } from '@deckround/reliability';
import type { FitPoint } from './answer-fit.js';
import type { ComponentLife } from './component-life.js';
import { toGraded } from './life-group.js';
import { type LifeMark, lifeMarks } from './life-marks.js';

export interface PartsAnswer extends GradeComparison {
  /** Survival points of each grade, in the order of `grades`. */
  readonly points: readonly [readonly FitPoint[], readonly FitPoint[]];
  /** Every life of each grade. */
  readonly marks: readonly [readonly LifeMark[], readonly LifeMark[]];
  readonly descriptions: readonly [string, string];
  /** Greatest age to which a part of each grade was watched: nothing is known beyond it. */
  readonly watchedToHours: readonly [number, number];
}

/**
 * Which of two part grades lasts longer in this shop. Only lives whose fitting is on record count: a slot's first part has
 * no known grade, and taking the grade of what replaced it would count failed first parts only.
 */
export function compareParts(
  lives: readonly ComponentLife[],
  parts: readonly [string, string],
  register: Register,
): PartsAnswer {
  const graded = toGraded(lives);
  const comparison = compareGrades(graded, parts);
  const pointsOf = (grade: string): FitPoint[] =>
    kaplanMeier(sampleOf(graded.filter((each) => each.grade === grade)), 0.9).map((step) => ({
      ageHours: step.age,
      atRisk: step.atRisk,
      failures: step.failures,
      survival: step.survival,
      low: step.low,
      high: step.high,
    }));
  const marksOf = (grade: string) => lifeMarks(lives.filter((each) => each.part === grade && each.fittingKnown));
  const watchedTo = (grade: string) =>
    graded.reduce((most, each) => (each.grade === grade ? Math.max(most, each.age) : most), 0);
  const describe = (code: string) => register.parts.find((part) => part.code === code)?.description ?? code;
  return {
    ...comparison,
    assumptions: [
      ...comparison.assumptions,
      'Only parts whose fitting is on record count; a slot’s first part has no known grade.',
    ],
    points: [pointsOf(parts[0]), pointsOf(parts[1])],
    marks: [marksOf(parts[0]), marksOf(parts[1])],
    descriptions: [describe(parts[0]), describe(parts[1])],
    watchedToHours: [watchedTo(parts[0]), watchedTo(parts[1])],
  };
}

/** Parts on record for an item, most often fitted first. */
export function partsOnRecord(lives: readonly ComponentLife[], itemCode: string): string[] {
  const counts = new Map<string, number>();
  for (const each of lives)
    if (each.itemCode === itemCode && each.part !== null) counts.set(each.part, (counts.get(each.part) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)).map(([part]) => part);
}
