import { useQuery } from '@tanstack/react-query';
import { visitsQuery } from '../../data/queries.js';
import type { Site, Week } from '../../data/types.js';
import { KeptSentence } from '../../design/kept-sentence.js';
import { addDays } from '../../words/local-date.js';
import { useWords } from '../../words/words.js';

/** Promised visits that planning again took away, with why, as long as their sites have no other: the customers have to be told. */
export function BrokenPromises({ week, sites }: { readonly week: Week; readonly sites: readonly Site[] }) {
  const { t, day, range } = useWords();
  const visits = useQuery(visitsQuery(week.weekOf, addDays(week.weekOf, 6))).data ?? [];
  const promisedNow = new Set(visits.flatMap((visit) => (visit.state === 'confirmed' ? [visit.siteId] : [])));
  // A visit that the shop itself takes out loses its slot with it.
  const broken = visits.filter(
    (visit) => visit.state === 'cancelled' && visit.promisedFrom !== null && !promisedNow.has(visit.siteId),
  );
  if (broken.length === 0) return null;
  return (
    <div className="note clay tight" role="status">
      <p>△ {t('promise.broken', { n: broken.length })}</p>
      <ul>
        {broken.map(({ id, siteId, date, promisedFrom, promisedTo, reason }) => (
          <li key={id}>
            {sites.find((site) => site.id === siteId)?.name ?? t('unknown')}: {day(date)},{' '}
            {range(promisedFrom!, promisedTo!)}. {reason !== null && <KeptSentence text={reason} />}
          </li>
        ))}
      </ul>
    </div>
  );
}
