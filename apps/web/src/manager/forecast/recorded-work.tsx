import { queryOptions, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api, everyPage, queryOf } from '../../data/api.js';
import type { Completion } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { Scrolling } from '../../design/scrolling.js';
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
  return (
    <section>
      <h2>{t('recorded.title')}</h2>
      <Scrolling label={t('recorded.title')}>
        <table className="stacked">
          <thead>
            <tr>
              <th scope="col">{t('due.work')}</th>
              <th scope="col">{t('recorded.on')}</th>
              <th scope="col" className="number">
                {t('recorded.at')}
              </th>
              <th scope="col">
                <span className="unseen">{t('recorded.take-back')}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {done
              .slice(-SHOWN)
              .reverse()
              .map(({ id, itemCode, slot, doneOn, meterHours }) => {
                const title = workName(itemCode, slot);
                return (
                  <tr key={id}>
                    <th scope="row" data-whole>
                      {title}
                    </th>
                    <td data-head={t('recorded.on')}>{dayOfYear(doneOn)}</td>
                    <td className="number" data-head={t('recorded.at')}>
                      {meterHours === null ? '–' : hours(meterHours)}
                    </td>
                    <td>
                      {asked === id ? (
                        <button
                          type="button"
                          className="press-quiet"
                          disabled={takeBack.isPending}
                          onClick={() => takeBack.mutate(id)}
                        >
                          {t('recorded.really', { work: title })}
                        </button>
                      ) : (
                        <button
                          type="button"
                          className="press-plain"
                          aria-label={t('recorded.take-back-of', { work: title })}
                          onClick={() => setAsked(id)}
                        >
                          {t('recorded.take-back')}
                        </button>
                      )}
                    </td>
                  </tr>
                );
              })}
          </tbody>
        </table>
      </Scrolling>
      <Failure error={takeBack.error} />
    </section>
  );
}
