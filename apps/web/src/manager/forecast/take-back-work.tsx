import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api } from '../../data/api.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';

/** Work that was recorded by mistake is due again; asked once more before it happens. */
export function TakeBackWork({ id, work }: { readonly id: string; readonly work: string }) {
  const { t } = useWords();
  const client = useQueryClient();
  const [isAsked, setIsAsked] = useState(false);
  const takeBack = useMutation({
    mutationFn: () => api.remove(`/v1/completions/${id}`),
    onSettled: () => client.invalidateQueries(),
  });
  return isAsked ? (
    <>
      <button type="button" className="press-quiet" disabled={takeBack.isPending} onClick={() => takeBack.mutate()}>
        {t('recorded.really', { work })}
      </button>
      <Failure error={takeBack.error} />
    </>
  ) : (
    <button
      type="button"
      className="press-plain"
      aria-label={t('recorded.take-back-of', { work })}
      onClick={() => setIsAsked(true)}
    >
      {t('recorded.take-back')}
    </button>
  );
}
