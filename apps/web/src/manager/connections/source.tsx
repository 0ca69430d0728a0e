import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api } from '../../data/api.js';
import type { TelematicsSource } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { KeptSentence } from '../../design/kept-sentence.js';
import { SureButton } from '../../design/sure-button.js';
import { useWords } from '../../words/words.js';
import { sourcesQuery } from './queries.js';

const SECONDS = 60;

/** One system that is asked for what its machines report: how the last look went, its credentials, on or off. */
export function Source({ source }: { readonly source: TelematicsSource }) {
  const { t, moment, minutes } = useWords();
  const client = useQueryClient();
  const path = `/v1/telematics/sources/${source.id}`;
  const onSettled = () => client.invalidateQueries({ queryKey: sourcesQuery.queryKey });
  const [authorization, setAuthorization] = useState('');
  const change = useMutation({
    mutationFn: (body: { state: TelematicsSource['state'] } | { authorization: string }) =>
      api.patch<TelematicsSource>(path, body, source.version),
    onSuccess: () => setAuthorization(''),
    onSettled,
  });
  const remove = useMutation({ mutationFn: () => api.remove(path), onSettled });
  const isActive = source.state === 'active';
  return (
    <>
      <h3>
        {source.name} <span className="pencil">{source.url}</span>
      </h3>
      <p>
        {t(isActive ? 'connect.asked-every' : 'connect.not-asked', { time: minutes(source.everySeconds / SECONDS) })}{' '}
        <span className="pencil">
          {source.lastPollAt === null ? t('heard.not-asked') : t('heard.asked', { when: moment(source.lastPollAt) })}{' '}
          {t(source.hasAuthorization ? 'connect.has-credentials' : 'connect.no-credentials')}
        </span>
      </p>
      {source.lastError === null ? null : (
        <p className="note straw">
          {t('connect.look-failed', { n: source.failures })} <KeptSentence text={source.lastError} />
        </p>
      )}
      <div className="row">
        <button
          type="button"
          className="press-quiet"
          disabled={change.isPending}
          onClick={() => change.mutate({ state: isActive ? 'disabled' : 'active' })}
        >
          {t(isActive ? 'connect.stop-asking' : 'connect.ask-again', { name: source.name })}
        </button>
        <SureButton
          label={t('connect.remove-source', { name: source.name })}
          sureLabel={t('connect.remove-source-sure', { name: source.name })}
          isPending={remove.isPending}
          onSure={() => remove.mutate()}
        />
      </div>
      <details>
        <summary>{t('connect.other-credentials')}</summary>
        <form
          className="row"
          onSubmit={(event) => {
            event.preventDefault();
            change.mutate({ authorization: authorization.trim() });
          }}
        >
          <label className="field">
            <span className="label">{t('connect.authorization')}</span>
            <input
              className="figure"
              autoComplete="off"
              maxLength={2000}
              value={authorization}
              onChange={(event) => setAuthorization(event.target.value)}
            />
          </label>
          <button type="submit" className="press-quiet" disabled={authorization.trim() === '' || change.isPending}>
            {t('connect.use-credentials')}
          </button>
        </form>
      </details>
      <Failure error={change.error ?? remove.error} />
    </>
  );
}
