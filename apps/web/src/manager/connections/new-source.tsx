import { useState } from 'react';
import { api } from '../../data/api.js';
import type { TelematicsSource } from '../../data/types.js';
import { useWords } from '../../words/words.js';
import { NewConnection } from './new-connection.js';
import { sourcesQuery } from './queries.js';

const EMPTY = { name: '', url: '', authorization: '', minutes: '60' };
const SECONDS = 60;

/** A form for a system that is asked for what its machines report. */
export function NewSource() {
  const { t } = useWords();
  const [form, setForm] = useState(EMPTY);
  const minutes = Number(form.minutes);
  const isTimely = Number.isInteger(minutes) && minutes >= 1 && minutes <= 1440;
  const change = (part: Partial<typeof EMPTY>) => setForm({ ...form, ...part });
  return (
    <NewConnection
      title={t('connect.new-source')}
      press={t('connect.add-source')}
      isReady={form.name.trim() !== '' && form.url !== '' && isTimely}
      make={() =>
        api.post<TelematicsSource>('/v1/telematics/sources', {
          name: form.name.trim(),
          url: form.url.trim(),
          authorization: form.authorization.trim() || null,
          everySeconds: minutes * SECONDS,
        })
      }
      onMade={() => setForm(EMPTY)}
      listKey={sourcesQuery.queryKey}
    >
      <label className="field">
        <span className="label">{t('connect.source-name')}</span>
        <input value={form.name} maxLength={100} onChange={(event) => change({ name: event.target.value })} />
      </label>
      <label className="field">
        <span className="label">{t('connect.source-url')}</span>
        <input
          type="url"
          placeholder="https://"
          value={form.url}
          onChange={(event) => change({ url: event.target.value })}
        />
      </label>
      <label className="field">
        <span className="label">{t('connect.authorization')}</span>
        <input
          className="figure"
          autoComplete="off"
          maxLength={2000}
          value={form.authorization}
          onChange={(event) => change({ authorization: event.target.value })}
        />
      </label>
      <label className="field">
        <span className="label">{t('connect.every')}</span>
        <input
          className="figure"
          inputMode="numeric"
          aria-invalid={!isTimely}
          value={form.minutes}
          onChange={(event) => change({ minutes: event.target.value })}
        />
        {isTimely ? null : <span className="fault">{t('connect.every-fault')}</span>}
      </label>
    </NewConnection>
  );
}
