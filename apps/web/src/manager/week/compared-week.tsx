import type { Site, Technician, Week } from '../../data/types.js';
import { useWords } from '../../words/words.js';
import { changesSince, type Stand } from './changes-since.js';
import type { WeekBefore } from './plan-search.js';

interface Props {
  readonly before: WeekBefore;
  readonly week: Week;
  readonly sites: readonly Site[];
  readonly technicians: readonly Technician[];
}

/** In words what the outlines of the plan before show: which visits have another place, and what that is worth. */
export function ComparedWeek({ before, week, sites, technicians }: Props) {
  const { t, day, time, money } = useWords();
  const changes = changesSince(before, week);
  const count = (what: (typeof changes)[number]['what']) => changes.filter((change) => change.what === what).length;
  const siteOf = (id: string) => sites.find((site) => site.id === id)?.name ?? t('unknown');
  const standOf = (stand: Stand | null) =>
    stand === null
      ? ''
      : `${day(stand.date)} ${time(stand.startAt)}, ${technicians.find(({ id }) => id === stand.technicianId)?.name ?? ''}`;
  const cents = before.cost === null || !week.cost ? null : (week.cost['total'] ?? 0) - before.cost;
  return (
    <section className="note tight" aria-label={t('week.compare')}>
      <p>
        {changes.length === 0
          ? t('compare.same')
          : t('compare.sentence', {
              moved: count('moved'),
              retimed: count('retimed'),
              added: count('new'),
              gone: count('gone'),
            })}{' '}
        {cents === null
          ? null
          : cents >= 0
            ? t('compare.dearer', { money: money(cents) })
            : t('compare.cheaper', { money: money(-cents) })}
      </p>
      {changes.length > 0 ? (
        <details>
          <summary>{t('compare.each')}</summary>
          <ul>
            {changes.map(({ siteId, what, from, to }) => (
              <li key={`${siteId}${from?.startAt}${to?.startAt}`}>
                {t(`compare.${what}`, { site: siteOf(siteId), from: standOf(from), to: standOf(to) })}
              </li>
            ))}
          </ul>
        </details>
      ) : null}
    </section>
  );
}
