import type { Machine, Site, Week } from '../../data/types.js';
import { useWords } from '../../words/words.js';

interface Props {
  readonly week: Week;
  readonly sites: readonly Site[];
  readonly machines: readonly Machine[];
  readonly onChoose: (visit: string) => void;
}

/** Machines that stand at another site than the visit that was planned for them. */
export function MovedMachines({ week, sites, machines, onChoose }: Props) {
  const { t, day } = useWords();
  const moved = week.routes
    .flatMap((route) => route.visits)
    .flatMap((visit) => {
      const ids = visit.items.flatMap((item) => (item.isElsewhere ? [item.machineId] : []));
      return [...new Set(ids)].map((machineId) => ({ visit, machineId }));
    });
  if (moved.length === 0) return null;
  const nameOf = (siteId: string | undefined) => sites.find(({ id }) => id === siteId)?.name ?? t('unknown');
  return (
    <div className="note clay tight" role="status">
      <p>✕ {t('elsewhere.note', { n: moved.length })}</p>
      <ul>
        {moved.map(({ visit, machineId }) => {
          const machine = machines.find(({ id }) => id === machineId);
          return (
            <li key={`${visit.id} ${machineId}`}>
              {t('elsewhere.machine', { machine: machine?.code ?? t('unknown'), site: nameOf(machine?.siteId) })}{' '}
              <button type="button" className="press-plain" onClick={() => onChoose(visit.id)}>
                {nameOf(visit.siteId)}, {day(visit.date)}
              </button>
            </li>
          );
        })}
      </ul>
    </div>
  );
}
