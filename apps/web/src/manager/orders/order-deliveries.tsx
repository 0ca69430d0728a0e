import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { api } from '../../data/api.js';
import type { PartOrder } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { SureButton } from '../../design/sure-button.js';
import { useWords } from '../../words/words.js';
import { Trail } from '../trail/trail.js';
import { TakeBackDelivery } from './take-back-delivery.js';

interface Props {
  readonly order: PartOrder;
  readonly today: string;
}

/** What has come of an order, what is still to come, what is said when some of it comes, and what was said by whom. */
export function OrderDeliveries({ order, today }: Props) {
  const { t, dayOfYear, number } = useWords();
  const isOpen = Number(order.outstanding) > 0;
  return (
    <section className="stack">
      <h2>{t('order.deliveries')}</h2>
      <p role="status">
        {isOpen
          ? t('order.to-come', { n: number(Number(order.outstanding), 3), all: number(Number(order.quantity), 3) })
          : order.cancelledOn === null
            ? t('order.all-came')
            : t('order.cancelled', { day: dayOfYear(order.cancelledOn) })}
      </p>
      {isOpen ? <Open key={order.version} order={order} today={today} /> : null}
      {Number(order.receivedQuantity) > 0 ? <TakeBackDelivery key={`back ${order.version}`} order={order} /> : null}
      <Trail of={{ subjectId: order.id }} />
    </section>
  );
}

function Open({ order, today }: Props) {
  const { t } = useWords();
  const client = useQueryClient();
  // After a delivery no number is proposed: a second press would receive the rest as well.
  const [came, setCame] = useState(Number(order.receivedQuantity) === 0 ? order.outstanding : '');
  const [receivedOn, setReceivedOn] = useState(today);
  // The second press of a double one comes before the button is seen to be at work.
  const isSending = useRef(false);
  const change = useMutation({
    mutationFn: (body: object) => api.patch<PartOrder>(`/v1/part-orders/${order.id}`, body, order.version),
    onSettled: async () => {
      await client.invalidateQueries();
      isSending.current = false;
    },
  });
  const send = (body: object) => {
    if (isSending.current) return;
    isSending.current = true;
    change.mutate(body);
  };
  const quantity = came.trim().replace(',', '.');
  const isQuantity = /^\d{1,9}(\.\d{1,3})?$/.test(quantity) && Number(quantity) > 0;
  return (
    <>
      <form
        className="row"
        onSubmit={(event) => {
          event.preventDefault();
          send({ receivedOn, receivedQuantity: sumOf(order.receivedQuantity, quantity) });
        }}
      >
        <label className="field">
          <span className="label">{t('order.came')}</span>
          <input inputMode="decimal" value={came} onChange={(event) => setCame(event.target.value)} />
        </label>
        <label className="field">
          <span className="label">{t('order.came-on')}</span>
          <input type="date" max={today} value={receivedOn} onChange={(event) => setReceivedOn(event.target.value)} />
        </label>
        <button type="submit" className="press" disabled={!isQuantity || receivedOn === '' || change.isPending}>
          {t('order.receive')}
        </button>
      </form>
      <p>
        <SureButton
          label={t('order.cancel')}
          sureLabel={t('order.cancel-sure')}
          isPending={change.isPending}
          onSure={() => send({ cancelledOn: today })}
        />
      </p>
      <Failure error={change.error} />
    </>
  );
}

/** Quantities have three decimals at most: a sum of fractions would have more. */
const sumOf = (a: string, b: string) => String(Math.round((Number(a) + Number(b)) * 1000) / 1000);
