import type { Site } from '../../data/types.js';
import { useWords } from '../../words/words.js';
import { DayStrip, type VisitHandlers } from './day-strip.js';
import type { WeekBefore } from './plan-search.js';
import type { TechnicianDay } from './technician-days.js';
import type { Hindrance } from './unmade-visits.js';
import type { Move } from './use-move.js';
import style from './week.module.css';

interface Props {
  readonly days: readonly TechnicianDay[];
  readonly axis: { readonly from: number; readonly to: number };
  readonly siteNames: ReadonlyMap<string, string>;
  readonly unmade: ReadonlyMap<string, Hindrance>;
  readonly chosen: string | undefined;
  readonly before: WeekBefore | null;
  readonly move: Move | null;
  readonly handlers: VisitHandlers;
}

/** One strip per technician-day on one clock axis, grouped by day. */
export function WeekStrips({ days, axis, siteNames, unmade, chosen, before, move, handlers }: Props) {
  const { day } = useWords();
  const hours = Array.from({ length: (axis.to - axis.from) / 60 + 1 }, (_, index) => axis.from + index * 60);
  const isOn = (each: TechnicianDay, id: string | undefined) =>
    id !== undefined && each.strip.visits.some(({ visit }) => visit.id === id);
  return (
    <div data-moving={move !== null}>
      <div className={style.axis} aria-hidden="true">
        {hours.map((minute) => (
          <span
            key={minute}
            className="figure"
            style={{ left: `${(100 * (minute - axis.from)) / (axis.to - axis.from)}%` }}
          >
            {minute / 60}
          </span>
        ))}
      </div>
      {[...Map.groupBy(days, (each) => each.date)].map(([date, strips]) => (
        <section key={date} className={style.day}>
          <h2>{day(date)}</h2>
          {strips.map((each) => {
            const { place } = move ?? {};
            const isTarget = place && place.technicianId === each.technicianId && place.date === each.date;
            return (
              <DayStrip
                key={each.technicianId}
                {...each}
                from={axis.from}
                to={axis.to}
                siteNames={siteNames}
                unmade={unmade}
                chosen={isOn(each, chosen) ? chosen : undefined}
                before={
                  before?.routes.find((old) => old.date === date && old.technicianId === each.technicianId) ?? null
                }
                ghost={isTarget ? place : null}
                lifted={isOn(each, move?.visit.id) ? move?.visit.id : undefined}
                handlers={handlers}
              />
            );
          })}
        </section>
      ))}
    </div>
  );
}

export function namesOf(sites: readonly Site[]): ReadonlyMap<string, string> {
  return new Map(sites.map((site) => [site.id, site.name]));
}
