import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useRef, useState } from 'react';
import { api } from '../../data/api.js';
import type { ChargeDocument } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';

/** An issued document stays as it is: it is taken back whole, or taken back and drafted anew. */
export function IssuedActions({ row }: { readonly row: ChargeDocument }) {
  const { t } = useWords();
  const client = useQueryClient();
  const navigate = useNavigate();
  const [reason, setReason] = useState('');
  const key = useRef(crypto.randomUUID());
  const act = useMutation({
    mutationFn: (what: 'credit' | 'amend') =>
      api.post<ChargeDocument>(`/v1/charge-documents/${row.id}/${what}`, { reason: reason.trim() }, key.current),
    onSuccess: (made) => navigate({ to: '/charges/$id', params: { id: made.id } }),
    onSettled: () => {
      key.current = crypto.randomUUID();
      return client.invalidateQueries({ queryKey: ['charge-documents'] });
    },
  });
  if (row.document.kind === 'credit' || row.creditedById !== null) return null;
  return (
    <form className="stack" onSubmit={(event) => event.preventDefault()}>
      <h2>{t('charges.put-right')}</h2>
      <label className="field">
        <span className="label">{t('field.reason')}</span>
        <input value={reason} maxLength={500} onChange={(event) => setReason(event.target.value)} />
      </label>
      <div className="row">
        {(['amend', 'credit'] as const).map((what) => (
          <button
            key={what}
            type="button"
            className="press-quiet"
            disabled={reason.trim() === '' || act.isPending}
            onClick={() => act.mutate(what)}
          >
            {t(`charges.${what}`)}
          </button>
        ))}
      </div>
      <Failure error={act.error} />
    </form>
  );
}
