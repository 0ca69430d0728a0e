import { clockOf } from '../local-date.js';
import type { WeeklyWindow } from '../register.js';

const DAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];

/** The same text back, shortest form; days with equal hours are gathered. */
export function formatWeeklyWindows(windows: readonly WeeklyWindow[]): string {
  const byHours = new Map<string, number[]>();
  for (const { weekday, startMinute, endMinute } of windows) {
    const hours = `${clockOf(startMinute)}-${clockOf(endMinute)}`;
    byHours.set(hours, [...(byHours.get(hours) ?? []), weekday].sort());
  }
  return [...byHours].map(([hours, days]) => `${daysText(days)} ${hours}`).join('; ');
}

function daysText(days: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const day of days) {
    const last = runs.at(-1);
    if (last && last[1] === day - 1) last[1] = day;
    else runs.push([day, day]);
  }
  return runs
    .map(([from, to]) =>
      from === to ? DAYS[from - 1] : `${DAYS[from - 1]}${to === from + 1 ? ',' : '-'}${DAYS[to - 1]}`,
    )
    .join(',');
}
