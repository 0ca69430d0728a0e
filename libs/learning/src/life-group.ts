import { type GradedLife, type Life, type LifeSample, sampleOf } from '@deckround/reliability';
import type { ComponentLife } from './component-life.js';

/** Which lives are looked at together; what is left open is not asked about. */
export interface LifeFilter {
  readonly itemCode?: string | undefined;
  readonly part?: string | undefined;
  readonly slot?: string | undefined;
  readonly machineClass?: string | undefined;
  readonly siteId?: string | undefined;
  readonly severity?: 'light' | 'normal' | 'severe' | undefined;
  /** Leaves out first parts, whose fitting nobody recorded. */
  readonly knownFittingOnly?: boolean | undefined;
}

export function selectLives(lives: readonly ComponentLife[], filter: LifeFilter): ComponentLife[] {
  return lives.filter(
    (each) =>
      (filter.itemCode === undefined || each.itemCode === filter.itemCode) &&
      (filter.part === undefined || each.part === filter.part) &&
      (filter.slot === undefined || each.slot === filter.slot) &&
      (filter.machineClass === undefined || each.machineClass === filter.machineClass) &&
      (filter.siteId === undefined || each.siteId === filter.siteId) &&
      (filter.severity === undefined || each.severity === filter.severity) &&
      (!filter.knownFittingOnly || each.fittingKnown),
  );
}

/** The life as an estimator sees it; only a failure of its own is one. */
export function toLife(each: ComponentLife): Life {
  return {
    age: each.ageHours,
    entry: each.entryHours,
    outcome: each.reason === 'failed' && each.countsAsFailure ? 'failed' : 'running',
  };
}

export function toSample(lives: readonly ComponentLife[]): LifeSample {
  return sampleOf(lives.map(toLife));
}

/** Only lives whose part is on record can be compared by grade. */
export function toGraded(lives: readonly ComponentLife[]): GradedLife[] {
  return lives.flatMap((each) =>
    each.part === null || !each.fittingKnown ? [] : [{ ...toLife(each), grade: each.part, severity: each.severity }],
  );
}

/** What an answer about these lives takes for granted, in words. */
export function assumptionsOf(lives: readonly ComponentLife[]): string[] {
  const first = lives.filter((each) => !each.fittingKnown).length;
  const shared = lives.filter((each) => !each.countsAsFailure).length;
  return [
    'A part’s hours are the machine’s hours while it was fitted.',
    ...(first > 0
      ? [
          `${first} first ${first === 1 ? 'part is' : 'parts are'} taken to be as old as the machine, and watched only since the machine was taken on.`,
        ]
      : []),
    ...(shared > 0
      ? [
          `${shared} ${shared === 1 ? 'failure shares its cause with another and counts' : 'failures share their cause with another and count'} once.`,
        ]
      : []),
    'Parts still running, and parts taken out early, count as not failed up to their age.',
  ];
}
