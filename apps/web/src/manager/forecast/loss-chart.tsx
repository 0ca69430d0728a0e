import { Chart, pathOf } from '../../design/chart.js';
import { useWords } from '../../words/words.js';
import style from './forecast.module.css';
import { type QualityRow, RULES } from './quality-rows.js';

const DASHES = ['8 4', '2 4', '12 3 2 3'];

/** Mean pinball loss by days ahead: ours as a full line, rules of thumb dashed, each with its name at its end. */
export function LossChart({ rows, longest }: { readonly rows: readonly QualityRow[]; readonly longest: number }) {
  const { t, number } = useWords();
  const high = Math.max(...rows.flatMap((row) => [row.pinballHours ?? 0, ...RULES.map((rule) => row[rule] ?? 0)]));
  const last = rows.at(-1)!;
  // Two rules that end close together are named above and below their lines.
  const isLower = (rule: (typeof RULES)[number]) =>
    RULES.some((other) => {
      const gap = (last[other] ?? 0) - (last[rule] ?? 0);
      return gap > 0 && gap < high * 0.08;
    });
  return (
    <Chart
      label={t('quality.loss-label')}
      x={[0, longest]}
      y={[0, high * 1.08]}
      xTicks={rows.map((row) => row.daysAhead)}
      xText={(value) => number(value)}
      yText={(value) => number(value, 1)}
      xTitle={t('quality.days-ahead')}
      yTitle={t('quality.loss-hours')}
      height={280}
    >
      {(x, y) => (
        <>
          {RULES.map((rule, index) => (
            <g key={rule}>
              <path
                d={pathOf(rows.map((row) => [x(row.daysAhead), y(row[rule] ?? 0)]))}
                className={style.rules}
                strokeDasharray={DASHES[index]}
              />
              <text x={x(last.daysAhead)} y={y(last[rule] ?? 0) + (isLower(rule) ? 16 : -8)} textAnchor="end">
                {t(`quality.${rule}`)}
              </text>
            </g>
          ))}
          <path d={pathOf(rows.map((row) => [x(row.daysAhead), y(row.pinballHours ?? 0)]))} className={style.curve} />
          {rows.map((row) => (
            <circle
              key={row.daysAhead}
              cx={x(row.daysAhead)}
              cy={y(row.pinballHours ?? 0)}
              r="4"
              className={style.ours}
            />
          ))}
          <text x={x(last.daysAhead)} y={y(last.pinballHours ?? 0) + 18} textAnchor="end">
            {t('quality.ours')}
          </text>
        </>
      )}
    </Chart>
  );
}
