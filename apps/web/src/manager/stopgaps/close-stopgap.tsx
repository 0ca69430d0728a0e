import { useDraft } from '../../data/draft.js';
import type { Stopgap } from '../../data/types.js';
import { usePost } from '../../data/use-post.js';
import { FormField } from '../../design/form-field.js';
import { useWords } from '../../words/words.js';
import { StopgapDecision } from './stopgap-decision.js';

const BECAUSE = ['done-otherwise', 'not-needed'] as const;

/** Its return is owed no more: the repair was made in another way, or nobody needs it. */
export function CloseStopgap({ id, today }: { readonly id: string; readonly today: string }) {
  const { t } = useWords();
  const empty = { because: 'done-otherwise', closedOn: today, reason: '' };
  const draft = useDraft(`stopgap-close.${id}`, empty);
  const { because, closedOn, reason } = draft.value;
  const close = usePost<Stopgap>(`/v1/stopgaps/${id}/close`, () => draft.drop(empty));
  return (
    <StopgapDecision
      title={t('stopgap.close')}
      what={t('stopgap.close-what')}
      press={t('stopgap.close-press')}
      isWhole={closedOn !== ''}
      reason={reason}
      onReason={(why) => draft.change({ reason: why })}
      sent={close}
      onDecide={(why) => close.mutate({ because, closedOn, reason: why })}
    >
      {(faults) => (
        <>
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
        </>
      )}
    </StopgapDecision>
  );
}
