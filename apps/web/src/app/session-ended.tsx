import { useEffect, useRef } from 'react';
import { sessions, useSession } from '../data/session.js';
import { useWords } from '../words/words.js';
import { SignInForm } from './sign-in.js';
import style from './sign-in.module.css';

/** Asks for the password again, over the page as it is: nothing that was typed there is touched. */
export function SessionEnded() {
  const { session, ended } = useSession();
  const { t } = useWords();
  const box = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (ended) box.current?.showModal();
    else box.current?.close();
  }, [ended]);
  if (!ended || session === null) return null;
  return (
    <dialog
      ref={box}
      className={style.again}
      aria-labelledby="session-ended"
      onCancel={(event) => event.preventDefault()}
    >
      <div className="stack">
        <h2 id="session-ended">{t('session.ended')}</h2>
        <p className="pencil">{t('session.kept', { name: session.person.name })}</p>
        <SignInForm />
        <button type="button" className="press-plain" onClick={() => sessions.end()}>
          {t('session.other')}
        </button>
      </div>
    </dialog>
  );
}
