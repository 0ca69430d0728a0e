import { dateOfDay, weekdayOf } from '@deckround/usage';

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];

/** "2 Jun", with the year when it is not that of the reader's day. */
export function spokenDay(day: number, readerDay: number): string {
  const date = dateOfDay(day);
  const year = date.slice(0, 4);
  const text = `${+date.slice(8, 10)} ${MONTHS[+date.slice(5, 7) - 1]}`;
  return year === dateOfDay(readerDay).slice(0, 4) ? text : `${text} ${year}`;
}

export interface Story {
  readonly title: string;
  readonly readerDay: number;
  /** "last done 2 Jun at 412.6 h". */
  readonly since: string;
  /** "every 40 h or 365 days"; empty for none. */
  readonly rule: string;
  readonly dueAtHours: number | null;
  readonly dueOnDay: number | null;
  readonly decidedByHours: boolean;
  readonly hoursPerWeek: number;
  readonly days: readonly [p10: number | null, p50: number | null, p90: number | null];
}

/** One sentence a supervisor understands: since when, which rule, due where, and so on which day. */
export function dueSentence(story: Story): string {
  const { readerDay: now } = story;
  const [p10, p50, p90] = story.days;
  const rule = story.rule === '' ? '' : `, ${story.rule}`;
  const head = `${story.title}: ${story.since}${rule}`;
  if (story.dueAtHours === null && story.dueOnDay === null) return `${head}: no limit applies.`;
  if (!story.decidedByHours && story.dueOnDay !== null) {
    const verb = story.dueOnDay < now ? 'was due on' : 'due on';
    return `${head}: ${verb} ${WEEKDAYS[weekdayOf(story.dueOnDay)]} ${spokenDay(story.dueOnDay, now)}.`;
  }
  const mark = `due at ${story.dueAtHours!.toFixed(1)} h`;
  if (p50 === null) return [head, ': ', mark, '; at the present pace that is more than two years away.'].join('');
  if (p50 <= now) return `${head}: ${mark}, which was reached about ${spokenDay(p50, now)}.`;
  const pace = `at about ${Math.round(story.hoursPerWeek)} h a week that is ${WEEKDAYS[weekdayOf(p50)]} ${spokenDay(p50, now)}`;
  const range =
    p90 === null
      ? ` (not before ${spokenDay(p10 ?? p50, now)})`
      : p10 === p90
        ? ''
        : ` (between ${spokenDay(p10 ?? p50, now)} and ${spokenDay(p90, now)})`;
  // joined, since a text put together piece by piece keeps its pieces in memory
  return [head, ': ', mark, '; ', pace, range, '.'].join('');
}
