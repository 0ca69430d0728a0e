import { useDraft } from '../../data/draft.js';
import type { Stopgap } from '../../data/types.js';
import { usePost } from '../../data/use-post.js';
import { FormField } from '../../design/form-field.js';
import { useWords } from '../../words/words.js';
import { StopgapDecision } from './stopgap-decision.js';

const EMPTY = { limitHours: '', limitOn: '', reason: '' };

/** It holds longer than was said: a new limit in place of the one it has. */
export function RenewStopgap({ id, today }: { readonly id: string; readonly today: string }) {
  const { t } = useWords();
  const draft = useDraft(`stopgap-renew.${id}`, EMPTY);
  const { limitHours, limitOn, reason } = draft.value;
  const renew = usePost<Stopgap>(`/v1/stopgaps/${id}/renew`, () => draft.drop(EMPTY));
  return (
    <StopgapDecision
      title={t('stopgap.renew')}
      what={t('stopgap.renew-what')}
      press={t('stopgap.renew-press')}
      isWhole={limitHours !== '' || limitOn !== ''}
      reason={reason}
      onReason={(why) => draft.change({ reason: why })}
      sent={renew}
      onDecide={(why) => renew.mutate({ limitHours: limitHours || null, limitOn: limitOn || null, reason: why })}
    >
      {(faults) => (
        <>
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
        </>
      )}
    </StopgapDecision>
  );
}
