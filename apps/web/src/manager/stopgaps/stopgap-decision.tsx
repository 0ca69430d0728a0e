import type { ReactNode } from 'react';
import { Failure } from '../../design/failure.js';
import { FormField } from '../../design/form-field.js';
import { faultsOf } from '../../words/faults.js';
import { useWords } from '../../words/words.js';
import style from '../register/register.module.css';

interface Props {
  readonly title: string;
  readonly what: string;
  readonly press: string;
  /** What is decided, field by field. */
  readonly children: (faults: ReadonlyMap<string, string>) => ReactNode;
  readonly isWhole: boolean;
  readonly reason: string;
  readonly onReason: (reason: string) => void;
  readonly sent: { readonly error: unknown; readonly isPending: boolean };
  readonly onDecide: (reason: string) => void;
}

/** Something decided about a stopgap at the desk, never without a reason. */
export function StopgapDecision({ title, what, press, children, isWhole, reason, onReason, sent, onDecide }: Props) {
  const words = useWords();
  const faults = faultsOf(sent.error, words);
  return (
    <details>
      <summary>{title}</summary>
      <form
        className="stack"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          onDecide(reason.trim());
        }}
      >
        <p className="pencil">{what}</p>
        <div className={style.form}>{children(faults)}</div>
        <FormField label={words.t('stopgap.why')} fault={faults.get('reason')}>
          {(tied) => (
            <input {...tied} maxLength={500} value={reason} onChange={(event) => onReason(event.target.value)} />
          )}
        </FormField>
        <p>
          <button type="submit" className="press" disabled={!isWhole || reason.trim() === '' || sent.isPending}>
            {press}
          </button>
        </p>
        <Failure error={sent.error} />
      </form>
    </details>
  );
}
