import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useRef } from 'react';
import { api } from '../../data/api.js';
import type { Alert, VisitAnswer, VisitMoved } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { said } from '../../words/said.js';
import { useWords } from '../../words/words.js';
import { LeaveAsItIs } from '../charges/leave-as-it-is.js';
import { SinceLines } from '../charges/since-lines.js';
import { CloseStopgap } from '../stopgaps/close-stopgap.js';
import { RenewStopgap } from '../stopgaps/renew-stopgap.js';
import { ReplyForm } from '../week/answer-of-site.js';

/** One thing to decide, with the next best thing to do at one press. */
export function AlertNote({ alert, today }: { readonly alert: Alert; readonly today: string }) {
  const words = useWords();
  const { t, day, money } = words;
  const { sentence, choice } = alert.clauses;
  const client = useQueryClient();
  const key = useRef(crypto.randomUUID());
  const answer = useQuery({
    queryKey: ['visit-answers', alert.answerId],
    queryFn: () => api.get<VisitAnswer>(`/v1/visit-answers/${alert.answerId}`),
    enabled: alert.answerId !== null,
  }).data;
  const move = useMutation({
    mutationFn: ({ technicianId, date, order, stamp }: NonNullable<Alert['move']>) =>
      api.post<VisitMoved>(`/v1/visits/${alert.visitId}/move`, { technicianId, date, order, stamp }, key.current),
    onSettled: () => {
      key.current = crypto.randomUUID();
      return client.invalidateQueries();
    },
  });
  return (
    <>
      <h2>
        {t(`alert.${alert.kind}`)}
        {alert.siteName ? `: ${alert.siteName}` : ''}
        {alert.machineCode ? `, ${alert.machineCode}` : ''}
      </h2>
      {alert.documentId ? (
        <>
          <p>{t('alert.invoice', { number: String(sentence.values['number']) })}</p>
          <SinceLines id={alert.documentId} />
        </>
      ) : (
        <p>{said(sentence, alert.sentence, words)}</p>
      )}
      <p className="pencil">{said(choice, alert.choice, words)}</p>
      <div className="row">
        {alert.move ? (
          <button type="button" className="press" disabled={move.isPending} onClick={() => move.mutate(alert.move!)}>
            {t('alert.move', {
              day: day(alert.move.date),
              price: t(alert.move.cents > 0 ? 'move.costs' : 'move.saves', {
                money: money(Math.abs(alert.move.cents)),
              }),
            })}
          </button>
        ) : null}
        {alert.machineId ? (
          <Link to="/machines/$id/forecast" params={{ id: alert.machineId }}>
            {t('alert.machine', { machine: alert.machineCode ?? '' })}
          </Link>
        ) : null}
        {alert.documentId ? (
          <Link to="/charges/$id" params={{ id: alert.documentId }}>
            {t('alert.document')}
          </Link>
        ) : null}
        {alert.orderId ? (
          <Link to="/register/$kind/$id" params={{ kind: 'part-orders', id: alert.orderId }}>
            {t('alert.order')}
          </Link>
        ) : null}
      </div>
      {alert.stopgapId ? (
        <>
          <RenewStopgap id={alert.stopgapId} today={today} />
          <CloseStopgap id={alert.stopgapId} today={today} />
        </>
      ) : null}
      {alert.documentId ? <LeaveAsItIs id={alert.documentId} /> : null}
      {answer && answer.state === 'open' ? <ReplyForm key={answer.version} answer={answer} /> : null}
      <Failure error={move.error} />
    </>
  );
}
