import type { SeasonClock } from '@deckround/usage';

/** Share of the year's mean activity that parts the growing season from the dormant one. Own choice. */
const DORMANT_BELOW = 0.3;
/** A completion so many days before the event counts for it. Own choice. */
const COUNTS_FOR_DAYS = 120;
const WEEK = 7;

/**
 * Next first cut or storage after a completion, from the learned season: the day on which the seasonal shape rises above
 * or falls below 0.3 of its yearly mean, looked at a week apart so that one dry week is no winter.
 *
 * @returns day number of the last day before the event; null where the season never rests
 */
export function nextSeasonEvent(
  clock: SeasonClock,
  event: 'before-first-cut' | 'before-storage',
  sinceDay: number,
  completed: boolean,
): number | null {
  const earliest = completed ? sinceDay + COUNTS_FOR_DAYS : sinceDay;
  for (let day = earliest; day < earliest + 2 * 366; day++) {
    const before = clock.rate(day) < DORMANT_BELOW;
    const after = clock.rate(day + 1) < DORMANT_BELOW;
    if (before === after) continue;
    const lasting = clock.rate(day + 1 + WEEK) < DORMANT_BELOW === after;
    if (lasting && after === (event === 'before-storage')) return day;
  }
  return null;
}
