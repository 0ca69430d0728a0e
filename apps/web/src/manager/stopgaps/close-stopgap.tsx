import { useDraft } from '../../data/draft.js';
import type { Stopgap } from '../../data/types.js';
import { usePost } from '../../data/use-post.js';
import { Failure } from '../../design/failure.js';
import { FormField } from '../../design/form-field.js';
import { faultsOf } from '../../words/faults.js';
import { useWords } from '../../words/words.js';
import style from '../register/register.module.css';

const BECAUSE = ['done-otherwise', 'not-needed'] as const;

/** Its return is owed no more: the repair was made in another way, or nobody needs it. */
export function CloseStopgap({ id, today }: { readonly id: string; readonly today: string }) {
  const words = useWords();
  const { t } = words;
  const empty = { because: 'done-otherwise', closedOn: today, reason: '' };
  const draft = useDraft(`stopgap-close.${id}`, empty);
  const { because, closedOn, reason } = draft.value;
  const close = usePost<Stopgap>(`/v1/stopgaps/${id}/close`, () => draft.drop(empty));
  const faults = faultsOf(close.error, words);
  return (
    <details>
      <summary>{t('stopgap.close')}</summary>
      <form
        className="stack"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          close.mutate({ because, closedOn, reason: reason.trim() });
        }}
      >
        <p className="pencil">{t('stopgap.close-what')}</p>
        <div className={style.form}>
          <FormField label={t('stopgap.because')} fault={faults.get('because')}>
            {(tied) => (
              <select {...tied} value={because} onChange={(event) => draft.change({ because: event.target.value })}>
                {BECAUSE.map((each) => (
                  <option key={each} value={each}>
                    {t(`stopgap.because.${each}`)}
                  </option>
                ))}
              </select>
            )}
          </FormField>
          <FormField label={t('stopgap.closed-on')} fault={faults.get('closedOn')}>
            {(tied) => (
              <input
                {...tied}
                type="date"
                max={today}
                value={closedOn}
                onChange={(event) => draft.change({ closedOn: event.target.value })}
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
          <button type="submit" className="press" disabled={closedOn === '' || reason.trim() === '' || close.isPending}>
            {t('stopgap.close-press')}
          </button>
        </p>
        <Failure error={close.error} />
      </form>
    </details>
  );
}
