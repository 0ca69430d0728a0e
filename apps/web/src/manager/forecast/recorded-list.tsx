import type { ReactNode } from 'react';
import { type Column, StackedTable } from '../../design/stacked-table.js';
import { useWords } from '../../words/words.js';

const SHOWN = 12;

interface Props<T> {
  readonly title: string;
  readonly columns: readonly Column<T>[];
  /** In order of time. */
  readonly rows: readonly T[];
  /** Where a row is taken back. */
  readonly takeBack: (row: T) => ReactNode;
}

/** What was recorded of a machine, newest first: what was recorded by mistake is taken back here. */
export function RecordedList<T extends { readonly id: string }>({ title, columns, rows, takeBack }: Props<T>) {
  const { t } = useWords();
  if (rows.length === 0) return null;
  const taking: Column<T> = { head: t('recorded.take-back'), isHeadUnseen: true, isBare: true, cell: takeBack };
  return (
    <section>
      <h2>{title}</h2>
      <StackedTable
        label={title}
        columns={[...columns, taking]}
        rows={rows.slice(-SHOWN).reverse()}
        keyOf={({ id }) => id}
      />
    </section>
  );
}
