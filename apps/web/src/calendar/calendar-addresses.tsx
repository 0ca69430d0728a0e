import { queryOptions, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api, everyPage } from '../data/api.js';
import type { CalendarAddress, CalendarAddressCreated } from '../data/types.js';
import { Failure } from '../design/failure.js';
import { useWords } from '../words/words.js';

type Subject = { readonly technicianId: string } | { readonly siteId: string };

const addressesQuery = queryOptions({
  queryKey: ['calendar-addresses'],
  queryFn: ({ signal }) => everyPage<CalendarAddress>('/v1/calendar-addresses', signal),
});

/** Secret addresses under which a calendar program shows the visits: made, seen once, revoked. */
export function CalendarAddresses({ of: subject }: { readonly of: Subject }) {
  const { t, moment } = useWords();
  const client = useQueryClient();
  const [isOpen, setOpen] = useState(false);
  const settled = () => client.invalidateQueries({ queryKey: ['calendar-addresses'] });
  const { data, error } = useQuery({ ...addressesQuery, enabled: isOpen });
  const make = useMutation({
    mutationFn: () => api.post<CalendarAddressCreated>('/v1/calendar-addresses', subject),
    onSettled: settled,
  });
  const revoke = useMutation({
    mutationFn: (id: string) => api.remove(`/v1/calendar-addresses/${id}`),
    onSuccess: (_, id) => {
      if (make.data?.id === id) make.reset();
    },
    onSettled: settled,
  });
  const own = (data ?? []).filter(
    (each) =>
      each.revokedAt === null &&
      ('siteId' in subject ? each.siteId === subject.siteId : each.technicianId === subject.technicianId),
  );
  const failure = error ?? make.error ?? revoke.error;
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{t('calendar.title')}</summary>
      <div className="stack">
        <p className="pencil">{t('calendar.what')}</p>
        {make.data ? <NewAddress path={make.data.path} /> : null}
        {own.length > 0 ? (
          <ul>
            {own.map((each) => (
              <li key={each.id}>
                {t('calendar.since', { when: moment(each.createdAt) })}{' '}
                <span className="pencil">
                  {each.lastReadAt ? t('calendar.read', { when: moment(each.lastReadAt) }) : t('calendar.never-read')}
                </span>{' '}
                <button
                  type="button"
                  className="press-plain"
                  disabled={revoke.isPending}
                  onClick={() => revoke.mutate(each.id)}
                >
                  {t('calendar.revoke')}
                </button>
              </li>
            ))}
          </ul>
        ) : null}
        <p>
          <button type="button" className="press-quiet" disabled={make.isPending} onClick={() => make.mutate()}>
            {t('calendar.make')}
          </button>
        </p>
        <Failure error={failure} />
      </div>
    </details>
  );
}

/** The address as it is shown this once. */
function NewAddress({ path }: { readonly path: string }) {
  const { t } = useWords();
  const [isCopied, setCopied] = useState(false);
  const address = `${location.origin}${path}`;
  return (
    <div className="note straw stack">
      <label className="field">
        <span className="label">{t('calendar.address')}</span>
        <input readOnly value={address} onFocus={(event) => event.target.select()} />
      </label>
      <div className="row">
        <button
          type="button"
          className="press"
          onClick={() => void navigator.clipboard.writeText(address).then(() => setCopied(true))}
        >
          {t('calendar.copy')}
        </button>
        <a className="press-quiet" href={address.replace(/^https?:/, 'webcal:')}>
          {t('calendar.subscribe')}
        </a>
      </div>
      {isCopied ? <p role="status">{t('calendar.copied')}</p> : null}
    </div>
  );
}
