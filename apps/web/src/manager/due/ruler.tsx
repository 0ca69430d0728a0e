import { linear } from '../../design/scale.js';
import { addDays, daysBetween, weekdayOf } from '../../words/local-date.js';
import { useWords } from '../../words/words.js';
import style from './due.module.css';
import type { Tolerance } from './tolerance.js';

export interface RulerAxis {
  readonly from: string;
  readonly to: string;
  readonly today: string;
}

interface Mark {
  readonly p10: string | null;
  readonly p50: string | null;
  readonly p90: string | null;
  readonly tolerance: Tolerance | null;
}

const WIDTH = 1000;

/** A calendar ruler: bar from P10 to P90, tick at P50, tolerance as brackets, today as a line. Without a mark: its head. */
export function Ruler({
  axis,
  mark,
  label,
}: {
  readonly axis: RulerAxis;
  readonly mark?: Mark;
  readonly label?: string;
}) {
  const { day, monthDay } = useWords();
  const days = daysBetween(axis.from, axis.to);
  const scale = linear([0, days], [0, WIDTH]);
  const x = (date: string) => Math.max(0, Math.min(WIDTH, scale(daysBetween(axis.from, date))));
  const mondays = Array.from({ length: days }, (_, index) => addDays(axis.from, index)).filter(
    (date) => weekdayOf(date) === 1,
  );
  const every = Math.max(1, Math.ceil(mondays.length / 6));
  if (mark === undefined)
    return (
      <span className={style.head} aria-hidden="true">
        {mondays.map((date, index) =>
          index % every === 0 ? (
            <span key={date} style={isLate(x(date)) ? { right: 0 } : { left: `${x(date) / 10}%` }}>
              <span className={style.wide}>{day(date)}</span>
              <span className={style.narrow}>{monthDay(date)}</span>
            </span>
          ) : null,
        )}
      </span>
    );
  const { p10, p50, p90, tolerance } = mark;
  const early = p50 === null || p50 < axis.from;
  const middle = p50 === null ? null : x(p50);
  return (
    <svg className={style.line} viewBox={`0 0 ${WIDTH} 28`} preserveAspectRatio="none" role="img" aria-label={label}>
      {mondays.map((date) => (
        <line key={date} x1={x(date)} x2={x(date)} y1="0" y2="28" className={style.week} />
      ))}
      <line x1={x(axis.today)} x2={x(axis.today)} y1="0" y2="28" className={style.today} />
      {middle === null ? null : (
        <>
          <rect
            x={x(p10 ?? p50!)}
            width={Math.max(4, x(p90 ?? axis.to) - x(p10 ?? p50!))}
            y="10"
            height="8"
            className={style.bar}
          />
          {tolerance === null || early ? null : (
            <path
              d={
                bracket(x(addDays(p50!, -Math.round(tolerance.before))), 1) +
                bracket(x(addDays(p50!, Math.round(tolerance.after))), -1)
              }
              className={style.bracket}
            />
          )}
          {early ? (
            <path d="M14 6 2 14 14 22" className={style.tick} />
          ) : (
            <line x1={middle} x2={middle} y1="5" y2="23" className={style.tick} />
          )}
        </>
      )}
    </svg>
  );
}

/** Whether a word that begins here would end beyond the ruler on a phone. */
const isLate = (at: number) => at > 0.8 * WIDTH;

const bracket = (x: number, turn: 1 | -1) => `M${x + 8 * turn} 4H${x}V24H${x + 8 * turn}`;
