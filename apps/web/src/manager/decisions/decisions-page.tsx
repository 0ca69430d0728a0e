import { queryOptions, useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useShop } from '../../app/shop-words.js';
import { api, everyPage } from '../../data/api.js';
import { machinesQuery } from '../../data/queries.js';
import type { Alert, FieldRecord } from '../../data/types.js';
import { useWords } from '../../words/words.js';
import { AlertNote } from './alert-note.js';
import style from './decisions.module.css';
import { LateRecord } from './late-record.js';

export const alertsQuery = queryOptions({
  queryKey: ['alerts'],
  queryFn: async ({ signal }) => (await api.get<{ items: Alert[] }>('/v1/alerts', signal)).items,
});
export const lateRecordsQuery = queryOptions({
  queryKey: ['field-records', 'review'],
  queryFn: ({ signal }) => everyPage<FieldRecord>('/v1/field-records?state=review', signal),
});

/** What nobody but the shop can decide: wishes, late parts, ending stopgaps, records that came after a visit was closed. */
export function DecisionsPage() {
  const { t } = useWords();
  const shop = useShop();
  const alerts = useQuery(alertsQuery);
  const late = useQuery(lateRecordsQuery);
  const machines = useQuery(machinesQuery).data ?? [];
  const error = alerts.error ?? late.error;
  if (error) throw error;
  if (!shop || !alerts.data || !late.data) return <h1>{t('wait')}</h1>;
  return (
    <div className={style.page}>
      <title>{t('decide.page')}</title>
      <h1>{t('decide.sentence', { n: alerts.data.length + late.data.length })}</h1>
      {alerts.data.length > 0 ? (
        <ul className={style.list}>
          {alerts.data.map((alert) => (
            <li key={`${alert.kind}${alert.visitId}${alert.stopgapId}${alert.sentence}`}>
              <AlertNote alert={alert} today={shop.today} />
            </li>
          ))}
        </ul>
      ) : null}
      {late.data.length > 0 ? (
        <section className="stack">
          <h2>{t('decide.late', { n: late.data.length })}</h2>
          <p className="pencil">{t('decide.late-what')}</p>
          <ul className={style.list}>
            {late.data.map((record) => (
              <li key={record.id}>
                <LateRecord
                  record={record}
                  machine={machines.find((machine) => machine.id === record.machineId)?.code ?? ''}
                />
              </li>
            ))}
          </ul>
        </section>
      ) : null}
      <p>
        <Link to="/readings">{t('decide.readings')}</Link>
      </p>
    </div>
  );
}
