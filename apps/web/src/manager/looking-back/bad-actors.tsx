import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { Scrolling } from '../../design/scrolling.js';
import { useWords } from '../../words/words.js';
import { badActorsQuery } from './queries.js';

const SHOWN = 10;

/** Machines whose unplanned repairs cost most an hour, dearest first. */
export function BadActors() {
  const { t, number, money, hours } = useWords();
  const rows = useQuery(badActorsQuery(SHOWN)).data?.items.filter((record) => record.repairCount > 0);
  if (!rows) return null;
  return (
    <section className="tight">
      <h2>{t('back.bad-actors')}</h2>
      {rows.length === 0 ? (
        <p className="pencil">{t('back.no-repairs')}</p>
      ) : (
        <Scrolling label={t('back.bad-actors')}>
          <table className="stacked">
            <thead>
              <tr>
                <th scope="col">{t('due.machine')}</th>
                <th scope="col">{t('due.site')}</th>
                {[t('back.watched'), t('back.repairs'), t('back.repair-cost'), t('back.per-hour')].map((head) => (
                  <th key={head} scope="col" className="number">
                    {head}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map((record) => (
                <tr key={record.machineId}>
                  <th scope="row">
                    <Link to="/looking-back/machines/$id" params={{ id: record.machineId }}>
                      {record.machineCode}
                    </Link>
                  </th>
                  <td>{record.siteName}</td>
                  <td className="number" data-head={t('back.watched')}>
                    {hours(record.toHours - record.fromHours)}
                  </td>
                  <td className="number" data-head={t('back.repairs')}>
                    {number(record.repairCount)}
                  </td>
                  <td className="number" data-head={t('back.repair-cost')}>
                    {money(record.repairCents)}
                  </td>
                  <td className="number" data-head={t('back.per-hour')}>
                    {record.centsPerHour === null ? '–' : money(Math.round(record.centsPerHour))}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scrolling>
      )}
    </section>
  );
}
