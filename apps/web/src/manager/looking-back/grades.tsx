import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { describeFailure } from '../../app/failed.js';
import { partsQuery } from '../../data/queries.js';
import { useWords } from '../../words/words.js';
import { Assumptions } from './figures.js';
import { gradesQuery } from './queries.js';

/** Does one grade of a part outlast another here, or can the data not tell? */
export function Grades({ itemCode }: { readonly itemCode: string }) {
  const { t, number } = useWords();
  const parts = useQuery(partsQuery).data ?? [];
  const [first, setFirst] = useState('');
  const [second, setSecond] = useState('');
  const isWhole = first !== '' && second !== '' && first !== second;
  const { data, error } = useQuery({ ...gradesQuery({ itemCode, first, second }), enabled: isWhole });
  const select = (label: string, value: string, change: (code: string) => void) => (
    <label className="field">
      <span className="label">{label}</span>
      <select value={value} onChange={(event) => change(event.target.value)}>
        <option value="">–</option>
        {parts.map((part) => (
          <option key={part.id} value={part.code}>
            {part.code} {part.description}
          </option>
        ))}
      </select>
    </label>
  );
  return (
    <section className="tight">
      <h2>{t('back.grades')}</h2>
      <div className="row">
        {select(t('back.first'), first, setFirst)}
        {select(t('back.second'), second, setSecond)}
      </div>
      {error ? <p className="note clay">{describeFailure(error, t)}</p> : null}
      {data ? (
        <>
          <p>
            <strong>{t(`back.verdict.${data.verdict}`, { first: data.grades[0]!, second: data.grades[1]! })}</strong>{' '}
            {t('back.grade-counts', {
              firstLives: data.lives[0]!,
              firstFailures: data.failures[0]!,
              secondLives: data.lives[1]!,
              secondFailures: data.failures[1]!,
            })}{' '}
            {data.ratio === null ? '' : t('back.ratio', { ratio: number(data.ratio, 2) })}
          </p>
          <Assumptions statement={data.sentence} lines={data.assumptions} />
        </>
      ) : null}
    </section>
  );
}
