import type { UsageForecast } from '../../data/types.js';
import { Chart } from '../../design/chart.js';
import { addDays, daysBetween } from '../../words/local-date.js';
import { useWords } from '../../words/words.js';
import style from './forecast.module.css';
import { monthStarts, type UsagePoint } from './usage-chart.js';

const WEEKS_BACK = 56;

/** Hours a week through the year: steps from reading to reading behind, the forecast's middle ahead. */
export function SeasonShape({
  usage,
  points,
}: {
  readonly usage: UsageForecast;
  readonly points: readonly UsagePoint[];
}) {
  const { t, number, monthDay } = useWords();
  const weeks = weeksOf(usage, points);
  const domain = [Math.min(0, ...weeks.map((week) => week.from)), usage.p50.length] as const;
  return (
    <Chart
      label={t('forecast.season-label')}
      x={domain}
      y={[0, 1.1 * Math.max(1, ...weeks.map((week) => week.hours))]}
      xTicks={monthStarts(usage.asOf, domain)}
      xText={(value) => monthDay(addDays(usage.asOf, value))}
      yText={(value) => number(value, 1)}
      yTitle={t('forecast.season')}
      height={170}
    >
      {(x, y) =>
        weeks.map((week) => (
          <rect
            key={week.from}
            x={x(week.from) + 0.5}
            width={Math.max(1, x(week.to) - x(week.from) - 1)}
            y={y(week.hours)}
            height={Math.max(0, y(0) - y(week.hours))}
            className={week.to > 0 ? style.ahead : style.behind}
          />
        ))
      }
    </Chart>
  );
}

/** Hours a week over stretches of days from `asOf`: between readings at least three days apart, then week by week ahead. */
export function weeksOf(usage: UsageForecast, points: readonly UsagePoint[]) {
  const stretches: { from: number; to: number; hours: number }[] = [];
  let last: { day: number; hours: number } | null = null;
  for (const point of points) {
    const at = daysBetween(usage.asOf, point.at.slice(0, 10));
    if (point.isAside || at > 0 || at < -7 * WEEKS_BACK) continue;
    if (last === null) last = { day: at, hours: point.hours };
    else if (at - last.day >= 3) {
      stretches.push({
        from: last.day,
        to: at,
        hours: Math.max(0, ((point.hours - last.hours) * 7) / (at - last.day)),
      });
      last = { day: at, hours: point.hours };
    }
  }
  for (let from = 0; from + 7 <= usage.p50.length; from += 7) {
    const before = from === 0 ? usage.lifetimeHoursNow : usage.p50[from - 1]!;
    stretches.push({ from, to: from + 7, hours: Math.max(0, usage.p50[from + 6]! - before) });
  }
  return stretches;
}
