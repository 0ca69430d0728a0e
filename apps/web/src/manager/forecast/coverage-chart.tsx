import { Chart, pathOf } from '../../design/chart.js';
import { useWords } from '../../words/words.js';
import style from './forecast.module.css';
import { type QualityRow, RANGES } from './quality-rows.js';

/** Beyond the last square each line is named. */
const ROOM_FOR_NAMES = 1.25;

/** Shares inside the 50, 80 and 95 % ranges; what was promised is dashed and stands on the axis. */
export function CoverageChart({ rows }: { readonly rows: readonly QualityRow[] }) {
  const { t, number, percent } = useWords();
  const last = rows.at(-1)!;
  const longest = last.daysAhead * ROOM_FOR_NAMES;
  return (
    <Chart
      label={t('quality.coverage-label')}
      x={[0, longest]}
      y={[0.3, 1]}
      xTicks={rows.map((row) => row.daysAhead)}
      xText={(value) => number(value)}
      yTicks={RANGES.map(([, nominal]) => nominal)}
      yText={percent}
      xTitle={t('quality.days-ahead')}
      yTitle={t('quality.share-inside')}
      height={280}
    >
      {(x, y) =>
        RANGES.map(([key, nominal]) => (
          <g key={key}>
            <line x1={x(0)} x2={x(last.daysAhead)} y1={y(nominal)} y2={y(nominal)} className={style.nominal} />
            <path d={pathOf(rows.map((row) => [x(row.daysAhead), y(row[key] ?? 0)]))} className={style.curve} />
            {rows.map((row) => (
              <rect
                key={row.daysAhead}
                x={x(row.daysAhead) - 4}
                y={y(row[key] ?? 0) - 4}
                width="8"
                height="8"
                className={style.square}
              />
            ))}
            <text x={x(last.daysAhead) + 10} y={y(last[key] ?? 0) + 4}>
              {t('quality.in', { share: percent(nominal) })}
            </text>
          </g>
        ))
      }
    </Chart>
  );
}
