import type { ReactNode } from 'react';
import type { KeptRecord } from '../offline/field-store.js';
import { outbox } from '../offline/outbox.js';
import { useWords } from '../words/words.js';
import style from './technician.module.css';
import { type PartMeant, usedOf } from './used-of.js';

interface Props {
  readonly part: PartMeant & { readonly unit: string };
  /** What is kept of the machine. */
  readonly kept: readonly KeptRecord[];
  readonly children?: ReactNode;
}

/** How much of a part is recorded; what has not left the device can be taken back, the last first. */
export function UsedPart({ part, kept, children }: Props) {
  const { t, number, sentence } = useWords();
  const { quantity, notSent } = usedOf(part, kept);
  const last = notSent.at(-1);
  return (
    <div className="tight">
      <p className={style.used} role="status">
        {t('parts.recorded', {
          quantity: t('parts.amount', { n: number(quantity, 2), q: quantity, unit: part.unit }),
          part: sentence(part.name),
        })}{' '}
        {last ? <span className="pencil">{t('parts.not-sent')}</span> : null}
      </p>
      <div className="row">
        {children}
        {last ? (
          <button
            type="button"
            className="press-plain"
            onClick={(event) => {
              // a double press takes back one record, not two
              if (event.detail <= 1) void outbox.takeBack(last);
            }}
          >
            {t('unsent.take-back')}
          </button>
        ) : null}
      </div>
    </div>
  );
}
