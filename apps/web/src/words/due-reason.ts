import type { DueItem } from '../data/types.js';
import type { Words } from './words.js';

interface Why {
  readonly rule?: string;
  readonly lastCompletion?: { readonly on: string; readonly lifetimeHours: number } | null;
  readonly dueAtHours?: number | null;
  readonly dueOnByCalendar?: string | null;
  readonly lifetimeHoursNow?: number;
  readonly lastReading?: { readonly at: string; readonly hours: number } | null;
  readonly hoursPerWeekNow?: number;
  readonly decidedBy?: string;
}

/** What a due date was made of, one line per piece of evidence, in the reader's language. */
export function dueReasons(item: DueItem, { t, hours, dayOfYear, number }: Words): string[] {
  const why: Why = item.why ?? {};
  const lines: string[] = [];
  lines.push(
    why.lastCompletion
      ? t('due.why-last', { day: dayOfYear(why.lastCompletion.on), hours: hours(why.lastCompletion.lifetimeHours) })
      : t(item.kind === 'stopgap' ? 'due.why-stopgap' : 'due.why-never'),
  );
  if (why.dueAtHours != null) lines.push(t('due.why-mark', { hours: hours(why.dueAtHours) }));
  if (why.dueOnByCalendar != null) lines.push(t('due.why-calendar', { day: dayOfYear(why.dueOnByCalendar) }));
  if (why.lifetimeHoursNow !== undefined)
    lines.push(t('due.why-now', { hours: hours(why.lifetimeHoursNow), pace: number(why.hoursPerWeekNow ?? 0, 1) }));
  if (why.lastReading)
    lines.push(
      t('due.why-reading', { day: dayOfYear(why.lastReading.at.slice(0, 10)), hours: hours(why.lastReading.hours) }),
    );
  if (item.p50 !== null)
    lines.push(
      t('due.why-range', {
        early: item.p10 === null ? '–' : dayOfYear(item.p10),
        middle: dayOfYear(item.p50),
        late: item.p90 === null ? '–' : dayOfYear(item.p90),
      }),
    );
  return lines;
}
