import { queryOptions, useQuery } from '@tanstack/react-query';
import { everyPage, queryOf } from '../../data/api.js';
import type { Completion } from '../../data/types.js';
import type { Column } from '../../design/stacked-table.js';
import { useWords } from '../../words/words.js';
import { useWorkName } from '../work-name.js';
import { RecordedList } from './recorded-list.js';
import { TakeBackWork } from './take-back-work.js';

const recordedQuery = (machineId: string) =>
  queryOptions({
    queryKey: ['completions', machineId],
    queryFn: ({ signal }) => everyPage<Completion>(`/v1/completions${queryOf({ machineId })}`, signal),
  });

/** The work recorded of a machine. */
export function RecordedWork({ machineId }: { readonly machineId: string }) {
  const { t, dayOfYear, hours } = useWords();
  const workName = useWorkName();
  const done = useQuery(recordedQuery(machineId)).data ?? [];
  const titleOf = ({ itemCode, slot }: Completion) => workName(itemCode, slot);
  const columns: Column<Completion>[] = [
    { head: t('due.work'), isBare: true, isLine: true, cell: titleOf },
    { head: t('recorded.on'), cell: ({ doneOn }) => dayOfYear(doneOn) },
    {
      head: t('recorded.at'),
      isNumber: true,
      cell: ({ meterHours }) => (meterHours === null ? '–' : hours(meterHours)),
    },
  ];
  return (
    <RecordedList
      title={t('recorded.title')}
      columns={columns}
      rows={done}
      takeBack={(row) => <TakeBackWork id={row.id} work={titleOf(row)} />}
    />
  );
}
