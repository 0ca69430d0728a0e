import type { Site, Technician, Week } from '../../data/types.js';
import { useWords } from '../../words/words.js';

export type Hindrance = Week['cannotBeMade'][number]['why'];

interface Props {
  readonly week: Week;
  readonly sites: readonly Site[];
  readonly technicians: readonly Technician[];
  readonly onChoose: (visit: string) => void;
}

/** Visits that nobody can make where they stand, by day and reason, and what can be done about it. */
export function UnmadeVisits({ week, sites, technicians, onChoose }: Props) {
  const { t, day } = useWords();
  const whyOf = hindrancesOf(week);
  const visits = week.routes.flatMap((route) => route.visits).filter((visit) => whyOf.has(visit.id));
  if (visits.length === 0) return null;
  const groups = Map.groupBy(visits, ({ id, date, technicianId }) => {
    const technician = technicians.find((each) => each.id === technicianId)?.name ?? t('unknown');
    return `${day(date)}, ${t(`unmade.${whyOf.get(id)!}`, { technician })}`;
  });
  return (
    <div className="note clay tight" role="status">
      <p>✕ {t('unmade.note', { n: visits.length })}</p>
      <ul>
        {[...groups].map(([head, those]) => (
          <li key={head}>
            {head}:{' '}
            {those.map(({ id, siteId }) => (
              <button key={id} type="button" className="press-plain" onClick={() => onChoose(id)}>
                {sites.find((site) => site.id === siteId)?.name ?? t('unknown')}
              </button>
            ))}
          </li>
        ))}
      </ul>
    </div>
  );
}

export function hindrancesOf(week: Week): ReadonlyMap<string, Hindrance> {
  return new Map(week.cannotBeMade.map(({ visitId, why }) => [visitId, why]));
}
