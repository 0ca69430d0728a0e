import { useQuery } from '@tanstack/react-query';
import { qualityQuery } from '../../data/queries.js';
import { useWords } from '../../words/words.js';
import { CoverageChart } from './coverage-chart.js';
import { LossChart } from './loss-chart.js';
import { type QualityRow } from './quality-rows.js';
import { QualityTable } from './quality-table.js';

/** How good past forecasts were: did outcomes fall inside the ranges as often as promised, and how do rules of thumb compare. */
export function QualityPage() {
  const { t, percent, day } = useWords();
  const { data, error } = useQuery(qualityQuery);
  if (error) throw error;
  if (!data) return <h1>{t('quality.reckoning')}</h1>;
  const rows = data.rows.filter((row) => row.judged > 0);
  const month = rows.find((row) => row.daysAhead === 30) ?? rows.toSorted((a, b) => b.judged - a.judged)[0];
  const longest = Math.max(1, ...rows.map((row) => row.daysAhead)) + 4;
  const sentence = (row: QualityRow) => {
    const below = row.belowBestRule;
    const inside = t('quality.sentence', {
      judged: row.judged,
      days: row.daysAhead,
      share: percent(row.coverage80 ?? 0),
    });
    if (below === null) return inside;
    return `${inside} ${t(below >= 0 ? 'quality.smaller' : 'quality.larger', { share: percent(Math.abs(below)) })}`;
  };
  return (
    <div className="stack">
      <title>{t('quality.page')}</title>
      {data.asOf === null ? null : <p className="pencil">{t('quality.as-of', { day: day(data.asOf) })}</p>}
      <h1>{month === undefined ? t('quality.none') : sentence(month)}</h1>
      {rows.length === 0 ? null : (
        <>
          <section className="tight">
            <h2>{t('quality.coverage')}</h2>
            <p className="pencil">{t('quality.coverage-text')}</p>
            <CoverageChart rows={rows} />
          </section>
          <section className="tight">
            <h2>{t('quality.loss')}</h2>
            <p className="pencil">{t('quality.loss-text')}</p>
            <LossChart rows={rows} longest={longest} />
          </section>
          <QualityTable rows={rows} />
        </>
      )}
    </div>
  );
}
