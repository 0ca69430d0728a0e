import { queryOptions, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { api } from '../../data/api.js';
import { partsQuery } from '../../data/queries.js';
import type { OrderList, Part } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { Scrolling } from '../../design/scrolling.js';
import { Why } from '../../design/why.js';
import { addDays } from '../../words/local-date.js';
import { useWords } from '../../words/words.js';
import { ComingOrders } from './coming-orders.js';

type Line = OrderList['lines'][number];
const WEEKS = [2, 4, 6, 12] as const;

const orderListQuery = (weeks: number) =>
  queryOptions({
    queryKey: ['order-list', weeks],
    queryFn: ({ signal }) => api.get<OrderList>(`/v1/order-list?weeks=${weeks}`, signal),
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
      {first ? (
        <Scrolling label={t('nav.orders')}>
          <table className="stacked">
            <thead>
              <tr>
                <th scope="col">{t('orders.by')}</th>
                <th scope="col">{t('orders.part')}</th>
                <th scope="col" className="number">
                  {t('field.quantity')}
                </th>
                <th scope="col">{t('orders.needed')}</th>
                <th scope="col">{t('orders.for')}</th>
                <th scope="col">{t('orders.ordered')}</th>
              </tr>
            </thead>
            <tbody>
              {data.lines.map((line) => (
                <OrderRow key={line.partId} line={line} today={data.asOf} />
              ))}
            </tbody>
          </table>
        </Scrolling>
      ) : null}
      <ComingOrders today={data.asOf} />
    </div>
  );
}

function OrderRow({ line, today }: { readonly line: Line; readonly today: string }) {
  const words = useWords();
  const { t, day, number } = words;
  return (
    <tr>
      <th scope="row" data-head={t('orders.by')} data-whole>
        {day(line.orderBy)}
        {line.isLate ? <strong className="pencil"> {t('orders.late')}</strong> : null}
      </th>
      <td>
        {words.sentence(line.name)} <span className="pencil">{line.code}</span>
      </td>
      <td className="number" data-head={t('field.quantity')}>
        {number(line.quantity)}
      </td>
      <td data-head={t('orders.needed')}>
        {day(line.firstNeededOn)} <span className="pencil">{t(`orders.${line.certainty}`)}</span>
      </td>
      <td data-head={t('orders.for')}>
        <Why label={t('orders.purposes', { n: line.uses.length })} title={words.sentence(line.name)}>
          <ul>
            {line.uses.map((use) => (
              <li key={`${use.title} ${use.siteName}`}>
                {words.work(use)}, {use.siteName}
              </li>
            ))}
          </ul>
        </Why>
      </td>
      <td data-whole>
        <Ordered line={line} today={today} />
      </td>
    </tr>
  );
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
