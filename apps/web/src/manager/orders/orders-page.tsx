import { queryOptions, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { api } from '../../data/api.js';
import { partsQuery } from '../../data/queries.js';
import type { Part, OrderList as Wanted } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { type Column, StackedTable } from '../../design/stacked-table.js';
import { Why } from '../../design/why.js';
import { addDays } from '../../words/local-date.js';
import { useWords } from '../../words/words.js';
import { ComingOrders } from './coming-orders.js';

type Line = Wanted['lines'][number];
const WEEKS = [2, 4, 6, 12] as const;

const orderListQuery = (weeks: number) =>
  queryOptions({
    queryKey: ['order-list', weeks],
    queryFn: ({ signal }) => api.get<Wanted>(`/v1/order-list?weeks=${weeks}`, signal),
  });

/** What to order by when, so that no visit lacks a part. */
export function OrdersPage() {
  const { t, day } = useWords();
  const [weeks, setWeeks] = useState<number>(6);
  const { data, error } = useQuery(orderListQuery(weeks));
  if (error) throw error;
  if (!data) return <h1>{t('wait')}</h1>;
  const [first] = data.lines;
  return (
    <div className="stack">
      <title>{t('orders.page')}</title>
      <h1>{first ? t('orders.sentence', { n: data.lines.length, day: day(first.orderBy) }) : t('orders.none')}</h1>
      <label className="small pencil">
        {t('orders.within')}{' '}
        <select
          className="input"
          style={{ width: 'auto' }}
          value={weeks}
          onChange={(event) => setWeeks(Number(event.target.value))}
        >
          {WEEKS.map((each) => (
            <option key={each} value={each}>
              {t('due.weeks', { n: each })}
            </option>
          ))}
        </select>
      </label>
      {first ? <OrderList lines={data.lines} today={data.asOf} /> : null}
      <ComingOrders today={data.asOf} />
    </div>
  );
}

function OrderList({ lines, today }: { readonly lines: readonly Line[]; readonly today: string }) {
  const words = useWords();
  const { t, day, number } = words;
  const columns: Column<Line>[] = [
    {
      head: t('orders.by'),
      isLine: true,
      cell: ({ orderBy, isLate }) => (
        <>
          {day(orderBy)}
          {isLate ? <strong className="pencil"> {t('orders.late')}</strong> : null}
        </>
      ),
    },
    {
      head: t('orders.part'),
      isBare: true,
      cell: ({ name, code }) => (
        <>
          {words.sentence(name)} <span className="pencil">{code}</span>
        </>
      ),
    },
    { head: t('field.quantity'), isNumber: true, cell: ({ quantity }) => number(quantity) },
    {
      head: t('orders.needed'),
      cell: ({ firstNeededOn, certainty }) => (
        <>
          {day(firstNeededOn)} <span className="pencil">{t(`orders.${certainty}`)}</span>
        </>
      ),
    },
    {
      head: t('orders.for'),
      cell: ({ name, uses }) => (
        <Why label={t('orders.purposes', { n: uses.length })} title={words.sentence(name)}>
          <ul>
            {uses.map((use) => (
              <li key={`${use.title} ${use.siteName}`}>
                {words.work(use)}, {use.siteName}
              </li>
            ))}
          </ul>
        </Why>
      ),
    },
    {
      head: t('orders.ordered'),
      isBare: true,
      isLine: true,
      cell: (line) => <Ordered line={line} today={today} />,
    },
  ];
  return <StackedTable label={t('nav.orders')} columns={columns} rows={lines} keyOf={({ partId }) => partId} />;
}

function leadDaysOf(parts: readonly Part[], partId: string): number {
  return parts.find((part) => part.id === partId)?.leadDays ?? 0;
}

/** Notes that the part is ordered, and when it is to come: no day is proposed before the part's lead time is known. */
function Ordered({ line, today }: { readonly line: Line; readonly today: string }) {
  const { t } = useWords();
  const client = useQueryClient();
  const parts = useQuery(partsQuery).data;
  const [typed, setTyped] = useState<string | null>(null);
  const expectedOn = typed ?? (parts ? addDays(today, leadDaysOf(parts, line.partId)) : '');
  const key = useRef(crypto.randomUUID());
  const order = useMutation({
    mutationFn: () =>
      api.post(
        '/v1/part-orders',
        { partId: line.partId, quantity: String(line.quantity), orderedOn: today, expectedOn },
        key.current,
      ),
    onSettled: () => {
      key.current = crypto.randomUUID();
      return client.invalidateQueries();
    },
  });
  return (
    <div className="row">
      <label className="small">
        {t('orders.comes')}{' '}
        <input
          className="input"
          style={{ width: 'auto' }}
          type="date"
          min={today}
          value={expectedOn}
          onChange={(event) => setTyped(event.target.value)}
        />
      </label>
      <button
        type="button"
        className="press-quiet"
        disabled={order.isPending || expectedOn === ''}
        onClick={() => order.mutate()}
      >
        {t('orders.done', { code: line.code })}
      </button>
      <Failure error={order.error} />
    </div>
  );
}
