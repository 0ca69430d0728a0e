import { useMemo } from 'react';
import type { Site, Technician, Week } from '../../data/types.js';
import { minutesInto, weekdayOf } from '../../words/local-date.js';
import { useWords } from '../../words/words.js';
import { DayStrip } from './day-strip.js';
import type { WeekBefore } from './plan-search.js';
import { axisOf, stripOf } from './strip.js';
import style from './week.module.css';

interface Props {
  readonly week: Week;
  readonly sites: readonly Site[];
  readonly technicians: readonly Technician[];
  readonly chosen: string | undefined;
  readonly onChoose: (visit: string | undefined) => void;
  readonly before: WeekBefore | null;
}

/** One strip per technician-day on one clock axis, grouped by day. */
export function WeekStrips({ week, sites, technicians, chosen, onChoose, before }: Props) {
  const { t, day, timeZone } = useWords();
  const strips = useMemo(
    () =>
      week.routes.map((route) => {
        const technician = technicians.find((each) => each.id === route.technicianId);
        const shift = technician?.shifts.filter((each) => each.weekday === weekdayOf(route.date)).at(-1);
        const shiftEnd = shift ? Number(shift.to.slice(0, 2)) * 60 + Number(shift.to.slice(3)) : null;
        const minuteOf = (instant: string) => minutesInto(route.date, instant, timeZone);
        return { route, strip: stripOf(route, minuteOf, shiftEnd) };
      }),
    [week, technicians, timeZone],
  );
  const axis = axisOf(strips.map((each) => each.strip));
  const names = useMemo(() => new Map(sites.map((site) => [site.id, site.name])), [sites]);
  const days = [...new Set(week.routes.map((route) => route.date))];
  const hours = Array.from({ length: (axis.to - axis.from) / 60 + 1 }, (_, index) => axis.from + index * 60);
  return (
    <div>
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
      {days.map((date) => (
        <section key={date} className={style.day}>
          <h2>{day(date)}</h2>
          {strips
            .filter(({ route }) => route.date === date)
            .map(({ route, strip }) => (
              <DayStrip
                key={route.technicianId}
                route={route}
                strip={strip}
                axis={axis}
                hours={hours}
                siteName={(id) => names.get(id) ?? t('unknown')}
                chosen={chosen}
                onChoose={onChoose}
                before={
                  before?.routes.find((old) => old.date === date && old.technicianId === route.technicianId) ?? null
                }
              />
            ))}
        </section>
      ))}
    </div>
  );
}
