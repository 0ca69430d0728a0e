import type { ForecastQuality } from '../../data/types.js';

export type QualityRow = ForecastQuality['rows'][number];
export const RANGES = [
  ['coverage50', 0.5],
  ['coverage80', 0.8],
  ['coverage95', 0.95],
] as const;
export const RULES = ['lastTwoReadingsHours', 'wholeLifeHours', 'lastYearHours'] as const;
