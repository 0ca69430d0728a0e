import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { api } from '../data/api.js';
import type { NoticeType, SiteContact } from '../data/types.js';
import { Failure } from '../design/failure.js';
import type { Language } from '../words/language.js';
import { useWords } from '../words/words.js';

const NOTICES: readonly NoticeType[] = [
  'visit.promised',
  'visit.moved',
  'visit.cancelled',
  'visit.done',
  'stopgap.limit-near',
];

interface Props {
  readonly siteId: string;
  /** null = a new one. */
  readonly contact: SiteContact | null;
  readonly onDone: () => void;
}

/** A person at a site: address, language, and a choice of what to be told of. */
export function ContactForm({ siteId, contact, onDone }: Props) {
  const { t, named, language: own } = useWords();
  const [name, setName] = useState(contact?.name ?? '');
  const [email, setEmail] = useState(contact?.email ?? '');
  const [language, setLanguage] = useState<Language>(contact?.language ?? own);
  const [notices, setNotices] = useState<readonly NoticeType[]>(contact?.notices ?? NOTICES);
  const save = useMutation({
    mutationFn: () => {
      const body = { name, email, language, notices };
      return contact === null
        ? api.post<SiteContact>('/v1/site-contacts', { siteId, ...body })
        : api.patch<SiteContact>(`/v1/site-contacts/${contact.id}`, body, contact.version);
    },
    onSuccess: onDone,
  });
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        save.mutate();
      }}
    >
      <div className="row">
        <label className="field">
          <span className="label">{t('contact.name')}</span>
          <input required maxLength={200} value={name} onChange={(event) => setName(event.target.value)} />
        </label>
        <label className="field">
          <span className="label">{t('contact.email')}</span>
          <input
            required
            type="email"
            maxLength={254}
            value={email}
            onChange={(event) => setEmail(event.target.value)}
          />
        </label>
        <label className="field">
          <span className="label">{t('contact.language')}</span>
          <select value={language} onChange={(event) => setLanguage(event.target.value as Language)}>
            <option value="en" lang="en">
              English
            </option>
            <option value="es" lang="es">
              Español
            </option>
          </select>
        </label>
      </div>
      <fieldset className="row">
        <legend>{t('contact.of')}</legend>
        {NOTICES.map((type) => (
          <label key={type} className="check">
            <input
              type="checkbox"
              checked={notices.includes(type)}
              onChange={(event) =>
                setNotices(NOTICES.filter((each) => (each === type ? event.target.checked : notices.includes(each))))
              }
            />
            {named(`contact.${type}`, type)}
          </label>
        ))}
      </fieldset>
      <div className="row">
        <button type="submit" className={contact === null ? 'press-quiet' : 'press'} disabled={save.isPending}>
          {t(contact === null ? 'contact.add' : 'contact.save')}
        </button>
        {contact === null ? null : (
          <button type="button" className="press-plain" onClick={onDone}>
            {t('contact.leave')}
          </button>
        )}
      </div>
      <Failure error={save.error} />
    </form>
  );
}
