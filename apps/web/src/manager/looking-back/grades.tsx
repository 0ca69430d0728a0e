import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { partsQuery } from '../../data/queries.js';
import { Failure } from '../../design/failure.js';
import { useWords, type Words } from '../../words/words.js';
import { Assumptions, Figures } from './figures.js';
import { GradeCurves } from './grade-curves.js';
import { type GradeComparison, gradesQuery, partsOnRecordQuery } from './queries.js';

/** Does one grade of a part outlast another here, or can the data not tell? Begins with the two most often fitted. */
export function Grades({ itemCode }: { readonly itemCode: string }) {
  const words = useWords();
  const { t, number, percent } = words;
  const parts = useQuery(partsQuery).data;
  const onRecord = useQuery(partsOnRecordQuery({ itemCode })).data;
  const [typed, setTyped] = useState<Readonly<{ first?: string; second?: string }>>({});
  const fitted = onRecord?.parts ?? [];
  const first = typed.first ?? fitted[0] ?? '';
  const second = typed.second ?? fitted[1] ?? '';
  const isWhole = first !== '' && second !== '' && first !== second;
  const { data, error } = useQuery({ ...gradesQuery({ itemCode, first, second }), enabled: isWhole });
  if (!parts || !onRecord) return null;
  const nameOf = (code: string) => parts.find((part) => part.code === code)?.description ?? '';
  const select = (label: string, value: string, change: (code: string) => void) => (
    <label className="field">
      <span className="label">{label}</span>
      <select value={value} onChange={(event) => change(event.target.value)}>
        {fitted.map((code) => (
          <option key={code} value={code}>
            {code} {nameOf(code)}
          </option>
        ))}
      </select>
    </label>
  );
  return (
    <section className="tight">
      <h2>{t('back.grades')}</h2>
      {fitted.length < 2 ? (
        <p className="pencil">{t('back.one-grade')}</p>
      ) : (
        <div className="row">
          {select(t('back.first'), first, (code) => setTyped({ ...typed, first: code }))}
          {select(t('back.second'), second, (code) => setTyped({ ...typed, second: code }))}
        </div>
      )}
      <Failure error={error} />
      {data ? (
        <>
          <p>
            <strong>{t(`back.verdict.${data.verdict}`, { first: data.grades[0]!, second: data.grades[1]! })}</strong>{' '}
            {t('back.grade-counts', {
              firstLives: number(data.lives[0]!),
              firstFailures: number(data.failures[0]!),
              secondLives: number(data.lives[1]!),
              secondFailures: number(data.failures[1]!),
            })}{' '}
            {ratioInWords(data, words)} {data.logRankP === null ? '' : logRankInWords(data.logRankP, words)}
          </p>
          <GradeCurves comparison={data} />
          <Figures
            label={t('back.grades')}
            heads={[
              t('back.part'),
              t('back.age'),
              t('back.at-risk'),
              t('back.still-running'),
              t('back.low'),
              t('back.high'),
            ]}
            rows={data.points.flatMap((points, which) =>
              points.map((point) => [
                data.grades[which]!,
                number(point.ageHours, 1),
                number(point.atRisk),
                percent(point.survival),
                percent(point.low),
                percent(point.high),
              ]),
            )}
          />
          <Assumptions statement={data.sentence} lines={data.assumptions} />
        </>
      ) : null}
    </section>
  );
}

/** How many times as long the longer lasting grade lasts; empty while that cannot be reckoned. */
function ratioInWords({ grades, ratio, interval, level }: GradeComparison, { t, number, percent }: Words): string {
  if (ratio === null || interval === null || ratio <= 0) return '';
  const inverse = (value: number | null) => (value === null ? 0 : value <= 0 ? null : 1 / value);
  const isFirst = ratio >= 1;
  const [low, high] = isFirst ? [interval.low, interval.high] : [inverse(interval.high), inverse(interval.low)];
  return t('back.ratio', {
    longer: grades[isFirst ? 0 : 1]!,
    shorter: grades[isFirst ? 1 : 0]!,
    ratio: number(isFirst ? ratio : 1 / ratio, 2),
    level: percent(level),
    low: number(low ?? 0, 2),
    high: high === null ? t('back.no-bound') : number(high, 2),
  });
}

/** Smaller ones are not told apart. */
const LEAST_P = 0.001;

function logRankInWords(p: number, { t, number }: Words): string {
  return p < LEAST_P ? t('back.log-rank-below', { p: number(LEAST_P, 3) }) : t('back.log-rank', { p: number(p, 3) });
}
