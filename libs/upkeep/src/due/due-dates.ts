import type { MachineForecast } from '@deckround/usage';
import type { DueMark } from './due-mark.js';

/**
 * Day number on which the first of the limits is reached with chance p: the hour limit's first passage on the usage
 * forecast, or the calendar day. Null when neither comes within two years.
 */
export function dueDay(mark: DueMark, forecast: MachineForecast, p: number): number | null {
  const byHours = mark.hours === null ? null : forecast.dayReaching(mark.hours, p);
  const byDay = mark.day !== null && mark.day <= forecast.originDay + 730 ? mark.day : null;
  if (byHours === null) return byDay;
  return byDay === null ? byHours : Math.min(byHours, byDay);
}
