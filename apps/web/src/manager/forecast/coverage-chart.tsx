import { Chart, pathOf } from '../../design/chart.js';
import { useWords } from '../../words/words.js';
import style from './forecast.module.css';
import { type QualityRow, RANGES } from './quality-rows.js';

/** Shares inside the 50, 80 and 95 % ranges against what was promised. */
export function CoverageChart({ rows, longest }: { readonly rows: readonly QualityRow[]; readonly longest: number }) {
  const { t, number, percent } = useWords();
  return (
    <Chart
      label={t('quality.coverage-label')}
      x={[0, longest]}
      y={[0.3, 1]}
      xTicks={rows.map((row) => row.daysAhead)}
      xText={(value) => number(value)}
      yText={percent}
      xTitle={t('quality.days-ahead')}
      yTitle={t('quality.share-inside')}
      height={280}
    >
      {(x, y) =>
        RANGES.map(([key, nominal]) => (
          <g key={key}>
            <line x1={x(0)} x2={x(longest)} y1={y(nominal)} y2={y(nominal)} className={style.nominal} />
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
            <text x={x(0) + 4} y={y(nominal) - 5}>
              {t('quality.promised', { share: percent(nominal) })}
            </text>
          </g>
        ))
      }
    </Chart>
  );
}
