import type { VisitChange } from '../../data/types.js';
import { linear } from '../../design/scale.js';
import { minutesInto } from '../../words/local-date.js';
import { useWords } from '../../words/words.js';
import style from './road-call.module.css';

const [FROM, TO] = [6 * 60, 19 * 60] as const;

/** Whom a change concerns: each visit before and after, as words and on a small clock. */
export function ChangeList({ visits }: { readonly visits: readonly VisitChange[] }) {
  const { t, day, time, timeZone } = useWords();
  const x = linear([FROM, TO], [0, 100]);
  const at = (place: { date: string; startAt: string }) =>
    Math.max(0, Math.min(98, x(minutesInto(place.date, place.startAt, timeZone))));
  const becomes = ({ to, workTo }: VisitChange) => {
    if (to !== null) return t('call.to', { day: day(to.date), time: time(to.startAt) });
    if (workTo.length === 0) return t('call.dropped');
    const by = workTo.map((each) =>
      t('call.work-by', { technician: each.technicianName, day: day(each.date), time: time(each.startAt) }),
    );
    return t('call.work-to', { by: by.join('; ') });
  };
  return (
    <ul className={style.changes}>
      {visits.map((visit) => (
        <li key={visit.visitId ?? visit.siteId}>
          <span className={style.clock} aria-hidden="true">
            {visit.from ? <i className={style.was} style={{ left: `${at(visit.from)}%` }} /> : null}
            {visit.to ? <i className={style.is} style={{ left: `${at(visit.to)}%` }} /> : null}
          </span>
          <span>
            {visit.siteName}{' '}
            <span className="pencil">
              {visit.from === null
                ? visit.visitId !== null && t('call.rescued')
                : t('call.from', { day: day(visit.from.date), time: time(visit.from.startAt) })}{' '}
              {becomes(visit)}
            </span>
            {visit.breaksPromise ? <strong className={style.breaks}> △ {t('call.breaks')}</strong> : null}
          </span>
        </li>
      ))}
    </ul>
  );
}
