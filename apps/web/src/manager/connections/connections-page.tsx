import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useWords } from '../../words/words.js';
import style from '../decisions/decisions.module.css';
import { Endpoint } from './endpoint.js';
import { IntegrationKeyLine } from './integration-key-line.js';
import { NewEndpoint } from './new-endpoint.js';
import { NewKey } from './new-key.js';
import { NewSource } from './new-source.js';
import { endpointsQuery, keysQuery, sourcesQuery } from './queries.js';
import { Source } from './source.js';

/** Which other systems are told what happens, which may read or write here, and which are asked what machines report. */
export function ConnectionsPage() {
  const { t } = useWords();
  const endpoints = useQuery(endpointsQuery);
  const keys = useQuery(keysQuery);
  const sources = useQuery(sourcesQuery);
  const error = endpoints.error ?? keys.error ?? sources.error;
  if (error) throw error;
  if (!endpoints.data || !keys.data || !sources.data) return <h1>{t('wait')}</h1>;
  const live = keys.data.filter((key) => key.revokedAt === null);
  return (
    <div className={style.page}>
      <title>{t('connect.page')}</title>
      <p>
        <Link to="/register">← {t('nav.register')}</Link>
      </p>
      <h1>{t('connect.sentence', { endpoints: endpoints.data.length, keys: live.length })}</h1>
      <section className="stack">
        <h2>{t('connect.endpoints')}</h2>
        <p className="pencil">{t('connect.endpoints-what')}</p>
        <ul className={style.list}>
          {endpoints.data.map((endpoint) => (
            <li key={endpoint.id}>
              <Endpoint endpoint={endpoint} />
            </li>
          ))}
        </ul>
        <NewEndpoint />
      </section>
      <section className="stack">
        <h2>{t('connect.keys')}</h2>
        <p className="pencil">{t('connect.keys-what')}</p>
        <ul className={style.list}>
          {live.map((key) => (
            <li key={key.id}>
              <IntegrationKeyLine row={key} />
            </li>
          ))}
        </ul>
        <NewKey />
      </section>
      <section className="stack">
        <h2>{t('connect.sources')}</h2>
        <p className="pencil">
          {t('connect.sources-what')} <Link to="/heard-from">{t('heard.link')}</Link>
        </p>
        <ul className={style.list}>
          {sources.data.map((source) => (
            <li key={source.id}>
              <Source source={source} />
            </li>
          ))}
        </ul>
        <NewSource />
      </section>
    </div>
  );
}
