import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { partOrdersQuery, partsQuery } from '../../data/queries.js';
import type { PartOrder } from '../../data/types.js';
import { type Column, StackedTable } from '../../design/stacked-table.js';
import { useWords } from '../../words/words.js';

/** Parts on their way, the first to come first. */
export function ComingOrders({ today }: { readonly today: string }) {
  const { t, day, number, sentence } = useWords();
  const orders = useQuery(partOrdersQuery).data;
  const parts = useQuery(partsQuery).data;
  if (!orders || !parts) return null;
  const coming = orders.filter(({ outstanding }) => Number(outstanding) > 0);
  const partOf = new Map(parts.map((part) => [part.id, part]));
  const columns: Column<PartOrder>[] = [
    {
      head: t('field.expectedOn'),
      isLine: true,
      cell: ({ expectedOn }) => (
        <>
          {day(expectedOn)}
          {expectedOn < today ? <strong className="pencil"> {t('orders.overdue')}</strong> : null}
        </>
      ),
    },
    {
      head: t('orders.part'),
      isBare: true,
      cell: ({ partId }) => (
        <>
          {sentence(partOf.get(partId)?.description ?? '')} <span className="pencil">{partOf.get(partId)?.code}</span>
        </>
      ),
    },
    {
      head: t('field.outstanding'),
      isNumber: true,
      cell: ({ outstanding }) => number(Number(outstanding), 3),
    },
    { head: t('field.orderedOn'), cell: ({ orderedOn }) => day(orderedOn) },
    {
      head: t('orders.open'),
      isHeadUnseen: true,
      isBare: true,
      isLine: true,
      cell: ({ id }) => (
        <Link to="/register/$kind/$id" params={{ kind: 'part-orders', id }}>
          {t('orders.open')}
        </Link>
      ),
    },
  ];
  return (
    <section className="stack">
      <h2>{t('orders.coming')}</h2>
      {coming.length === 0 ? (
        <p className="note">{t('orders.coming-none')}</p>
      ) : (
        <StackedTable label={t('orders.coming')} columns={columns} rows={coming} keyOf={({ id }) => id} />
      )}
    </section>
  );
}
