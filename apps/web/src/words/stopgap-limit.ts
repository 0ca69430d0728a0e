import type { Words } from './words-of.js';

export interface StopgapLimit {
  readonly limitHours: string | null;
  /** The day from which its hours count: it was made then, or renewed. */
  readonly countedFrom: string;
  readonly limitOn: string | null;
}

/** How long a temporary repair holds: for hours from a day on, until a day, or whichever comes first. Empty = nobody has said. */
export function stopgapLimit(
  { limitHours, countedFrom, limitOn }: StopgapLimit,
  { t, hours }: Words,
  written: (date: string) => string,
): string {
  const until = limitOn === null ? '' : written(limitOn);
  if (limitHours === null) return until && t('stopgap.holds-until', { until });
  const counted = { hours: hours(limitHours), day: written(countedFrom) };
  return until === '' ? t('stopgap.holds-hours', counted) : t('stopgap.holds-either', { ...counted, until });
}
