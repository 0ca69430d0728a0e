import type { ServiceItem } from '../snapshot.js';

/** Hours and days between completions after the machine's duty has been taken into account. */
export interface Interval {
  readonly hours: number | null;
  readonly days: number | null;
}

/**
 * Severe duty multiplies the interval by f (0 < f ≤ 1), light duty by 1/√f.
 *
 * @source house rule, common practice, no source
 */
export function intervalOf({ rule, severity }: ServiceItem): Interval {
  const factor = severity === 'severe' ? rule.severeFactor : severity === 'light' ? rule.severeFactor ** -0.5 : 1;
  return {
    hours: rule.hours === null ? null : rule.hours * factor,
    days: rule.days === null ? null : Math.max(1, rule.days * factor),
  };
}

/**
 * Where the next multiple of a fixed interval lies. A completion counts for the multiple it is nearest to: done at 190 h
 * or at 110 h, the next of every 100 h is 300 h or 200 h. Without a completion it is the first multiple past `from`.
 */
export function nextFixed(from: number, interval: number, completed: boolean): number {
  const passed = completed ? Math.round(from / interval) : Math.floor(from / interval);
  return (Math.max(0, passed) + 1) * interval;
}
