import { queryOptions, useQuery } from '@tanstack/react-query';
import { everyPage, queryOf } from '../../data/api.js';
import type { PartUse } from '../../data/types.js';
import type { Column } from '../../design/stacked-table.js';
import { useWords } from '../../words/words.js';
import { RecordedList } from './recorded-list.js';
import { TakeBackUse } from './take-back-use.js';

const partsQuery = (machineId: string) =>
  queryOptions({
    queryKey: ['part-uses', machineId],
    queryFn: ({ signal }) => everyPage<PartUse>(`/v1/part-uses${queryOf({ machineId })}`, signal),
  });

/** The parts recorded as used on a machine. */
export function RecordedParts({ machineId }: { readonly machineId: string }) {
  const { t, moment, number, sentence } = useWords();
  const used = useQuery(partsQuery(machineId)).data ?? [];
  const nameOf = ({ name, quantity }: PartUse) => `${number(Number(quantity), 3)} × ${sentence(name)}`;
  const columns: Column<PartUse>[] = [
    { head: t('recorded.part'), isBare: true, isLine: true, cell: nameOf },
    { head: t('recorded.used-at'), cell: ({ usedAt }) => moment(usedAt) },
  ];
  return (
    <RecordedList
      title={t('recorded.parts')}
      columns={columns}
      rows={used}
      takeBack={(row) => <TakeBackUse id={row.id} part={nameOf(row)} />}
    />
  );
}
