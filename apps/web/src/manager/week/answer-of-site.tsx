import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { call } from '../../data/api.js';
import type { Visit, VisitAnswer } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';
import { standingAnswer } from './standing-answer.js';

/** What the site said of this visit, and the shop's word on it. */
export function AnswerOfSite({ visit, answer }: { readonly visit: Visit; readonly answer: VisitAnswer }) {
  const { t, day } = useWords();
  const stands = standingAnswer(visit);
  if (stands === 'suits') return <p>✓ {t('answer.suits')}</p>;
  if (answer.state === 'made')
    return (
      <p>
        {t('answer.had-asked', { reason: answer.reason })} {t('answer.state.made')}
      </p>
    );
  if (stands !== 'asked') return null;
  return (
    <div className="note straw stack">
      <p>
        <strong>? {t('answer.asks', { reason: answer.reason })}</strong>{' '}
        {answer.days.length > 0 ? t('answer.days', { days: answer.days.map(day).join('; ') }) : null}
      </p>
      <ReplyForm answer={answer} />
    </div>
  );
}

/** Says no with a reason, or that it has been settled; moving the visit to a day that suits replies by itself. */
export function ReplyForm({ answer }: { readonly answer: Pick<VisitAnswer, 'id' | 'version'> }) {
  const { t } = useWords();
  const client = useQueryClient();
  const [words, setWords] = useState('');
  const reply = useMutation({
    mutationFn: (decision: 'met' | 'declined') =>
      call<VisitAnswer>('POST', `/v1/visit-answers/${answer.id}/reply`, {
        body: { decision, reply: words },
        version: answer.version,
      }),
    onSettled: () => client.invalidateQueries(),
  });
  return (
    <form className="stack" onSubmit={(event) => event.preventDefault()}>
      <label className="field">
        <span className="label">{t('answer.words')}</span>
        <input value={words} maxLength={500} onChange={(event) => setWords(event.target.value)} />
      </label>
      <div className="row">
        <button
          type="button"
          className="press-quiet"
          disabled={words.trim() === '' || reply.isPending}
          onClick={() => reply.mutate('declined')}
        >
          {t('answer.decline')}
        </button>
        <button type="button" className="press-quiet" disabled={reply.isPending} onClick={() => reply.mutate('met')}>
          {t('answer.settled')}
        </button>
      </div>
      <Failure error={reply.error} />
    </form>
  );
}
