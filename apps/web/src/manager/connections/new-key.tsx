import { useState } from 'react';
import { api } from '../../data/api.js';
import type { IntegrationKey, IntegrationKeyCreated } from '../../data/types.js';
import { useWords } from '../../words/words.js';
import { NewConnection } from './new-connection.js';
import { keysQuery } from './queries.js';

type Scope = IntegrationKey['scopes'][number];
const SCOPES: readonly Scope[] = ['read', 'readings', 'register', 'accounting', 'telematics'];
const EMPTY: { name: string; scopes: readonly Scope[]; until: string } = { name: '', scopes: ['read'], until: '' };

export function NewKey() {
  const { t } = useWords();
  const [form, setForm] = useState(EMPTY);
  return (
    <NewConnection
      title={t('connect.new-key')}
      press={t('connect.add-key')}
      isReady={form.name.trim() !== '' && form.scopes.length > 0}
      make={() =>
        api.post<IntegrationKeyCreated>('/v1/integration-keys', {
          name: form.name.trim(),
          scopes: form.scopes,
          expiresAt: form.until === '' ? null : new Date(`${form.until}T23:59:59`).toISOString(),
        })
      }
      onMade={() => setForm(EMPTY)}
      listKey={keysQuery.queryKey}
      secretOf={(made) => made.key}
    >
      <label className="field">
        <span className="label">{t('connect.key-name')}</span>
        <input value={form.name} maxLength={100} onChange={(event) => setForm({ ...form, name: event.target.value })} />
      </label>
      <fieldset className="row">
        <legend>{t('connect.scopes')}</legend>
        {SCOPES.map((scope) => (
          <label key={scope} className="check">
            <input
              type="checkbox"
              checked={form.scopes.includes(scope)}
              onChange={(event) =>
                setForm({
                  ...form,
                  scopes: event.target.checked ? [...form.scopes, scope] : form.scopes.filter((each) => each !== scope),
                })
              }
            />
            {t(`scope.${scope}`)}
          </label>
        ))}
      </fieldset>
      <label className="field">
        <span className="label">{t('connect.until')}</span>
        <input type="date" value={form.until} onChange={(event) => setForm({ ...form, until: event.target.value })} />
      </label>
    </NewConnection>
  );
}
