import type { IntervalRule } from '@deckround/upkeep';

export const PRACTICE = 'common practice, no source';

const NO_LIMIT: IntervalRule = {
  hours: null,
  days: null,
  firstHours: null,
  seasonEvent: null,
  severeFactor: 1,
  toleranceHours: 0,
  toleranceDays: 0,
  anchor: 'floating',
};

export function everyHours(hours: number, more: Partial<IntervalRule> = {}): IntervalRule {
  return { ...NO_LIMIT, hours, ...more };
}

export function beforeSeasonEvent(
  seasonEvent: 'before-first-cut' | 'before-storage',
  toleranceDays: number,
): IntervalRule {
  return { ...NO_LIMIT, seasonEvent, toleranceDays };
}
