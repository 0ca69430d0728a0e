import { queryOptions, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { api, everyPage } from '../data/api.js';
import type { Blackout, Site } from '../data/types.js';
import { Failure } from '../design/failure.js';
import { useWords } from '../words/words.js';

const blackoutsQuery = queryOptions({
  queryKey: ['blackouts'],
  queryFn: ({ signal }) => everyPage<Blackout>('/v1/blackouts', signal),
});

/** Days on which nobody may take machines. */
export function BlockDays({ sites }: { readonly sites: readonly Site[] }) {
  const { t, day } = useWords();
  const client = useQueryClient();
  const blocked = useQuery(blackoutsQuery).data ?? [];
  const [form, setForm] = useState({ siteId: '', from: '', to: '', reason: '' });
  const key = useRef(crypto.randomUUID());
  const siteId = form.siteId || sites[0]?.id;
  const settled = () => {
    key.current = crypto.randomUUID();
    return client.invalidateQueries({ queryKey: ['blackouts'] });
  };
  const add = useMutation({
    mutationFn: () => api.post('/v1/blackouts', { ...form, siteId, to: form.to || form.from }, key.current),
    onSuccess: () => setForm({ siteId: '', from: '', to: '', reason: '' }),
    onSettled: settled,
  });
  const remove = useMutation({ mutationFn: (id: string) => api.remove(`/v1/blackouts/${id}`), onSettled: settled });
  const change = (part: Partial<typeof form>) => setForm({ ...form, ...part });
  const error = add.error ?? remove.error;
  return (
    <details>
      <summary>{t('block.title', { n: blocked.length })}</summary>
      <div className="stack">
        <ul>
          {blocked.map((each) => (
            <li key={each.id}>
              {sites.find((site) => site.id === each.siteId)?.name} {day(each.from)}–{day(each.to)} {each.reason}{' '}
              <button type="button" className="press-plain" onClick={() => remove.mutate(each.id)}>
                {t('block.open', { day: day(each.from) })}
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
          <span className="label">{t('block.from')}</span>
          <input type="date" value={form.from} onChange={(event) => change({ from: event.target.value })} />
        </label>
        <label className="field">
          <span className="label">{t('block.to')}</span>
          <input type="date" value={form.to} min={form.from} onChange={(event) => change({ to: event.target.value })} />
        </label>
        <label className="field">
          <span className="label">{t('block.why')}</span>
          <input value={form.reason} maxLength={500} onChange={(event) => change({ reason: event.target.value })} />
        </label>
        <Failure error={error} />
        <button
          type="button"
          className="press"
          disabled={form.from === '' || add.isPending}
          onClick={() => add.mutate()}
        >
          {t('block.go')}
        </button>
      </div>
    </details>
  );
}
