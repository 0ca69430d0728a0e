import { useQuery } from '@tanstack/react-query';
import { lazy, Suspense, useMemo, useRef } from 'react';
import { absencesQuery, machinesQuery } from '../../data/queries.js';
import type { Site, Technician, Week } from '../../data/types.js';
import { WhenNear } from '../../design/when-near.js';
import { minutesInto } from '../../words/local-date.js';
import { useWords } from '../../words/words.js';
import { BrokenPromises } from './broken-promises.js';
import { ComparedWeek } from './compared-week.js';
import { ExtraTimeWorth } from './extra-time.js';
import { LeftOut } from './left-out.js';
import { MoveDone, MoveSlip } from './move-slip.js';
import { MovedMachines } from './moved-machines.js';
import type { WeekBefore } from './plan-search.js';
import { axisOf } from './strip.js';
import { technicianDays } from './technician-days.js';
import { hindrancesOf, UnmadeVisits } from './unmade-visits.js';
import { useMove } from './use-move.js';
import { VisitDetails } from './visit-details.js';
import style from './week.module.css';
import { namesOf, WeekStrips } from './week-strips.js';

const WeekMap = lazy(() => import('./map-of-week.js').then((module) => ({ default: module.MapOfWeek })));

interface Props {
  readonly week: Week;
  readonly sites: readonly Site[];
  readonly technicians: readonly Technician[];
  readonly chosen: string | undefined;
  readonly onChoose: (visit: string | undefined) => void;
  readonly before: WeekBefore | null;
}

/** The strips with the map beside them, the visit looked at, and what was left out. */
export function WeekBoard({ week, sites, technicians, chosen, onChoose, before }: Props) {
  const { t, timeZone } = useWords();
  const absences = useQuery(absencesQuery).data;
  const machines = useQuery(machinesQuery).data ?? [];
  const days = useMemo(
    () => technicianDays(week, technicians, absences ?? [], timeZone),
    [week, technicians, absences, timeZone],
  );
  const axis = useMemo(() => axisOf(days.map((each) => each.strip)), [days]);
  const siteNames = useMemo(() => namesOf(sites), [sites]);
  const unmade = useMemo(() => hindrancesOf(week), [week]);
  const slip = useRef<HTMLDivElement>(null);
  const minuteOf = (date: string, instant: string) => minutesInto(date, instant, timeZone);
  const moves = useMove({ plan: week.planRunId, days, minuteOf, axis, slip });
  const choose = useRef(onChoose);
  choose.current = onChoose;
  const { press, start, wasDragged } = moves;
  const handlers = useMemo(
    () => ({
      onChoose: (visit: string | undefined) => choose.current(visit),
      onPress: press,
      onTakeUp: (visit: Parameters<typeof start>[0]) => start(visit, 'keys'),
      wasDragged,
    }),
    [press, start, wasDragged],
  );
  const visit = week.routes.flatMap((route) => route.visits).find((each) => each.id === chosen);
  return (
    <>
      <section className={style.strips} aria-label={t('week.strips')}>
        <MoveDone moves={moves} />
        <UnmadeVisits week={week} sites={sites} technicians={technicians} onChoose={onChoose} />
        <MovedMachines week={week} sites={sites} machines={machines} onChoose={onChoose} />
        <BrokenPromises week={week} sites={sites} />
        {before === null ? null : <ComparedWeek before={before} week={week} sites={sites} technicians={technicians} />}
        {week.routes.length === 0 ? (
          <p className="note">{t(week.planRunId === null ? 'week.none' : 'week.none-pays')}</p>
        ) : (
          <WeekStrips
            days={days}
            axis={axis}
            siteNames={siteNames}
            unmade={unmade}
            chosen={chosen}
            before={before}
            move={moves.move}
            handlers={handlers}
          />
        )}
      </section>
      <aside className={style.aside}>
        {visit ? (
          <VisitDetails
            visit={visit}
            sites={sites}
            machines={machines}
            technicians={technicians}
            hindrance={unmade.get(visit.id) ?? null}
            onMove={() => start(visit, 'keys')}
            onClose={() => onChoose(undefined)}
          />
        ) : null}
        <WhenNear className={style.map}>
          <Suspense fallback={<div className={style.map} />}>
            <WeekMap week={week} sites={sites} technicians={technicians} chosen={chosen} onChoose={onChoose} />
          </Suspense>
        </WhenNear>
      </aside>
      <LeftOut week={week} machines={machines} sites={sites} />
      {week.routes.length > 0 ? (
        <ExtraTimeWorth key={week.weekOf} weekOf={week.weekOf} technicians={technicians} />
      ) : null}
      {moves.move === null ? null : (
        <MoveSlip
          move={moves.move}
          siteName={siteNames.get(moves.move.visit.siteId) ?? ''}
          technicians={technicians}
          slip={slip}
          onStep={moves.step}
          onFinish={moves.finish}
          onCancel={moves.cancel}
        />
      )}
    </>
  );
}
