import { useMutation, useQueryClient } from '@tanstack/react-query';
import { api } from '../../data/api.js';
import type { RoadCall } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';

/** Ends a call that needs no visit: it was settled by telephone, or told twice. */
export function CloseCall({ call }: { readonly call: RoadCall }) {
  const { t } = useWords();
  const client = useQueryClient();
  const close = useMutation({
    mutationFn: () => api.patch<RoadCall>(`/v1/road-calls/${call.id}`, { state: 'closed' }, call.version),
    onSettled: () => client.invalidateQueries({ predicate: ({ queryKey }) => queryKey[0] !== 'road-call-options' }),
  });
  return (
    <div className="tight">
      <button type="button" className="press-plain" disabled={close.isPending} onClick={() => close.mutate()}>
        {t('call.close')}
      </button>
      <Failure error={close.error} />
    </div>
  );
}
