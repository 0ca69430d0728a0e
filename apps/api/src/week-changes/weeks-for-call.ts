import { workedDates } from '@deckround/planning';
import { addDays } from '@deckround/register';
import { wallClockOf } from '@deckround/register-store';
import type { Tx } from '@deckround/store';
import { type LoadedWeek, loadStandingWeek, plannedDayFrom } from './load-standing-week.js';

/** How many days after today a plan may begin. */
const BEGINS_WITHIN = 7;

/** A planned week that a call can be fit into. */
export interface WeekForCall {
  /** A day of it, to load it by again. */
  date: string;
  loaded: LoadedWeek;
  /** Days with work left that are looked at; at least one. */
  dates: string[];
}

/**
 * The planned weeks that the next days with work left lie in: on a Friday evening those of the week to come.
 *
 * @param daysAhead how many such days to look at
 * @throws DomainError plan-not-ready when no plan covers today or begins soon
 */
export async function weeksForCall(tx: Tx, daysAhead: number, now: Date): Promise<WeekForCall[]> {
  const { timeZone } = await tx.shop.findFirstOrThrow({ select: { timeZone: true } });
  const today = wallClockOf(now, timeZone).slice(0, 10);
  const latest = addDays(today, BEGINS_WITHIN);
  const weeks: WeekForCall[] = [];
  let left = daysAhead;
  let date: string | null = (await plannedDayFrom(tx, today, latest)) ?? today;
  while (date !== null && left > 0) {
    const loaded = await loadStandingWeek(tx, date, now);
    const since = date;
    const until = endInARow(loaded.days, since);
    const dates = workedDates(loaded.week)
      .filter((worked) => worked >= since && worked <= until)
      .slice(0, left);
    if (dates.length > 0) weeks.push({ date, loaded, dates });
    left -= dates.length;
    date = await plannedDayFrom(tx, addDays(until, 1), latest);
  }
  return weeks;
}

/** The last of the days that follow each other without a gap, which another plan's days are. */
function endInARow(days: readonly string[], from: string): string {
  let end = from;
  while (days.includes(addDays(end, 1))) end = addDays(end, 1);
  return end;
}
