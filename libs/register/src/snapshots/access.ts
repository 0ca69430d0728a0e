import { clockOf, minuteOf, weekdayOf } from '../local-date.js';
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

/** A day's work: of a day in two stretches one shift with a rest between them. */
export interface DayShift {
  readonly date: string;
  readonly start: string;
  readonly end: string;
  readonly rest?: { readonly from: string; readonly to: string };
}

/** Shifts on the given days, each day once. Of more than two stretches the longest break is the rest. */
export function shiftsOn(
  dates: readonly string[],
  weekly: readonly WeeklyWindow[],
  absences: readonly DateRange[],
): DayShift[] {
  return dates.flatMap((date) => {
    const stretches = onDates([date], weekly, absences).sort((a, b) => (a.from < b.from ? -1 : 1));
    const first = stretches[0];
    if (!first) return [];
    const [rest] = stretches
      .slice(1)
      .map(({ from: to }, k) => ({ from: stretches[k]!.to, to }))
      .filter(({ from, to }) => from < to)
      .sort((a, b) => minutesIn(b) - minutesIn(a));
    return [{ date, start: first.from, end: stretches.at(-1)!.to, ...(rest && { rest }) }];
  });
}

function minutesIn({ from, to }: NonNullable<DayShift['rest']>): number {
  return minuteOf(to) - minuteOf(from);
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
  return shiftsOn([date], shifts, []).some(({ start, end, rest }) => {
    if (from < start || to > clockOf(minuteOf(end) + maxOvertimeMinutes)) return false;
    return rest === undefined || to <= rest.from || from >= rest.to;
  });
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
