import { Link, useRouter } from '@tanstack/react-router';
import { Away, Refused } from '../data/api.js';
import { en, type WordKey } from '../words/en.js';
import { useWords, type Words } from '../words/words.js';

/** What happened, what was kept, what to do. */
export function Failed({ error }: { readonly error: unknown }) {
  const words = useWords();
  const { t } = words;
  const router = useRouter();
  return (
    <main className="stack" style={{ padding: 24, maxWidth: '60ch' }} role="alert">
      <h1>{t('failed.title')}</h1>
      <p>{describeFailure(error, words)}</p>
      <p>
        <button type="button" className="press" onClick={() => void router.invalidate()}>
          {t('failed.again')}
        </button>
      </p>
    </main>
  );
}

/** The failure in the reader's words. What the service says is worded by its code where the reader has words for it. */
export function describeFailure(error: unknown, words: Words): string {
  const { t, sentence } = words;
  if (error instanceof Away) return t('away.failed');
  if (error instanceof Refused) {
    if (error.code === 'version-stale') return t('conflict.stale');
    if (error.code === 'signed-out') return t('session.ended');
    const { detail, status } = error.problem;
    if (error.code === 'not-understood') return t('failed.not-understood', { status });
    const key = `problem.${error.code}`;
    const said = sentence(detail);
    if (!Object.hasOwn(en, key)) return said;
    // Where the kind of refusal says little, the sentence says it all, if it is known in the reader's language.
    if (en[key as WordKey] === '{detail}' && said !== detail) return said;
    return t(key as WordKey, { detail });
  }
  return t('failed.unknown');
}

export function NotFound() {
  const { t } = useWords();
  return (
    <main className="stack" style={{ padding: 24 }}>
      <h1>{t('not-found.title')}</h1>
      <p>
        <Link to="/">{t('not-found.home')}</Link>
      </p>
    </main>
  );
}
