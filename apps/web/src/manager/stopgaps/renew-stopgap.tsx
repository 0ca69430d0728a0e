import { useDraft } from '../../data/draft.js';
import type { Stopgap } from '../../data/types.js';
import { usePost } from '../../data/use-post.js';
import { Failure } from '../../design/failure.js';
import { FormField } from '../../design/form-field.js';
import { faultsOf } from '../../words/faults.js';
import { useWords } from '../../words/words.js';
import style from '../register/register.module.css';

const EMPTY = { limitHours: '', limitOn: '', reason: '' };

/** It holds longer than was said: a new limit in place of the one it has. */
export function RenewStopgap({ id, today }: { readonly id: string; readonly today: string }) {
  const words = useWords();
  const { t } = words;
  const draft = useDraft(`stopgap-renew.${id}`, EMPTY);
  const { limitHours, limitOn, reason } = draft.value;
  const renew = usePost<Stopgap>(`/v1/stopgaps/${id}/renew`, () => draft.drop(EMPTY));
  const faults = faultsOf(renew.error, words);
  const isWhole = (limitHours !== '' || limitOn !== '') && reason.trim() !== '';
  return (
    <details>
      <summary>{t('stopgap.renew')}</summary>
      <form
        className="stack"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          renew.mutate({ limitHours: limitHours || null, limitOn: limitOn || null, reason: reason.trim() });
        }}
      >
        <p className="pencil">{t('stopgap.renew-what')}</p>
        <div className={style.form}>
          <FormField label={t('stopgap.hours-from-today')} fault={faults.get('limitHours')}>
            {(tied) => (
              <input
                {...tied}
                className="figure"
                inputMode="decimal"
                value={limitHours}
                onChange={(event) => draft.change({ limitHours: event.target.value.trim().replace(',', '.') })}
              />
            )}
          </FormField>
          <FormField label={t('stopgap.until')} fault={faults.get('limitOn')}>
            {(tied) => (
              <input
                {...tied}
                type="date"
                min={today}
                value={limitOn}
                onChange={(event) => draft.change({ limitOn: event.target.value })}
              />
            )}
          </FormField>
        </div>
        <FormField label={t('stopgap.why')} fault={faults.get('reason')}>
          {(tied) => (
            <input
              {...tied}
              maxLength={500}
              value={reason}
              onChange={(event) => draft.change({ reason: event.target.value })}
            />
          )}
        </FormField>
        <p>
          <button type="submit" className="press" disabled={!isWhole || renew.isPending}>
            {t('stopgap.renew-press')}
          </button>
        </p>
        <Failure error={renew.error} />
      </form>
    </details>
  );
}
