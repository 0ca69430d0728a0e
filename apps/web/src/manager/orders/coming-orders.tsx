import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { partOrdersQuery, partsQuery } from '../../data/queries.js';
import { Scrolling } from '../../design/scrolling.js';
import { useWords } from '../../words/words.js';

/** Parts on their way, the first to come first. */
export function ComingOrders({ today }: { readonly today: string }) {
  const { t, day, number, sentence } = useWords();
  const orders = useQuery(partOrdersQuery).data;
  const parts = useQuery(partsQuery).data;
  if (!orders || !parts) return null;
  const coming = orders.filter(({ outstanding }) => Number(outstanding) > 0);
  const partOf = new Map(parts.map((part) => [part.id, part]));
  return (
    <section className="stack">
      <h2>{t('orders.coming')}</h2>
      {coming.length === 0 ? (
        <p className="note">{t('orders.coming-none')}</p>
      ) : (
        <Scrolling label={t('orders.coming')}>
          <table className="stacked">
            <thead>
              <tr>
                <th scope="col">{t('field.expectedOn')}</th>
                <th scope="col">{t('orders.part')}</th>
                <th scope="col" className="number">
                  {t('field.outstanding')}
                </th>
                <th scope="col">{t('field.orderedOn')}</th>
                <th scope="col">
                  <span className="unseen">{t('orders.open')}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {coming.map((order) => (
                <tr key={order.id}>
                  <th scope="row" data-head={t('field.expectedOn')} data-whole>
                    {day(order.expectedOn)}
                    {order.expectedOn < today ? <strong className="pencil"> {t('orders.overdue')}</strong> : null}
                  </th>
                  <td>
                    {sentence(partOf.get(order.partId)?.description ?? '')}{' '}
                    <span className="pencil">{partOf.get(order.partId)?.code}</span>
                  </td>
                  <td className="number" data-head={t('field.outstanding')}>
                    {number(Number(order.outstanding), 3)}
                  </td>
                  <td data-head={t('field.orderedOn')}>{day(order.orderedOn)}</td>
                  <td data-whole>
                    <Link to="/register/$kind/$id" params={{ kind: 'part-orders', id: order.id }}>
                      {t('orders.open')}
                    </Link>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scrolling>
      )}
    </section>
  );
}
