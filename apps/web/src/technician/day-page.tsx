import { useQuery, useSuspenseQuery } from '@tanstack/react-query';
import { shopQuery, sitesQuery, weekQuery } from '../data/queries.js';
import { mondayAfter } from '../words/local-date.js';
import { useWords } from '../words/words.js';

/** The planned days with their stops, in order of driving. */
export function DayPage() {
  const shop = useSuspenseQuery(shopQuery).data;
  const { t, day, range, minutes } = useWords();
  const week = useQuery(weekQuery(shop.plannedWeekOf ?? mondayAfter(shop.today)));
  const sites = useQuery(sitesQuery).data;
  if (week.error) throw week.error;
  if (!week.data || !sites) return <h1>{t('wait')}</h1>;
  const siteOf = new Map(sites.map((site) => [site.id, site]));
  return (
    <div className="stack" style={{ maxWidth: '44rem' }}>
      <title>{t('day.page')}</title>
      <h1>{week.data.routes.length === 0 ? t('day.none') : t('day.title', { n: week.data.routes.length })}</h1>
      {week.data.routes.map((route) => (
        <section key={route.date + route.technicianId} className="tight">
          <h2>{t('day.route', { day: day(route.date), technician: route.technicianName })}</h2>
          <ol>
            {route.visits.map((visit) => (
              <li key={visit.id}>
                <span className="figure">{range(visit.startAt, visit.endAt)}</span> {siteOf.get(visit.siteId)?.name},{' '}
                <span className="pencil">{t('day.drive', { time: minutes(visit.driveMinutes) })}</span>
              </li>
            ))}
          </ol>
        </section>
      ))}
    </div>
  );
}
