import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { call } from '../../data/api.js';
import { readingsQuery } from '../../data/queries.js';
import type { Reading } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { useWords, type Words } from '../../words/words.js';
import { ReadingChart } from './reading-chart.js';
import style from './readings.module.css';

interface Props {
  readonly reading: Reading;
  readonly code: string;
  readonly site: string;
}

interface Decision {
  readonly decision: 'accept' | 'set-aside' | 'correct';
  readonly hours?: string;
  readonly reason?: string;
}

/** One doubtful reading: what is wrong, where it stands among its neighbours, and what to make of it. */
export function DoubtfulReading({ reading, code, site }: Props) {
  const words = useWords();
  const { t, hours, moment } = words;
  const client = useQueryClient();
  const all = useQuery(readingsQuery(reading.machineId)).data;
  const [typed, setTyped] = useState('');
  const decide = useMutation({
    mutationFn: (body: Decision) =>
      call<Reading>('POST', `/v1/readings/${reading.id}/decision`, { body, version: reading.version }),
    onSettled: () =>
      client.invalidateQueries({ predicate: ({ queryKey }) => queryKey[0] === 'readings' || queryKey[0] === 'shop' }),
  });
  const suggested = reading.suggestedHours;
  const isHours = /^\d{1,6}(\.\d{1,2})?$/.test(typed);
  return (
    <article className={style.reading} aria-label={t('readings.label', { code, hours: hours(reading.hours) })}>
      <div className="tight">
        <h2>
          <Link to="/machines/$id/forecast" params={{ id: reading.machineId }}>
            {code}
          </Link>{' '}
          <span className="pencil">{site}</span>
        </h2>
        <p className={`figure ${style.big}`}>{hours(reading.hours)}</p>
        <p className="pencil">
          {moment(reading.readAt)} · {t(`source.${reading.source}`)}
        </p>
        <p>{whyDoubted(reading, all ?? [], words)}</p>
      </div>
      <ReadingChart reading={reading} all={all ?? []} />
      <div className={style.decide}>
        {suggested === null ? null : (
          <button
            type="button"
            className="press"
            disabled={decide.isPending}
            onClick={() => decide.mutate({ decision: 'correct', hours: suggested })}
          >
            {t('readings.correct', { hours: hours(suggested) })}
          </button>
        )}
        <button
          type="button"
          className="press-quiet"
          disabled={decide.isPending}
          onClick={() => decide.mutate({ decision: 'accept' })}
        >
          {t('readings.accept', { hours: hours(reading.hours) })}
        </button>
        <button
          type="button"
          className="press-quiet"
          disabled={decide.isPending}
          onClick={() => decide.mutate({ decision: 'set-aside', reason: reading.reason || t('readings.refused') })}
        >
          {t('readings.refuse')}
        </button>
        <form
          className="row"
          onSubmit={(event) => {
            event.preventDefault();
            if (isHours) decide.mutate({ decision: 'correct', hours: typed });
          }}
        >
          <label className="field">
            <span className="label">{t('readings.other')}</span>
            <input
              className="figure"
              inputMode="decimal"
              size={8}
              value={typed}
              onChange={(event) => setTyped(event.target.value.replace(',', '.'))}
            />
          </label>
          <button type="submit" className="press-plain" disabled={!isHours || decide.isPending}>
            {t('readings.take')}
          </button>
        </form>
        <Failure error={decide.error} />
      </div>
    </article>
  );
}

/** What is wrong with it; of one that is less than before, what stood before. */
function whyDoubted(reading: Reading, all: readonly Reading[], { t, named, hours, dayOfYear }: Words): string {
  const before = all
    .toSorted((a, b) => (a.readAt < b.readAt ? -1 : 1))
    .findLast(
      (each) =>
        each.status === 'accepted' && each.readAt < reading.readAt && Number(each.hours) > Number(reading.hours),
    );
  if (reading.reasonCode !== 'backwards' || before === undefined) return named(`reading.${reading.reasonCode}`, '');
  return t('reading.less-than', { hours: hours(before.hours), day: dayOfYear(before.readAt.slice(0, 10)) });
}
