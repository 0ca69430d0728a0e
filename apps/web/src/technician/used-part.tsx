import type { ReactNode } from 'react';
import type { KeptRecord } from '../offline/field-store.js';
import { outbox } from '../offline/outbox.js';
import { useWords } from '../words/words.js';
import type { Recorder } from './recorder.js';
import { TakeBackSent } from './take-back-sent.js';
import style from './technician.module.css';
import { type PartMeant, quantityOf, usedOf } from './used-of.js';
import { WhyRefused } from './why-refused.js';

interface Props {
  readonly part: PartMeant & { readonly unit: string };
  /** What is kept of the machine. */
  readonly kept: readonly KeptRecord[];
  readonly record: Recorder;
  readonly children?: ReactNode;
}

/**
 * How much of a part is recorded, and what the service refused of it, with the reason; it can be taken back, the last first.
 */
export function UsedPart({ part, kept, record, children }: Props) {
  const { t, number, sentence } = useWords();
  const { quantity, waiting, sent, refused } = usedOf(part, kept);
  const last = waiting.at(-1);
  const lastSent = last ? undefined : sent.at(-1);
  const named = (n: number) => ({
    quantity: t('parts.amount', { n: number(n, 2), q: n, unit: part.unit }),
    part: sentence(part.name),
  });
  return (
    <div className="tight">
      {quantity > 0 ? (
        <p className={style.used} role="status">
          {t('parts.recorded', named(quantity))} {last ? <span className="pencil">{t('parts.not-sent')}</span> : null}
        </p>
      ) : null}
      <div className="row">
        {children}
        {last ? <TakeBack record={last} label={t('unsent.take-back')} /> : null}
        {lastSent ? <TakeBackSent key={lastSent.id} used={lastSent} record={record} /> : null}
      </div>
      {refused.map((each) => (
        <div key={each.id} className="note clay tight">
          <p>
            <strong>{t('parts.refused', named(quantityOf([each])))}</strong>
          </p>
          <WhyRefused record={each} />
          <TakeBack record={each} label={t('unsent.throw-away')} />
        </div>
      ))}
    </div>
  );
}

function TakeBack({ record, label }: { readonly record: KeptRecord; readonly label: string }) {
  return (
    <button
      type="button"
      className="press-plain"
      onClick={(event) => {
        // a double press takes back one record, not two
        if (event.detail <= 1) void outbox.takeBack(record);
      }}
    >
      {label}
    </button>
  );
}
