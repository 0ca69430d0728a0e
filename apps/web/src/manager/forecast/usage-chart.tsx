import type { UsageForecast } from '../../data/types.js';
import { bandOf, Chart, pathOf } from '../../design/chart.js';
import { addDays, daysBetween } from '../../words/local-date.js';
import { useWords } from '../../words/words.js';
import style from './forecast.module.css';

const HISTORY_DAYS = 400;
const MOST_MARKS = 6;
const LABEL_HEIGHT = 14;
const LETTER_WIDTH = 6.5;

export interface UsagePoint {
  readonly at: string;
  readonly hours: number;
  readonly isAside: boolean;
}

interface Props {
  readonly usage: UsageForecast;
  readonly points: readonly UsagePoint[];
  readonly marks: readonly { readonly title: string; readonly hours: number }[];
}

/** Lifetime hours: readings as dots, set-aside ones as crosses; then the fan P10–P90 around its middle; due marks as lines. */
export function UsageChart({ usage, points, marks }: Props) {
  const { t, number, monthDay } = useWords();
  const dayAt = (at: string) => daysBetween(usage.asOf, at.slice(0, 10));
  const shown = points.filter((point) => dayAt(point.at) >= -HISTORY_DAYS);
  const believed = shown.filter((point) => !point.isAside);
  const ends = [...believed.map((point) => point.hours), usage.lifetimeHoursNow, ...usage.p90.slice(-1)];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const margin = Math.max(5, (high - low) * 0.06);
  const yDomain = [low - margin, high + margin] as const;
  const xDomain = [Math.min(-14, ...shown.map((point) => dayAt(point.at))), usage.p50.length] as const;
  const near = marks
    .filter((mark) => mark.hours >= usage.lifetimeHoursNow && mark.hours <= yDomain[1])
    .slice(0, MOST_MARKS);
  // Names of marks that lie close together move apart, upwards from the lowest.
  const labels = (y: (hours: number) => number) => {
    let above = Infinity;
    return near.map((mark) => {
      above = Math.min(y(mark.hours) + 4, above - LABEL_HEIGHT);
      return above;
    });
  };
  return (
    <Chart
      label={t('forecast.chart', { points: believed.length })}
      x={xDomain}
      y={yDomain}
      xTicks={monthStarts(usage.asOf, xDomain)}
      xText={(value) => monthDay(addDays(usage.asOf, value))}
      yText={(value) => number(value)}
      yTitle={t('forecast.hours')}
    >
      {(x, y) => {
        const line = (values: readonly number[]) => [
          [x(0), y(usage.lifetimeHoursNow)] as const,
          ...values.map((value, index) => [x(index + 1), y(value)] as const),
        ];
        return (
          <>
            <path d={bandOf(line(usage.p10), line(usage.p90))} className={style.fan} />
            <path d={bandOf(line(usage.p25), line(usage.p75))} className={style.fan} />
            <path d={pathOf(line(usage.p50))} className={style.middle} />
            <path d={pathOf(believed.map((point) => [x(dayAt(point.at)), y(point.hours)]))} className={style.past} />
            {near.map((mark, index) => (
              <g key={mark.title + mark.hours}>
                <line x1={x(0)} x2={x(xDomain[1])} y1={y(mark.hours)} y2={y(mark.hours)} className={style.due} />
                <path d={`M${x(0)} ${y(mark.hours)}L${x(0) - 14} ${labels(y)[index]! - 4}`} className={style.due} />
                <text x={x(0) - 18} y={labels(y)[index]} textAnchor="end">
                  {shortened(mark.title, (x(0) - 24) / LETTER_WIDTH)}
                </text>
              </g>
            ))}
            {shown.map((point) => {
              const [px, py] = [x(dayAt(point.at)), y(point.hours)];
              if (!point.isAside)
                return <circle key={`${point.at} ${point.hours}`} cx={px} cy={py} r="2.5" className={style.point} />;
              const isInside = point.hours >= yDomain[0] && point.hours <= yDomain[1];
              return isInside ? (
                <path
                  key={`${point.at} ${point.hours}`}
                  d={`M${px - 4} ${py - 4}l8 8m0-8l-8 8`}
                  className={style.aside}
                />
              ) : null;
            })}
            <line x1={x(0)} x2={x(0)} y1={y(yDomain[0])} y2={y(yDomain[1])} className={style.today} />
          </>
        );
      }}
    </Chart>
  );
}

/** A name that would begin left of the chart ends in dots; it stands in full in the table below. */
function shortened(name: string, most: number): string {
  return name.length <= most ? name : `${name.slice(0, Math.max(1, Math.floor(most) - 1)).trimEnd()}…`;
}

/** First days of months as days from `asOf`, thinned to what fits. */
export function monthStarts(asOf: string, [from, to]: readonly [number, number]): number[] {
  const starts: number[] = [];
  for (let at = Math.ceil(from); at <= to; at += 1) if (addDays(asOf, at).endsWith('-01')) starts.push(at);
  const every = Math.max(1, Math.ceil(starts.length / 8));
  return starts.filter((_, index) => index % every === 0);
}
