import { useDraft } from '../../data/draft.js';
import { usePost } from '../../data/use-post.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';

const EMPTY = { reason: '' };

/** An issued document does not charge what is on record by now, and may stay so: never without a reason. */
export function LeaveAsItIs({ id }: { readonly id: string }) {
  const { t } = useWords();
  const draft = useDraft(`document-leave.${id}`, EMPTY);
  const leave = usePost(`/v1/charge-documents/${id}/leave`, () => draft.drop(EMPTY));
  const reason = draft.value.reason.trim();
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        leave.mutate({ reason });
      }}
    >
      <label className="field">
        <span className="label">{t('charges.why-left')}</span>
        <input
          value={draft.value.reason}
          maxLength={500}
          onChange={(event) => draft.change({ reason: event.target.value })}
        />
      </label>
      <p>
        <button type="submit" className="press-quiet" disabled={reason === '' || leave.isPending}>
          {t('charges.leave')}
        </button>
      </p>
      <Failure error={leave.error} />
    </form>
  );
}
