import { queryOptions, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api, everyPage, queryOf } from '../data/api.js';
import type { SiteContact } from '../data/types.js';
import { Failure } from '../design/failure.js';
import { useWords } from '../words/words.js';
import { ContactForm } from './contact-form.js';

const contactsQuery = (siteId: string) =>
  queryOptions({
    queryKey: ['site-contacts', siteId],
    queryFn: ({ signal }) => everyPage<SiteContact>(`/v1/site-contacts${queryOf({ siteId })}`, signal),
  });

/** Who at a site is told by e-mail, and of what. */
export function SiteContacts({ siteId }: { readonly siteId: string }) {
  const { t, named } = useWords();
  const client = useQueryClient();
  const [isOpen, setOpen] = useState(false);
  const [changed, setChanged] = useState<string | null>(null);
  const { data, error } = useQuery({ ...contactsQuery(siteId), enabled: isOpen });
  const settled = () => client.invalidateQueries({ queryKey: ['site-contacts', siteId] });
  const remove = useMutation({
    mutationFn: (id: string) => api.remove(`/v1/site-contacts/${id}`),
    onSettled: settled,
  });
  const failure = error ?? remove.error;
  const done = () => {
    setChanged(null);
    void settled();
  };
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{t('contact.title')}</summary>
      <div className="stack">
        <p className="pencil">{t('contact.what')}</p>
        <ul className="stack">
          {(data ?? []).map((contact) => (
            <li key={contact.id}>
              {contact.name} <span className="pencil">{contact.email}</span>{' '}
              <span className="small">
                {contact.notices.length === 0
                  ? t('contact.of-nothing')
                  : contact.notices.map((type) => named(`contact.${type}`, type)).join(', ')}
              </span>{' '}
              <button
                type="button"
                className="press-plain"
                aria-label={t('contact.change-of', { name: contact.name })}
                onClick={() => setChanged(contact.id)}
              >
                {t('contact.change')}
              </button>{' '}
              <button
                type="button"
                className="press-plain"
                aria-label={t('contact.remove-of', { name: contact.name })}
                disabled={remove.isPending}
                onClick={() => remove.mutate(contact.id)}
              >
                {t('contact.remove')}
              </button>
              {changed === contact.id ? <ContactForm siteId={siteId} contact={contact} onDone={done} /> : null}
            </li>
          ))}
        </ul>
        {data && changed === null ? (
          <ContactForm key={data.length} siteId={siteId} contact={null} onDone={done} />
        ) : null}
        <Failure error={failure} />
      </div>
    </details>
  );
}
