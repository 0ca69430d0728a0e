import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api } from '../../data/api.js';
import type { IntegrationKey, IntegrationKeyCreated } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';
import { ShownOnce } from './shown-once.js';

type Scope = IntegrationKey['scopes'][number];
const SCOPES: readonly Scope[] = ['read', 'readings', 'register', 'accounting', 'telematics'];
const EMPTY: { name: string; scopes: readonly Scope[]; until: string } = { name: '', scopes: ['read'], until: '' };

export function NewKey() {
  const { t } = useWords();
  const client = useQueryClient();
  const [form, setForm] = useState(EMPTY);
  const add = useMutation({
    mutationFn: () =>
      api.post<IntegrationKeyCreated>('/v1/integration-keys', {
        name: form.name.trim(),
        scopes: form.scopes,
        expiresAt: form.until === '' ? null : new Date(`${form.until}T23:59:59`).toISOString(),
      }),
    onSuccess: () => setForm(EMPTY),
    onSettled: () => client.invalidateQueries({ queryKey: ['integration-keys'] }),
  });
  return (
    <details>
      <summary>{t('connect.new-key')}</summary>
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault();
          add.mutate();
        }}
      >
        <label className="field">
          <span className="label">{t('connect.key-name')}</span>
          <input
            value={form.name}
            maxLength={100}
            onChange={(event) => setForm({ ...form, name: event.target.value })}
          />
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
                    scopes: event.target.checked
                      ? [...form.scopes, scope]
                      : form.scopes.filter((each) => each !== scope),
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
        <Failure error={add.error} />
        {add.data ? <ShownOnce secret={add.data.key} /> : null}
        <p>
          <button
            type="submit"
            className="press"
            disabled={form.name.trim() === '' || form.scopes.length === 0 || add.isPending}
          >
            {t('connect.add-key')}
          </button>
        </p>
      </form>
    </details>
  );
}
