import type { DayRoute } from '../../data/types.js';
import { minutesInto } from '../../words/local-date.js';
import { useWords } from '../../words/words.js';
import type { WeekBefore } from './plan-search.js';
import type { Strip, StripVisit } from './strip.js';
import style from './week.module.css';

interface Props {
  readonly route: DayRoute;
  readonly strip: Strip;
  readonly axis: { readonly from: number; readonly to: number };
  readonly hours: readonly number[];
  readonly siteName: (id: string) => string;
  readonly chosen: string | undefined;
  readonly onChoose: (visit: string | undefined) => void;
  readonly before: WeekBefore['routes'][number] | null;
}

/** One technician's day: drives as thin lines, visits as blocks with a tick per machine, promises as pins. */
export function DayStrip({ route, strip, axis, hours, siteName, chosen, onChoose, before }: Props) {
  const { t, minutes, distance, timeZone } = useWords();
  const at = (minute: number) => (100 * (minute - axis.from)) / (axis.to - axis.from);
  const place = (from: number, to: number) => ({ left: `${at(from)}%`, width: `${at(to) - at(from)}%` });
  return (
    <div className={style.strip}>
      <div className={style.who}>
        <span>{route.technicianName}</span>
        <span className="figure pencil">
          {t('week.day-figures', { driving: minutes(route.driveMinutes), distance: distance(route.driveMetres) })}
        </span>
        {route.overtimeMinutes > 0 ? (
          <span className={`figure ${style.over}`}>{t('week.overtime', { time: minutes(route.overtimeMinutes) })}</span>
        ) : null}
      </div>
      <div className={style.track}>
        {hours.map((minute) => (
          <i key={minute} className={style.hour} style={{ left: `${at(minute)}%` }} />
        ))}
        {strip.stretches.map(({ kind, from, to }) => (
          <span key={`${kind}${from}`} className={`${style.stretch} ${style[kind]}`} style={place(from, to)}>
            {kind === 'lunch' ? <span>{t('week.lunch')}</span> : null}
          </span>
        ))}
        {before?.visits.map((old) => (
          <span
            key={`${old.siteId}${old.startAt}`}
            className={style.before}
            title={t('week.was', { site: siteName(old.siteId) })}
            style={place(minutesInto(route.date, old.startAt, timeZone), minutesInto(route.date, old.endAt, timeZone))}
          />
        ))}
        <ol className={style.visits}>
          {strip.visits.map((each) => (
            <li key={each.visit.id}>
              <VisitBlock
                each={each}
                site={siteName(each.visit.siteId)}
                technician={route.technicianName}
                place={place}
                isChosen={chosen === each.visit.id}
                onChoose={onChoose}
              />
            </li>
          ))}
        </ol>
      </div>
    </div>
  );
}

interface BlockProps {
  readonly each: StripVisit;
  readonly site: string;
  readonly technician: string;
  readonly place: (from: number, to: number) => { left: string; width: string };
  readonly isChosen: boolean;
  readonly onChoose: (visit: string | undefined) => void;
}

function VisitBlock({ each, site, technician, place, isChosen, onChoose }: BlockProps) {
  const { t, range } = useWords();
  const { visit, order, from, to, promise, machines, edge } = each;
  const times = range(visit.startAt, visit.endAt);
  const promised =
    visit.promisedFrom === null || visit.promisedTo === null
      ? ''
      : t('week.promised', { slot: range(visit.promisedFrom, visit.promisedTo) });
  return (
    <>
      {promise === null ? null : (
        <span className={style.promise} style={place(promise.from, promise.to)} aria-hidden="true">
          <svg viewBox="0 0 10 14" width="10" height="14" aria-hidden="true">
            <path d="M5 13V7M5 7a3 3 0 1 0-.01 0z" fill="currentColor" stroke="currentColor" strokeWidth="1.4" />
          </svg>
        </span>
      )}
      <button
        type="button"
        className={style.visit}
        data-edge={edge}
        data-state={visit.state}
        aria-pressed={isChosen}
        style={place(from, to)}
        title={`${order}. ${site}, ${times}`}
        aria-label={t('week.visit-label', {
          order,
          site,
          technician,
          times,
          machines,
          state: t(`visit.${visit.state}`),
          promised,
        })}
        onClick={() => onChoose(isChosen ? undefined : visit.id)}
      >
        <span className={`figure ${style.order}`}>{order}</span>
        <span className={style.site}>{site}</span>
        <span className={style.ticks}>
          {Array.from({ length: machines }, (_, index) => (
            <i key={index} />
          ))}
        </span>
      </button>
    </>
  );
}
