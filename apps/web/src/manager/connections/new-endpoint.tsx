import { useState } from 'react';
import { api } from '../../data/api.js';
import type { WebhookEndpoint, WebhookEndpointCreated } from '../../data/types.js';
import { useWords } from '../../words/words.js';
import { NewConnection } from './new-connection.js';
import { endpointsQuery } from './queries.js';

type EventType = WebhookEndpoint['types'][number];
const TYPES: readonly EventType[] = [
  'visit.promised',
  'visit.moved',
  'visit.cancelled',
  'visit.done',
  'stopgap.recorded',
  'stopgap.limit-near',
  'reading.set-aside',
  'document.issued',
  'document.credited',
];
const EMPTY: { url: string; description: string; types: readonly EventType[] } = {
  url: '',
  description: '',
  types: [],
};

export function NewEndpoint() {
  const { t } = useWords();
  const [form, setForm] = useState(EMPTY);
  const toggle = (type: EventType, isOn: boolean) =>
    setForm({ ...form, types: isOn ? [...form.types, type] : form.types.filter((each) => each !== type) });
  return (
    <NewConnection
      title={t('connect.new-endpoint')}
      press={t('connect.add-endpoint')}
      isReady={form.url !== ''}
      make={() => api.post<WebhookEndpointCreated>('/v1/webhook-endpoints', form)}
      onMade={() => setForm(EMPTY)}
      listKey={endpointsQuery.queryKey}
      secretOf={(made) => made.secret}
    >
      <label className="field">
        <span className="label">{t('connect.url')}</span>
        <input
          type="url"
          placeholder="https://"
          value={form.url}
          onChange={(event) => setForm({ ...form, url: event.target.value })}
        />
      </label>
      <label className="field">
        <span className="label">{t('field.description')}</span>
        <input
          value={form.description}
          maxLength={200}
          onChange={(event) => setForm({ ...form, description: event.target.value })}
        />
      </label>
      <fieldset>
        <legend>{t('connect.types')}</legend>
        <div className="row">
          {TYPES.map((type) => (
            <label key={type} className="check">
              <input
                type="checkbox"
                checked={form.types.includes(type)}
                onChange={(event) => toggle(type, event.target.checked)}
              />
              {t(`event-type.${type}`)}
            </label>
          ))}
        </div>
      </fieldset>
    </NewConnection>
  );
}
