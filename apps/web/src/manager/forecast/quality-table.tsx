import { Scrolling } from '../../design/scrolling.js';
import { useWords } from '../../words/words.js';
import style from './forecast.module.css';
import { type QualityRow, RANGES, RULES } from './quality-rows.js';

/** The charts as figures, for whoever would rather read. */
export function QualityTable({ rows }: { readonly rows: readonly QualityRow[] }) {
  const { t, number, percent } = useWords();
  const figure = (value: number | null) => (value === null ? '–' : number(value, 2));
  return (
    <section>
      <h2>{t('quality.table')}</h2>
      <Scrolling label={t('quality.table')}>
        <table className={style.figures}>
          <thead>
            <tr>
              <th scope="col">{t('quality.days-ahead')}</th>
              {[
                t('quality.judged'),
                ...RANGES.map(([, nominal]) => t('quality.in', { share: percent(nominal) })),
                t('quality.ours'),
                ...RULES.map((rule) => t(`quality.${rule}`)),
                t('quality.bias'),
              ].map((head) => (
                <th key={head} scope="col" className="number">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.daysAhead}>
                <th scope="row">{number(row.daysAhead)}</th>
                <td className="number">{number(row.judged)}</td>
                {RANGES.map(([key]) => (
                  <td key={key} className="number">
                    {row[key] === null ? '–' : percent(row[key])}
                  </td>
                ))}
                <td className="number">{figure(row.pinballHours)}</td>
                {RULES.map((rule) => (
                  <td key={rule} className="number">
                    {figure(row[rule])}
                  </td>
                ))}
                <td className="number">{figure(row.biasHours)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scrolling>
    </section>
  );
}
