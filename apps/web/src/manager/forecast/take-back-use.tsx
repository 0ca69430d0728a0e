import { useState } from 'react';
import type { PartUse } from '../../data/types.js';
import { usePost } from '../../data/use-post.js';
import { Failure } from '../../design/failure.js';
import { FormField } from '../../design/form-field.js';
import { faultsOf } from '../../words/faults.js';
import { WHY_BACK } from '../../words/why-back.js';
import { useWords } from '../../words/words.js';

/** A used part that was recorded by mistake lies in stock again, and is charged no more: never without a reason. */
export function TakeBackUse({ id, part }: { readonly id: string; readonly part: string }) {
  const words = useWords();
  const { t } = words;
  const [because, setBecause] = useState<string>(WHY_BACK[0]);
  const [reason, setReason] = useState('');
  const takeBack = usePost<PartUse>(`/v1/part-uses/${id}/take-back`, () => undefined);
  const faults = faultsOf(takeBack.error, words);
  return (
    <details>
      <summary aria-label={t('recorded.take-back-of', { work: part })}>{t('recorded.take-back')}</summary>
      <form
        className="stack"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          takeBack.mutate({ because, reason: reason.trim() });
        }}
      >
        <p className="pencil">{t('recorded.taken-back-what')}</p>
        <FormField label={t('parts.why-back')} fault={faults.get('because')}>
          {(tied) => (
            <select {...tied} value={because} onChange={(event) => setBecause(event.target.value)}>
              {WHY_BACK.map((each) => (
                <option key={each} value={each}>
                  {t(`part-use.because.${each}`)}
                </option>
              ))}
            </select>
          )}
        </FormField>
        <FormField label={t('recorded.more-words')} fault={faults.get('reason')}>
          {(tied) => (
            <input {...tied} maxLength={500} value={reason} onChange={(event) => setReason(event.target.value)} />
          )}
        </FormField>
        <p>
          <button type="submit" className="press-quiet" disabled={takeBack.isPending}>
            {t('recorded.take-back-of', { work: part })}
          </button>
        </p>
        <Failure error={takeBack.error} />
      </form>
    </details>
  );
}
