import { queryOptions, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { api, everyPage } from '../data/api.js';
import type { Site, SiteEvent } from '../data/types.js';
import { Failure } from '../design/failure.js';
import { useWords } from '../words/words.js';

const eventsQuery = queryOptions({
  queryKey: ['site-events'],
  queryFn: ({ signal }) => everyPage<SiteEvent>('/v1/site-events', signal),
});
const EMPTY = { siteId: '', date: '', from: '15:00', name: '' };

/** When every machine has to be able to mow: the shop plans its work around that. */
export function SiteEvents({ sites }: { readonly sites: readonly Site[] }) {
  const { t, day } = useWords();
  const client = useQueryClient();
  const events = useQuery(eventsQuery).data ?? [];
  const [form, setForm] = useState(EMPTY);
  const key = useRef(crypto.randomUUID());
  const siteId = form.siteId || sites[0]?.id;
  const settled = () => {
    key.current = crypto.randomUUID();
    return client.invalidateQueries({ queryKey: ['site-events'] });
  };
  const add = useMutation({
    mutationFn: () => api.post('/v1/site-events', { ...form, siteId }, key.current),
    onSuccess: () => setForm(EMPTY),
    onSettled: settled,
  });
  const remove = useMutation({ mutationFn: (id: string) => api.remove(`/v1/site-events/${id}`), onSettled: settled });
  const change = (part: Partial<typeof form>) => setForm({ ...form, ...part });
  const error = add.error ?? remove.error;
  return (
    <details>
      <summary>{t('event.title', { n: events.length })}</summary>
      <div className="stack">
        <p className="pencil">{t('event.what')}</p>
        <ul>
          {events.map((each) => (
            <li key={each.id}>
              {sites.find((site) => site.id === each.siteId)?.name}: {each.name}, {day(each.date)} {each.from}{' '}
              <button type="button" className="press-plain" onClick={() => remove.mutate(each.id)}>
                {t('event.remove', { name: each.name })}
              </button>
            </li>
          ))}
        </ul>
        {sites.length > 1 ? (
          <label className="field">
            <span className="label">{t('due.site')}</span>
            <select value={siteId} onChange={(event) => change({ siteId: event.target.value })}>
              {sites.map((site) => (
                <option key={site.id} value={site.id}>
                  {site.name}
                </option>
              ))}
            </select>
          </label>
        ) : null}
        <label className="field">
          <span className="label">{t('event.name')}</span>
          <input value={form.name} maxLength={200} onChange={(event) => change({ name: event.target.value })} />
        </label>
        <label className="field">
          <span className="label">{t('event.day')}</span>
          <input type="date" value={form.date} onChange={(event) => change({ date: event.target.value })} />
        </label>
        <label className="field">
          <span className="label">{t('event.from')}</span>
          <input type="time" value={form.from} onChange={(event) => change({ from: event.target.value })} />
        </label>
        <Failure error={error} />
        <button
          type="button"
          className="press"
          disabled={form.date === '' || form.name.trim() === '' || form.from === '' || add.isPending}
          onClick={() => add.mutate()}
        >
          {t('event.go')}
        </button>
      </div>
    </details>
  );
}
