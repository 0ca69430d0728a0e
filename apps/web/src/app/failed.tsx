import { Link, useRouter } from '@tanstack/react-router';
import { Away, Refused } from '../data/api.js';
import { useWords } from '../words/words.js';

/** What happened, what was kept, what to do. */
export function Failed({ error }: { readonly error: unknown }) {
  const { t } = useWords();
  const router = useRouter();
  return (
    <main className="stack" style={{ padding: 24, maxWidth: '60ch' }} role="alert">
      <h1>{t('failed.title')}</h1>
      <p>{describeFailure(error, t)}</p>
      <p>
        <button type="button" className="press" onClick={() => void router.invalidate()}>
          {t('failed.again')}
        </button>
      </p>
    </main>
  );
}

/** The failure in the reader's words. The service's own sentences come as it writes them. */
export function describeFailure(error: unknown, t: ReturnType<typeof useWords>['t']): string {
  if (error instanceof Away) return t('away.failed');
  if (error instanceof Refused) {
    if (error.code === 'version-stale') return t('conflict.stale');
    if (error.code === 'plan-not-ready') return t('problem.plan-not-ready');
    if (error.code === 'signed-out') return t('session.ended');
    return error.problem.detail;
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
