import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api } from '../../data/api.js';
import { Failure } from '../../design/failure.js';
import { type Column, StackedTable } from '../../design/stacked-table.js';
import { useWords } from '../../words/words.js';

const SHOWN = 12;

interface Props<T> {
  readonly title: string;
  readonly columns: readonly Column<T>[];
  /** In order of time. */
  readonly rows: readonly T[];
  /** Where a row is removed. */
  readonly path: (row: T) => string;
  readonly nameOf: (row: T) => string;
  /** Asked before it happens. */
  readonly really: (row: T) => string;
}

/** What was recorded of a machine, newest first: what was recorded by mistake is taken back here. */
export function RecordedList<T extends { readonly id: string }>({
  title,
  columns,
  rows,
  path,
  nameOf,
  really,
}: Props<T>) {
  const { t } = useWords();
  const client = useQueryClient();
  const [asked, setAsked] = useState<string | null>(null);
  const takeBack = useMutation({
    mutationFn: (row: T) => api.remove(path(row)),
    onSettled: () => client.invalidateQueries(),
  });
  if (rows.length === 0) return null;
  const taking: Column<T> = {
    head: t('recorded.take-back'),
    isHeadUnseen: true,
    isBare: true,
    cell: (row) =>
      asked === row.id ? (
        <button
          type="button"
          className="press-quiet"
          disabled={takeBack.isPending}
          onClick={() => takeBack.mutate(row)}
        >
          {really(row)}
        </button>
      ) : (
        <button
          type="button"
          className="press-plain"
          aria-label={t('recorded.take-back-of', { work: nameOf(row) })}
          onClick={() => setAsked(row.id)}
        >
          {t('recorded.take-back')}
        </button>
      ),
  };
  return (
    <section>
      <h2>{title}</h2>
      <StackedTable
        label={title}
        columns={[...columns, taking]}
        rows={rows.slice(-SHOWN).reverse()}
        keyOf={({ id }) => id}
      />
      <Failure error={takeBack.error} />
    </section>
  );
}
