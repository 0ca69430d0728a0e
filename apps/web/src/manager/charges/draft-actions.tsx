import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRef } from 'react';
import { api } from '../../data/api.js';
import { useDraft } from '../../data/draft.js';
import type { ChargeDocument } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';

/** A draft is put right here, computed anew by the settings of today, and issued. */
export function DraftActions({ row }: { readonly row: ChargeDocument }) {
  const { t } = useWords();
  const client = useQueryClient();
  const { purchaseOrder, note } = row.document;
  const draft = useDraft(`charge.${row.id}`, { purchaseOrder, note });
  const key = useRef(crypto.randomUUID());
  const settled = () => client.invalidateQueries({ queryKey: ['charge-documents'] });
  const save = useMutation({
    mutationFn: () => api.patch<ChargeDocument>(`/v1/charge-documents/${row.id}`, draft.value, row.version),
    onSuccess: (saved) => draft.drop({ purchaseOrder: saved.document.purchaseOrder, note: saved.document.note }),
    onSettled: settled,
  });
  const issue = useMutation({
    mutationFn: () => api.post<ChargeDocument>(`/v1/charge-documents/${row.id}/issue`, {}, key.current),
    onSettled: () => {
      key.current = crypto.randomUUID();
      return settled();
    },
  });
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        save.mutate();
      }}
    >
      <label className="field">
        <span className="label">{t('charges.order')}</span>
        <input
          value={draft.value.purchaseOrder}
          maxLength={60}
          onChange={(event) => draft.change({ purchaseOrder: event.target.value })}
        />
      </label>
      <label className="field">
        <span className="label">{t('charges.note')}</span>
        <textarea
          value={draft.value.note}
          maxLength={1000}
          onChange={(event) => draft.change({ note: event.target.value })}
        />
      </label>
      <div className="row">
        <button
          type="button"
          className="press"
          disabled={issue.isPending || draft.touched}
          onClick={() => issue.mutate()}
        >
          {t('charges.issue')}
        </button>
        <button type="submit" className="press-quiet" disabled={save.isPending}>
          {t(draft.touched ? 'save' : 'charges.again')}
        </button>
      </div>
      <p className="pencil">{t(draft.touched ? 'charges.save-first' : 'charges.issue-what')}</p>
      <Failure error={save.error ?? issue.error} />
    </form>
  );
}
