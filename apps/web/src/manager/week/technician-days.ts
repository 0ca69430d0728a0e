import type { Absence, DayRoute, Technician, Week } from '../../data/types.js';
import { addDays, minutesInto, weekdayOf } from '../../words/local-date.js';
import { type Strip, stripOf } from './strip.js';

export interface TechnicianDay {
  readonly technicianId: string;
  readonly technicianName: string;
  readonly date: string;
  readonly route: DayRoute | null;
  readonly strip: Strip;
}

const minuteOfClock = (clock: string) => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3));

/** Every day of the week on which a technician works, planned or free, by date and then by technician. */
export function technicianDays(
  week: Week,
  technicians: readonly Technician[],
  absences: readonly Absence[],
  timeZone: string,
): TechnicianDay[] {
  return Array.from({ length: week.days }, (_, index) => addDays(week.weekOf, index)).flatMap((date) =>
    technicians.flatMap((technician): TechnicianDay[] => {
      const route = week.routes.find((each) => each.date === date && each.technicianId === technician.id) ?? null;
      const shifts = technician.shifts.filter((shift) => shift.weekday === weekdayOf(date));
      const isAway = absences.some(
        (each) => each.technicianId === technician.id && each.from <= date && date <= each.to,
      );
      const base = { technicianId: technician.id, technicianName: technician.name, date, route };
      const end = shifts.length === 0 ? null : Math.max(...shifts.map((shift) => minuteOfClock(shift.to)));
      if (route !== null)
        return [{ ...base, strip: stripOf(route, (instant) => minutesInto(date, instant, timeZone), end) }];
      if (shifts.length === 0 || isAway || !technician.active || week.routes.length === 0) return [];
      const free = shifts.map((shift) => ({
        kind: 'slack' as const,
        from: minuteOfClock(shift.from),
        to: minuteOfClock(shift.to),
      }));
      return [{ ...base, strip: { visits: [], stretches: free } }];
    }),
  );
}
