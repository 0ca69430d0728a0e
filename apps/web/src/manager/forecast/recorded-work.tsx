import { queryOptions, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api, everyPage, queryOf } from '../../data/api.js';
import type { Completion } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { type Column, StackedTable } from '../../design/stacked-table.js';
import { useWords } from '../../words/words.js';
import { useWorkName } from '../work-name.js';

const SHOWN = 12;

const recordedQuery = (machineId: string) =>
  queryOptions({
    queryKey: ['completions', machineId],
    queryFn: ({ signal }) => everyPage<Completion>(`/v1/completions${queryOf({ machineId })}`, signal),
  });

/** The work recorded of a machine, newest first: what was recorded by mistake is taken back here. */
export function RecordedWork({ machineId }: { readonly machineId: string }) {
  const { t, dayOfYear, hours } = useWords();
  const workName = useWorkName();
  const client = useQueryClient();
  const [asked, setAsked] = useState<string | null>(null);
  const done = useQuery(recordedQuery(machineId)).data ?? [];
  const takeBack = useMutation({
    mutationFn: (id: string) => api.remove(`/v1/completions/${id}`),
    onSettled: () => client.invalidateQueries(),
  });
  if (done.length === 0) return null;
  const titleOf = ({ itemCode, slot }: Completion) => workName(itemCode, slot);
  const columns: Column<Completion>[] = [
    { head: t('due.work'), isBare: true, isLine: true, cell: titleOf },
    { head: t('recorded.on'), cell: ({ doneOn }) => dayOfYear(doneOn) },
    {
      head: t('recorded.at'),
      isNumber: true,
      cell: ({ meterHours }) => (meterHours === null ? '–' : hours(meterHours)),
    },
    {
      head: t('recorded.take-back'),
      isHeadUnseen: true,
      isBare: true,
      cell: (each) =>
        asked === each.id ? (
          <button
            type="button"
            className="press-quiet"
            disabled={takeBack.isPending}
            onClick={() => takeBack.mutate(each.id)}
          >
            {t('recorded.really', { work: titleOf(each) })}
          </button>
        ) : (
          <button
            type="button"
            className="press-plain"
            aria-label={t('recorded.take-back-of', { work: titleOf(each) })}
            onClick={() => setAsked(each.id)}
          >
            {t('recorded.take-back')}
          </button>
        ),
    },
  ];
  return (
    <section>
      <h2>{t('recorded.title')}</h2>
      <StackedTable
        label={t('recorded.title')}
        columns={columns}
        rows={done.slice(-SHOWN).reverse()}
        keyOf={({ id }) => id}
      />
      <Failure error={takeBack.error} />
    </section>
  );
}
