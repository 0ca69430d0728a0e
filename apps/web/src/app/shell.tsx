import { useQueryClient } from '@tanstack/react-query';
import { Link, Navigate, Outlet, useLocation } from '@tanstack/react-router';
import { Suspense, useEffect, useRef, useState } from 'react';
import { api } from '../data/api.js';
import { useAway } from '../data/connection.js';
import { sessions, useSession } from '../data/session.js';
import type { Role } from '../data/types.js';
import { fieldStore } from '../offline/field-store.js';
import { outbox } from '../offline/outbox.js';
import type { WordKey } from '../words/en.js';
import { useWords } from '../words/words.js';
import { useEscape } from './escape.js';
import { LookMenu } from './look-menu.js';
import { SessionEnded } from './session-ended.js';
import style from './shell.module.css';
import { useShop } from './shop-words.js';

interface Place {
  readonly to: string;
  readonly word: WordKey;
}

const PLACES: Readonly<Record<Role, readonly Place[]>> = {
  manager: [
    { to: '/week', word: 'nav.week' },
    { to: '/decisions', word: 'nav.decisions' },
    { to: '/road-calls', word: 'nav.road-calls' },
    { to: '/due', word: 'nav.due' },
    { to: '/readings', word: 'nav.readings' },
    { to: '/orders', word: 'nav.orders' },
    { to: '/charges', word: 'nav.charges' },
    { to: '/looking-back', word: 'nav.looking-back' },
    { to: '/register', word: 'nav.register' },
    { to: '/forecasts', word: 'nav.forecasts' },
  ],
  technician: [{ to: '/day', word: 'nav.day' }],
  supervisor: [{ to: '/grounds', word: 'nav.grounds' }],
};

/** The frame of every page: who and where, the places of this role, what is wrong with the connection. */
export function Shell() {
  const { session } = useSession();
  const { t, number } = useWords();
  const shop = useShop();
  const [open, setOpen] = useState(false);
  const { pathname } = useLocation();
  useEffect(() => setOpen(false), [pathname]);
  const opener = useRef<HTMLButtonElement>(null);
  useEscape(() => {
    if (!open) return;
    setOpen(false);
    opener.current?.focus();
  });
  if (session === null) return <Navigate to="/sign-in" search={{}} replace />;
  const counts: Readonly<Record<string, number | undefined>> = {
    '/decisions': shop?.counts?.toDecide,
    '/readings': shop?.counts?.readingsSetAside,
    '/road-calls': shop?.counts?.openRoadCalls,
  };
  return (
    <div className={style.shell}>
      <a className={style.skip} href="#page">
        {t('nav.skip')}
      </a>
      <header className={style.head}>
        <Link to="/" className={style.mark}>
          <span className={style.name}>Deckround</span>
          <span className={style.shop}>{shop?.name ?? session.person.shopName}</span>
        </Link>
        <button
          ref={opener}
          type="button"
          className={style.opener}
          aria-expanded={open}
          aria-controls="places"
          onClick={() => setOpen(!open)}
        >
          {t('nav.menu')}
        </button>
        <div id="places" className={style.places} data-open={open}>
          <nav aria-label={t('nav.places')}>
            {PLACES[session.person.role].map(({ to, word }) => (
              <Link key={to} to={to} className={style.place} activeProps={{ 'aria-current': 'page' }}>
                {t(word)}
                {counts[to] ? <span className={`figure ${style.count}`}>{number(counts[to])}</span> : null}
              </Link>
            ))}
          </nav>
          <div className={style.own}>
            <Link to="/help" className={style.place} activeProps={{ 'aria-current': 'page' }}>
              {t('nav.help')}
            </Link>
            <LookMenu />
            <SignOut name={session.person.name} />
          </div>
        </div>
      </header>
      <AwayBanner />
      <main id="page" className={style.page} tabIndex={-1}>
        <Suspense fallback={<p className="pencil">{t('wait')}</p>}>
          <Outlet />
        </Suspense>
      </main>
      <SessionEnded />
    </div>
  );
}

function SignOut({ name }: { readonly name: string }) {
  const { t } = useWords();
  const client = useQueryClient();
  const [unsent, setUnsent] = useState(0);
  async function leave() {
    const { waiting, refused } = outbox.count();
    if (unsent === 0 && waiting + refused > 0) return setUnsent(waiting + refused);
    await fieldStore.forget().catch(() => undefined);
    await api.remove('/v1/session').catch(() => undefined);
    sessions.end();
    client.clear();
  }
  return (
    <button type="button" className="press-plain" onClick={() => void leave()}>
      {unsent > 0 ? t('unsent.leaving', { n: unsent }) : t('nav.sign-out', { name })}
    </button>
  );
}

function AwayBanner() {
  const away = useAway();
  const { session } = useSession();
  const { t } = useWords();
  // The technician's pages need no service, and their own bar says what is sent.
  const worksAlone = session?.person.role === 'technician';
  return (
    <div role="status" className={style.banner} data-away={away && !worksAlone}>
      {away && !worksAlone ? <p>{t('away.banner')}</p> : null}
    </div>
  );
}
