import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api } from '../../data/api.js';
import type { WebhookEndpoint, WebhookEndpointCreated } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { KeptSentence } from '../../design/kept-sentence.js';
import { Scrolling } from '../../design/scrolling.js';
import { SureButton } from '../../design/sure-button.js';
import { useWords } from '../../words/words.js';
import { ShownOnce } from './new-connection.js';
import { deliveriesQuery } from './queries.js';

const SHOWN = 50;

/** One address that is told what happens: its state, trials, secret, and what became of each message. */
export function Endpoint({ endpoint }: { readonly endpoint: WebhookEndpoint }) {
  const { t, moment, named } = useWords();
  const client = useQueryClient();
  const path = `/v1/webhook-endpoints/${endpoint.id}`;
  const settled = () => client.invalidateQueries({ queryKey: ['webhook-endpoints'] });
  const ask = useMutation({
    mutationFn: (what: 'test' | 'retry') => api.post<{ asked: number }>(`${path}/${what}`, undefined),
    onSettled: settled,
  });
  const change = useMutation({
    mutationFn: (state: 'active' | 'disabled') => api.patch<WebhookEndpoint>(path, { state }, endpoint.version),
    onSettled: settled,
  });
  const rotate = useMutation({
    mutationFn: () => api.post<WebhookEndpointCreated>(`${path}/rotate-secret`, {}),
    onSettled: settled,
  });
  const remove = useMutation({ mutationFn: () => api.remove(path), onSettled: settled });
  const isActive = endpoint.state === 'active';
  return (
    <>
      <h3>
        {endpoint.url} <span className="pencil">{endpoint.description}</span>
      </h3>
      <p>
        {t(isActive ? 'connect.active' : 'connect.disabled')}{' '}
        <span className="pencil">
          {endpoint.types.length === 0
            ? t('connect.all-types')
            : endpoint.types.map((type) => named(`event-type.${type}`, type)).join(', ')}
        </span>
      </p>
      {endpoint.disabledReason ? (
        <p className="note straw">
          <KeptSentence text={endpoint.disabledReason} />
        </p>
      ) : endpoint.failingSince ? (
        <p className="note straw">{t('connect.failing', { when: moment(endpoint.failingSince) })}</p>
      ) : null}
      {rotate.data ? <ShownOnce secret={rotate.data.secret} /> : null}
      <div className="row">
        <button type="button" className="press-quiet" disabled={ask.isPending} onClick={() => ask.mutate('test')}>
          {t('connect.test')}
        </button>
        <button type="button" className="press-quiet" disabled={ask.isPending} onClick={() => ask.mutate('retry')}>
          {t('connect.retry')}
        </button>
        <button type="button" className="press-quiet" disabled={rotate.isPending} onClick={() => rotate.mutate()}>
          {t('connect.rotate')}
        </button>
        <button
          type="button"
          className="press-plain"
          disabled={change.isPending}
          onClick={() => change.mutate(isActive ? 'disabled' : 'active')}
        >
          {t(isActive ? 'connect.switch-off' : 'connect.switch-on')}
        </button>
        <SureButton
          label={t('register.remove')}
          sureLabel={t('connect.remove-sure')}
          isPending={remove.isPending}
          onSure={() => remove.mutate()}
        />
      </div>
      {ask.isSuccess ? <p role="status">{t('connect.asked', { n: ask.data.asked })}</p> : null}
      <Failure error={ask.error ?? change.error ?? rotate.error ?? remove.error} />
      <Deliveries endpointId={endpoint.id} />
    </>
  );
}

/** What was sent there, the newest first. */
function Deliveries({ endpointId }: { readonly endpointId: string }) {
  const { t, moment, named, number } = useWords();
  const [isOpen, setOpen] = useState(false);
  const { data, error } = useQuery({
    ...deliveriesQuery(endpointId),
    enabled: isOpen,
    refetchInterval: isOpen ? 3000 : false,
  });
  const rows = (data ?? []).toSorted((a, b) => (a.occurredAt < b.occurredAt ? 1 : -1)).slice(0, SHOWN);
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{t('connect.deliveries')}</summary>
      {data && rows.length === 0 ? <p className="pencil">{t('connect.nothing-sent')}</p> : null}
      {rows.length > 0 ? (
        <Scrolling label={t('connect.deliveries')}>
          <table className="stacked">
            <thead>
              <tr>
                <th scope="col">{t('connect.what')}</th>
                <th scope="col">{t('connect.when')}</th>
                <th scope="col">{t('connect.state')}</th>
                <th scope="col" className="number">
                  {t('connect.attempts')}
                </th>
                <th scope="col">{t('connect.answer')}</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <tr key={row.id}>
                  <th scope="row" data-whole>
                    {named(`event-type.${row.type}`, row.type)}
                  </th>
                  <td>{moment(row.occurredAt)}</td>
                  <td>
                    {row.deliveredAt
                      ? t('connect.delivered', { when: moment(row.deliveredAt) })
                      : t('connect.waits', { when: row.nextAttemptAt ? moment(row.nextAttemptAt) : '' })}
                  </td>
                  <td className="number" data-head={t('connect.attempts')}>
                    {number(row.attempts)}
                  </td>
                  <td>
                    {row.lastStatus} {row.lastError === null ? null : <KeptSentence text={row.lastError} />}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scrolling>
      ) : null}
      <Failure error={error} />
    </details>
  );
}
