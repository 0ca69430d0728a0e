import { useState } from 'react';
import type { PartOrder } from '../../data/types.js';
import { usePost } from '../../data/use-post.js';
import { Failure } from '../../design/failure.js';
import { FormField } from '../../design/form-field.js';
import { faultsOf } from '../../words/faults.js';
import { useWords } from '../../words/words.js';
import style from '../register/register.module.css';

/** Parts that were received by mistake leave the shelf, and are still to come. */
export function TakeBackDelivery({ order }: { readonly order: PartOrder }) {
  const words = useWords();
  const { t } = words;
  const [quantity, setQuantity] = useState(order.receivedQuantity);
  const [reason, setReason] = useState('');
  const [evenIfGone, setEvenIfGone] = useState(false);
  const takeBack = usePost<PartOrder>(`/v1/part-orders/${order.id}/take-back`, () => undefined);
  const faults = faultsOf(takeBack.error, words);
  return (
    <details>
      <summary>{t('order.take-back')}</summary>
      <form
        className="stack"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          takeBack.mutate({ quantity, reason: reason.trim(), evenIfGone });
        }}
      >
        <p className="pencil">{t('order.take-back-what')}</p>
        <div className={style.form}>
          <FormField label={t('order.take-back-many')} fault={faults.get('quantity')}>
            {(tied) => (
              <input
                {...tied}
                className="figure"
                inputMode="decimal"
                value={quantity}
                onChange={(event) => setQuantity(event.target.value.trim().replace(',', '.'))}
              />
            )}
          </FormField>
          <FormField label={t('stopgap.why')} fault={faults.get('reason')}>
            {(tied) => (
              <input {...tied} maxLength={500} value={reason} onChange={(event) => setReason(event.target.value)} />
            )}
          </FormField>
          <label className="check">
            <input type="checkbox" checked={evenIfGone} onChange={(event) => setEvenIfGone(event.target.checked)} />
            {t('order.even-if-gone')}
          </label>
        </div>
        <p>
          <button
            type="submit"
            className="press-quiet"
            disabled={quantity === '' || reason.trim() === '' || takeBack.isPending}
          >
            {t('order.take-back-press')}
          </button>
        </p>
        <Failure error={takeBack.error} />
      </form>
    </details>
  );
}
