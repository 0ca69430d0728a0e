import { clockOf, weekdayOf } from '../local-date.js';
import type { DateRange, Register, Site, Technician, WeeklyWindow } from '../register.js';

/** Who works when, and where somebody may be sent when. */
export type Calendars = Pick<Register, 'technicians' | 'sites' | 'events' | 'bars'>;

/** Weekly hours on the given days, those within a closed range left out; wall clock. */
export function onDates(dates: readonly string[], weekly: readonly WeeklyWindow[], closed: readonly DateRange[]) {
  return dates
    .filter((date) => !covers(closed, date))
    .flatMap((date) =>
      weekly
        .filter((window) => window.weekday === weekdayOf(date))
        .map((window) => ({ date, from: clockOf(window.startMinute), to: clockOf(window.endMinute) })),
    );
}

/** Access on the given days; on the day of an event until it begins. */
export function accessOf(register: Pick<Register, 'events'>, site: Site, dates: readonly string[]) {
  const events = register.events.filter((event) => event.siteId === site.id);
  return onDates(dates, site.access, site.blackouts).flatMap(({ date, from, to }) => {
    const event = events.find((each) => each.date === date);
    const close = event && clockOf(event.fromMinute) < to ? clockOf(event.fromMinute) : to;
    return from < close ? [{ date, open: from, close }] : [];
  });
}

export type Hindrance = 'technician-away' | 'technician-off' | 'site-closed' | 'barred';

/** Where and when a visit stands. */
export interface PlacedVisit {
  readonly siteId: string;
  readonly technicianId: string;
  readonly date: string;
  /** Begin and end of its work by the wall clock of a zone. */
  clock(zone: string): { readonly from: string; readonly to: string };
}

/** Why nobody can make a visit where it stands; null = somebody can. Whether its day has time for it is not looked at. */
export function hindranceOf(calendars: Calendars, visit: PlacedVisit): Hindrance | null {
  const { siteId, technicianId, date } = visit;
  const technician = calendars.technicians.find((each) => each.id === technicianId);
  if (technician && covers(technician.absences, date)) return 'technician-away';
  if (!technician || !worksAt(technician, date, visit.clock(technician.timeZone))) return 'technician-off';
  const site = calendars.sites.find((each) => each.id === siteId);
  if (!site || !isOpenAt(calendars, site, date, visit.clock(site.timeZone))) return 'site-closed';
  const isBarred = calendars.bars.some(
    (bar) =>
      bar.siteId === siteId &&
      (bar.technicianId === null || bar.technicianId === technicianId) &&
      (bar.date === null || bar.date === date),
  );
  return isBarred ? 'barred' : null;
}

function worksAt(
  { shifts, maxOvertimeMinutes }: Technician,
  date: string,
  { from, to }: ReturnType<PlacedVisit['clock']>,
): boolean {
  return shifts.some(
    ({ weekday, startMinute, endMinute }) =>
      weekday === weekdayOf(date) && clockOf(startMinute) <= from && to <= clockOf(endMinute + maxOvertimeMinutes),
  );
}

function isOpenAt(
  calendars: Calendars,
  site: Site,
  date: string,
  { from, to }: ReturnType<PlacedVisit['clock']>,
): boolean {
  return accessOf(calendars, site, [date]).some((window) => window.open <= from && to <= window.close);
}

function covers(ranges: readonly DateRange[], date: string): boolean {
  return ranges.some((range) => range.from <= date && date <= range.to);
}
