import { addDays, daysBetween } from '../words/local-date.js';
import type { DueItem } from './types.js';

/** Half a chance of being past its tolerance is called overdue. */
export const OVERDUE_FROM = 0.5;

type Forecast = Pick<DueItem, 'costFrom' | 'probabilityOverdue'>;

/** The chance that it is past its tolerance today. The forecast may be some days old, or begin with the week to come. */
export function chanceOverdue({ costFrom, probabilityOverdue }: Forecast, today: string): number {
  const day = Math.min(Math.max(0, daysBetween(costFrom, today)), probabilityOverdue.length - 1);
  return probabilityOverdue[day] ?? 0;
}

/** The day that the chance speaks of: today, where the forecast reaches to it. */
export function chanceDay({ costFrom, probabilityOverdue }: Forecast, today: string): string {
  const last = addDays(costFrom, Math.max(0, probabilityOverdue.length - 1));
  return today < costFrom ? costFrom : today > last ? last : today;
}
