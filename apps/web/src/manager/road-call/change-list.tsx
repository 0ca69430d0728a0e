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
                ? null
                : t('call.from', { day: day(visit.from.date), time: time(visit.from.startAt) })}{' '}
              {visit.to === null
                ? t('call.dropped')
                : t('call.to', { day: day(visit.to.date), time: time(visit.to.startAt) })}
            </span>
            {visit.breaksPromise ? <strong className={style.breaks}> △ {t('call.breaks')}</strong> : null}
          </span>
        </li>
      ))}
    </ul>
  );
}
