import { useMutation, useQueryClient } from '@tanstack/react-query';
import { Link, useNavigate } from '@tanstack/react-router';
import { useShop } from '../../app/shop-words.js';
import { api } from '../../data/api.js';
import { sessions } from '../../data/session.js';
import type { Session } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';
import style from './start.module.css';

const STEPS = ['customers', 'sites', 'machines', 'technicians'] as const;

/** From nothing to the first week: import a folder, or type in the little that a plan needs. */
export function StartPage() {
  const { t, number, day } = useWords();
  const shop = useShop();
  if (!shop?.counts) return <h1>{t('wait')}</h1>;
  const { counts, plannedWeekOf } = shop;
  const isReady = STEPS.every((step) => counts[step] > 0);
  return (
    <div className="stack" style={{ maxWidth: '48rem' }}>
      <title>{t('start.page')}</title>
      <h1>
        {plannedWeekOf === null
          ? t(isReady ? 'start.ready' : 'start.title', { shop: shop.name })
          : t('start.planned', { shop: shop.name, day: day(plannedWeekOf) })}
      </h1>
      <section className="stack">
        <p>
          <Link className="press" to="/register/import">
            {t('start.import')}
          </Link>
        </p>
        <p className="pencil">{t('start.or-type')}</p>
        <ol className={style.steps}>
          {STEPS.map((step) => (
            <li key={step} data-done={counts[step] > 0}>
              <Link to="/register/$kind/$id" params={{ kind: step, id: 'new' }}>
                {t(`start.step.${step}`)}
              </Link>{' '}
              <span className="figure pencil">
                {counts[step] > 0 ? `✓ ${number(counts[step])}` : t('start.none-yet')}
              </span>
            </li>
          ))}
          <li data-done={plannedWeekOf !== null}>
            {isReady ? (
              <Link to="/week">{t(plannedWeekOf === null ? 'start.plan' : 'start.see-week')}</Link>
            ) : (
              t('start.plan')
            )}
          </li>
        </ol>
      </section>
      <section className="note tight">
        <h2>{t('start.demo')}</h2>
        <p>{t('start.demo-text')}</p>
        <DemoButton />
      </section>
    </div>
  );
}

/** Opens the invented shop, as its manager; the own shop waits behind the next sign-in. */
function DemoButton() {
  const { t } = useWords();
  const client = useQueryClient();
  const navigate = useNavigate();
  const open = useMutation({
    mutationFn: () => api.post<Session>('/v1/demo-shop', undefined),
    onSuccess: async (session) => {
      sessions.begin(session);
      client.clear();
      await navigate({ to: '/', replace: true });
    },
  });
  return (
    <>
      <p>
        <button type="button" className="press-quiet" disabled={open.isPending} onClick={() => open.mutate()}>
          {t('start.demo-go')}
        </button>
      </p>
      {open.isPending ? <p role="status">{t('start.demo-making')}</p> : null}
      <Failure error={open.error} />
    </>
  );
}
