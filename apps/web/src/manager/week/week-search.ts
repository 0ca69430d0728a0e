import type { Shop } from '../../data/types.js';
import { mondayAfter } from '../../words/local-date.js';

const DATE = /^\d{4}-\d{2}-\d{2}$/;

/** What the address of the week keeps: its first day, the visit looked at, whether the plan before shows behind it. */
export interface WeekSearch {
  readonly of?: string;
  readonly visit?: string;
  readonly compare?: true;
}

export function weekSearch(search: Record<string, unknown>): WeekSearch {
  return {
    ...(typeof search.of === 'string' && DATE.test(search.of) ? { of: search.of } : {}),
    ...(typeof search.visit === 'string' ? { visit: search.visit } : {}),
    ...(search.compare === true ? { compare: true as const } : {}),
  };
}

/** The week that a shop looks at when none is named: the one planned last, or the coming one. */
export function weekShown({ plannedWeekOf, forecastAsOf, today }: Shop): string {
  return plannedWeekOf ?? mondayAfter(forecastAsOf ?? today);
}
