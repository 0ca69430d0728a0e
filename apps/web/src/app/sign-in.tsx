import { useQueryClient } from '@tanstack/react-query';
import { useRouter, useSearch } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { Away, api, Refused } from '../data/api.js';
import { sessions } from '../data/session.js';
import type { Session } from '../data/types.js';
import { useWords } from '../words/words.js';
import { LookMenu } from './look-menu.js';
import style from './sign-in.module.css';

export function SignInPage() {
  const { t } = useWords();
  const router = useRouter();
  const { to } = useSearch({ from: '/sign-in' });
  return (
    <main className={style.page}>
      <div className={style.sheet}>
        <p className={style.mark}>Deckround</p>
        <h1>{t('sign-in.title')}</h1>
        <p className="pencil">{t('sign-in.what')}</p>
        <SignInForm onDone={() => router.history.push(to ?? '/')} />
      </div>
      <LookMenu />
    </main>
  );
}

/** Address and password; also laid over a page whose session has ended. */
export function SignInForm({ email: known = '', onDone }: { readonly email?: string; readonly onDone?: () => void }) {
  const { t } = useWords();
  const client = useQueryClient();
  const [email, setEmail] = useState(known);
  const [password, setPassword] = useState('');
  const [fault, setFault] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);

  async function submit(event: FormEvent) {
    event.preventDefault();
    setBusy(true);
    setFault(null);
    try {
      const before = sessions.current().session?.person.id;
      const session = await api.post<Session>('/v1/session', { email, password });
      sessions.begin(session);
      // Somebody else's data must not be shown, not even for a moment.
      if (before !== undefined && before !== session.person.id) client.clear();
      else void client.invalidateQueries();
      onDone?.();
    } catch (error) {
      setFault(
        error instanceof Refused ? refusal(error.code) : error instanceof Away ? t('away.failed') : t('failed.unknown'),
      );
    } finally {
      setBusy(false);
    }
  }

  function refusal(code: string): string {
    if (code === 'too-many-sign-ins') return t('sign-in.too-many');
    return code === 'invalid-input' ? t('sign-in.bad-address') : t('sign-in.wrong');
  }

  return (
    <form className="stack" onSubmit={(event) => void submit(event)}>
      <div className="field">
        <label htmlFor="email">{t('sign-in.email')}</label>
        <input
          id="email"
          type="email"
          autoComplete="username"
          required
          value={email}
          onChange={(event) => setEmail(event.target.value)}
        />
      </div>
      <div className="field">
        <label htmlFor="password">{t('sign-in.password')}</label>
        <input
          id="password"
          type="password"
          autoComplete="current-password"
          required
          value={password}
          onChange={(event) => setPassword(event.target.value)}
        />
      </div>
      {fault === null ? null : (
        <p className="note clay" role="alert">
          {fault}
        </p>
      )}
      <button type="submit" className="press" disabled={busy}>
        {t('sign-in.go')}
      </button>
    </form>
  );
}
