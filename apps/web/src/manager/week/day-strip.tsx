import { memo } from 'react';
import type { DayRoute, Visit } from '../../data/types.js';
import { minutesInto } from '../../words/local-date.js';
import { useWords } from '../../words/words.js';
import type { MovePlace } from './move-choice.js';
import type { WeekBefore } from './plan-search.js';
import { standingAnswer } from './standing-answer.js';
import type { Strip, StripVisit } from './strip.js';
import type { Hindrance } from './unmade-visits.js';
import style from './week.module.css';

export interface VisitHandlers {
  readonly onChoose: (visit: string | undefined) => void;
  readonly onPress: (visit: Visit, event: React.PointerEvent<HTMLElement>) => void;
  readonly onTakeUp: (visit: Visit) => void;
  readonly wasDragged: () => boolean;
}

interface Props {
  readonly technicianId: string;
  readonly technicianName: string;
  readonly date: string;
  /** null on a free day. */
  readonly route: DayRoute | null;
  readonly strip: Strip;
  readonly from: number;
  readonly to: number;
  readonly siteNames: ReadonlyMap<string, string>;
  /** Visits that nobody can make where they stand, and why. */
  readonly unmade: ReadonlyMap<string, Hindrance>;
  /** The visit looked at, where it is on this day. */
  readonly chosen: string | undefined;
  readonly before: WeekBefore['routes'][number] | null;
  /** Where the visit that is being moved would stand on this day. */
  readonly ghost: MovePlace | null;
  /** The visit that is being moved away from here. */
  readonly lifted: string | undefined;
  readonly handlers: VisitHandlers;
}

/** One technician's day: drives as thin lines, visits as blocks with a tick per machine, promises as pins. */
export const DayStrip = memo(function DayStrip(props: Props) {
  const { technicianId, technicianName, date, route, strip, from, to, siteNames, chosen, before, ghost, lifted } =
    props;
  const { t, minutes, distance, timeZone } = useWords();
  const at = (minute: number) => (100 * (minute - from)) / (to - from);
  const place = (start: number, end: number) => ({ left: `${at(start)}%`, width: `${at(end) - at(start)}%` });
  const placeOf = (startAt: string, endAt: string) =>
    place(minutesInto(date, startAt, timeZone), minutesInto(date, endAt, timeZone));
  const lost = route?.visits.filter((visit) => props.unmade.has(visit.id)).length ?? 0;
  const hours = Array.from({ length: (to - from) / 60 + 1 }, (_, index) => from + index * 60);
  return (
    <div className={style.strip}>
      <div className={style.who}>
        <span>{technicianName}</span>
        {route === null ? (
          <span className="figure pencil">{t('week.free')}</span>
        ) : (
          <span className="figure pencil">
            {lost > 0
              ? t('week.day-cut', { n: lost, all: route.visits.length })
              : t('week.day-figures', { driving: minutes(route.driveMinutes), distance: distance(route.driveMetres) })}
          </span>
        )}
        {route !== null && lost === 0 && route.overtimeMinutes > 0 ? (
          <span className={`figure ${style.over}`}>{t('week.overtime', { time: minutes(route.overtimeMinutes) })}</span>
        ) : null}
      </div>
      <div className={style.track} data-technician={technicianId} data-date={date} data-target={ghost !== null}>
        {hours.map((minute) => (
          <i key={minute} className={style.hour} style={{ left: `${at(minute)}%` }} />
        ))}
        {strip.stretches.map((stretch) => (
          <span
            key={`${stretch.kind}${stretch.from}`}
            className={`${style.stretch} ${style[stretch.kind]}`}
            style={place(stretch.from, stretch.to)}
          >
            {stretch.kind === 'lunch' ? <span>{t('week.lunch')}</span> : null}
          </span>
        ))}
        {before?.visits.map((old) => (
          <span
            key={`${old.siteId}${old.startAt}`}
            className={style.before}
            title={t('week.was', { site: siteNames.get(old.siteId) ?? t('unknown') })}
            style={placeOf(old.startAt, old.endAt)}
          />
        ))}
        <ol className={style.visits}>
          {strip.visits.map((each) => (
            <li key={each.visit.id}>
              <VisitBlock
                each={each}
                site={siteNames.get(each.visit.siteId) ?? t('unknown')}
                technician={technicianName}
                place={place}
                isChosen={chosen === each.visit.id}
                isLifted={lifted === each.visit.id}
                shift={ghost?.shifts.find((shift) => shift.visitId === each.visit.id)?.minutes ?? 0}
                hindrance={props.unmade.get(each.visit.id) ?? null}
                isBroken={ghost?.breaks.includes(each.visit.id) ?? false}
                handlers={props.handlers}
              />
            </li>
          ))}
        </ol>
        {ghost === null ? null : <span className={style.ghost} style={placeOf(ghost.startAt, ghost.endAt)} />}
      </div>
    </div>
  );
});

/** What stands beside the number of a visit that its site has spoken of; its name says it in words. */
const ANSWER_MARKS = { suits: '✓', asked: '?' } as const;

interface BlockProps {
  readonly each: StripVisit;
  readonly site: string;
  readonly technician: string;
  readonly place: (from: number, to: number) => { left: string; width: string };
  readonly isChosen: boolean;
  readonly isLifted: boolean;
  /** Minutes later that the move under way would make it. */
  readonly shift: number;
  readonly isBroken: boolean;
  readonly hindrance: Hindrance | null;
  readonly handlers: VisitHandlers;
}

function VisitBlock(props: BlockProps) {
  const { each, site, technician, place, isChosen, isLifted, shift, isBroken, hindrance, handlers } = props;
  const { t, range } = useWords();
  const { visit, order, from, to, promise, machines, edge } = each;
  const times = range(visit.startAt, visit.endAt);
  const promised =
    visit.promisedFrom === null || visit.promisedTo === null
      ? ''
      : t('week.promised', { slot: range(visit.promisedFrom, visit.promisedTo) });
  const answer = standingAnswer(visit);
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
        data-lifted={isLifted}
        data-broken={isBroken}
        data-unmade={hindrance !== null}
        aria-pressed={isChosen}
        aria-keyshortcuts="M"
        style={place(from, to)}
        title={`${order}. ${site}, ${times}`}
        aria-label={t('week.visit-label', {
          order,
          site,
          technician,
          times,
          machines,
          state: t(`visit.${visit.state}`),
          promised: [
            promised,
            answer === null ? '' : t(`answer.mark.${answer}`),
            hindrance === null ? '' : t(`unmade.${hindrance}`, { technician }),
          ]
            .filter(Boolean)
            .join(', '),
        })}
        onPointerDown={(event) => handlers.onPress(visit, event)}
        onKeyDown={(event) => {
          if (event.key.toLowerCase() !== 'm' || event.ctrlKey || event.metaKey || event.altKey) return;
          event.preventDefault();
          handlers.onTakeUp(visit);
        }}
        onClick={() => {
          if (!handlers.wasDragged()) handlers.onChoose(isChosen ? undefined : visit.id);
        }}
      >
        <span className={`figure ${style.order}`}>
          {hindrance === null ? order : '✕'}
          {visit.pinned ? '•' : ''}
          {answer === null ? '' : ANSWER_MARKS[answer]}
        </span>
        <span className={style.site}>{shift === 0 ? site : `${shift > 0 ? '+' : '−'}${Math.abs(shift)} min`}</span>
        <span className={style.ticks}>
          {Array.from({ length: machines }, (_, index) => (
            <i key={index} />
          ))}
        </span>
      </button>
    </>
  );
}
