import { queryOptions, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { api } from '../../data/api.js';
import type { ExtraTime, Technician } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';
import style from './week.module.css';

const extraTimeQuery = (weekOf: string) =>
  queryOptions({
    queryKey: ['extra-time', weekOf],
    queryFn: ({ signal }) => api.get<ExtraTime>(`/v1/week/extra-time?weekOf=${weekOf}`, signal),
  });

/** On whose day a little more time would save most; asked for when it is opened. */
export function ExtraTimeWorth({
  weekOf,
  technicians,
}: {
  readonly weekOf: string;
  readonly technicians: readonly Technician[];
}) {
  const words = useWords();
  const { t, money, day } = words;
  const [isOpen, setOpen] = useState(false);
  const { data, error } = useQuery({ ...extraTimeQuery(weekOf), enabled: isOpen, retry: false });
  const rows = (data?.days ?? []).filter((each) => each.cents > 0).toSorted((a, b) => b.cents - a.cents);
  return (
    <details className={style.extra} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{t('extra.title')}</summary>
      {data && rows.length === 0 ? <p className="pencil">{t('extra.none')}</p> : null}
      <ul>
        {rows.map((row) => (
          <li key={row.technicianId + row.date}>
            <strong>{money(row.cents)}</strong>{' '}
            {t('extra.line', {
              technician: technicians.find((each) => each.id === row.technicianId)?.name ?? '',
              day: day(row.date),
              minutes: data!.minutes,
            })}{' '}
            <span className="pencil">
              {row.itemId === null
                ? t('extra.overtime')
                : t('extra.item', {
                    item: words.work({ code: row.itemId.split('/')[1] ?? '', title: row.title ?? '' }),
                  })}
            </span>
          </li>
        ))}
      </ul>
      <Failure error={error} />
    </details>
  );
}
