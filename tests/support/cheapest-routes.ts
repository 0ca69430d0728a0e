import type { PlanningItem, PlanningSite, PlanningTechnician } from '@deckround/planning';
import { localToMinutes } from '../../libs/planning/src/check/local-time.js';
import type { SnapshotLookup } from '../../libs/planning/src/check/snapshot-lookup.js';

/** The cheapest way for one technician to do exactly these items on one day. */
export interface CheapestRoute {
  technicianId: string;
  date: string;
  /** In order of driving. */
  siteIds: string[];
  itemIds: string[];
  cents: number;
  hasLunch: boolean;
  overtimeMinutes: number;
  /** Preparation that would be done once more if every item had its own visit. */
  sharedMinutes: number;
}

interface Span {
  open: number;
  close: number;
}

interface Visit {
  /** Row of `WorkDay.drives`; 0 is the base. */
  place: number;
  site: PlanningSite;
  access: Span[];
  items: PlanningItem[];
  minutes: number;
}

interface WorkDay {
  technician: PlanningTechnician;
  date: string;
  start: number;
  end: number;
  latestReturn: number;
  lunch: { minutes: number; earliest: number; latest: number } | null;
  /** Row = from, column = to: the base, then the sites in order. */
  drives: { minutes: number; cents: number }[][];
}

/**
 * For every technician-day and every set of items that can be done on it, the cheapest route: every order of the sites
 * and every leg for lunch is tried. Written apart from the planner, as its oracle; for about a dozen items at five sites,
 * without promises and days under way.
 */
export function cheapestRoutes(lookup: SnapshotLookup): CheapestRoute[] {
  return lookup.snapshot.technicians.flatMap((technician) =>
    technician.shifts.flatMap(({ date, start, end }) => {
      const local = (clock: string) => localToMinutes(technician.zone, date, clock);
      const { lunch, maxOvertimeMinutes } = technician;
      const places = [`base ${technician.id}`, ...lookup.snapshot.sites.map((site) => `site ${site.id}`)];
      return routesOn(lookup, {
        technician,
        date,
        start: local(start),
        end: local(end),
        latestReturn: local(end) + maxOvertimeMinutes,
        lunch: lunch && { minutes: lunch.minutes, earliest: local(lunch.earliest), latest: local(lunch.latest) },
        drives: places.map((from) => places.map((to) => lookup.drive(from, to))),
      });
    }),
  );
}

function routesOn(lookup: SnapshotLookup, day: WorkDay): CheapestRoute[] {
  let choices: Visit[][] = [[]];
  lookup.snapshot.sites.forEach((site, s) => {
    const visits = visitsTo(lookup, day, site, s + 1);
    choices = choices.flatMap((chosen) => [chosen, ...visits.map((visit) => [...chosen, visit])]);
  });
  return choices.flatMap((visits) => (visits.length === 0 ? [] : (cheapestRoute(lookup, day, visits) ?? [])));
}

/** One visit for every set of the site's items that may be done together on this day. */
function visitsTo(lookup: SnapshotLookup, day: WorkDay, site: PlanningSite, place: number): Visit[] {
  const { technician, date } = day;
  const isBarred = lookup.snapshot.barred?.some(
    (bar) =>
      bar.siteId === site.id && (bar.technicianId ?? technician.id) === technician.id && (bar.date ?? date) === date,
  );
  if (isBarred) return [];
  const doable = lookup.snapshot.items.filter(
    (item) =>
      lookup.machines.get(item.machineId)!.siteId === site.id &&
      (item.skill === null || technician.skills.includes(item.skill)) &&
      (item.releaseDate === null || item.releaseDate <= date) &&
      (!item.latestDate || item.latestDate >= date),
  );
  const access = accessOf(site);
  return subsets(doable)
    .filter((items) => items.length > 0)
    .filter(
      (items) =>
        site.downRule === 'one-by-one' || new Set(items.map((item) => item.machineId)).size <= site.maxMachinesDown,
    )
    .map((items) => {
      const work = items.reduce((sum, item) => sum + item.minutes, 0);
      return { place, site, access, items, minutes: site.setupMinutes + lookup.preparationMinutes(items) + work };
    });
}

/** Windows that touch are one stay. */
function accessOf({ zone, windows }: PlanningSite): Span[] {
  const spans: Span[] = [];
  const byOpening = windows
    .map(({ date, open, close }) => ({
      open: localToMinutes(zone, date, open),
      close: localToMinutes(zone, date, close),
    }))
    .sort((a, b) => a.open - b.open);
  for (const span of byOpening) {
    const last = spans.at(-1);
    if (last && span.open <= last.close) last.close = Math.max(last.close, span.close);
    else spans.push(span);
  }
  return spans;
}

function cheapestRoute(lookup: SnapshotLookup, day: WorkDay, visits: Visit[]): CheapestRoute | null {
  const { technician, date } = day;
  const items = visits.flatMap((visit) => visit.items);
  const work = visits.reduce((sum, visit) => sum + visit.minutes, 0);
  if (day.start + work > day.latestReturn) return null;
  const d = Math.round((Date.parse(date) - Date.parse(lookup.snapshot.firstDate)) / 86_400_000);
  const premium = Math.max(0, technician.overtimeCentsPerHour - technician.wageCentsPerHour);
  const inAnyOrder =
    items.reduce((sum, item) => sum + item.timingCostCents[d]!, 0) +
    visits.reduce((sum, { site }) => sum + site.visitFeeCents + strangerCents(site, technician), 0);

  let best: { cents: number; order: Visit[]; hasLunch: boolean; overtimeMinutes: number } | null = null;
  for (const order of permutations(visits)) {
    const back = earliestReturn(day, order);
    if (back === null) continue;
    const stops = [0, ...order.map((visit) => visit.place), 0];
    const legs = stops.slice(1).map((to, leg) => day.drives[stops[leg]!]![to]!);
    const paid = work + legs.reduce((sum, drive) => sum + drive.minutes, 0);
    const overtimeMinutes = Math.max(0, back.at - day.end);
    const cents =
      inAnyOrder +
      legs.reduce((sum, drive) => sum + drive.cents, 0) +
      Math.round((technician.wageCentsPerHour * paid) / 60) +
      Math.round((premium * overtimeMinutes) / 60);
    if (best === null || cents < best.cents) best = { cents, order, hasLunch: back.hasLunch, overtimeMinutes };
  }
  if (best === null) return null;
  const alone = items.reduce((sum, item) => sum + lookup.preparationMinutes([item]), 0);
  return {
    technicianId: technician.id,
    date,
    siteIds: best.order.map((visit) => visit.site.id),
    itemIds: items.map((item) => item.id),
    cents: best.cents,
    hasLunch: best.hasLunch,
    overtimeMinutes: best.overtimeMinutes,
    sharedMinutes: alone - lookup.preparationMinutes(items),
  };
}

function strangerCents({ preferredTechnicianId, preferenceCents }: PlanningSite, { id }: PlanningTechnician): number {
  return preferredTechnicianId === null || preferredTechnicianId === id ? 0 : preferenceCents;
}

/** With lunch on whichever leg is best; without one where none is asked for or the route is back by its latest start. */
function earliestReturn(day: WorkDay, order: Visit[]): { at: number; hasLunch: boolean } | null {
  const plain = returnOf(day, order, -1);
  if (day.lunch === null || (plain !== null && plain <= day.lunch.latest)) {
    return plain === null ? null : { at: plain, hasLunch: false };
  }
  let best = Infinity;
  for (let leg = 0; leg <= order.length; leg++) best = Math.min(best, returnOf(day, order, leg) ?? Infinity);
  return best === Infinity ? null : { at: best, hasLunch: true };
}

/**
 * Return to the base when everything happens as early as it can, which costs least: only a late return costs anything.
 *
 * @param lunchLeg lunch is taken between leaving the stop before this drive and beginning at the one after it; −1 = none
 */
function returnOf(day: WorkDay, order: Visit[], lunchLeg: number): number | null {
  let now = day.start;
  let at = 0;
  for (let leg = 0; leg <= order.length; leg++) {
    const visit = order[leg];
    const there = now + day.drives[at]![visit?.place ?? 0]!.minutes;
    if (leg === lunchLeg) {
      const { minutes, earliest, latest } = day.lunch!;
      if (now > latest) return null;
      // begun before the drive ends, lunch puts it off by its length; else it waits for its hour at the far end
      now = Math.max(there, earliest) + minutes;
    } else {
      now = there;
    }
    if (visit) {
      const start = earliestStart(visit, now);
      if (start === null) return null;
      now = start + visit.minutes;
      at = visit.place;
    }
  }
  return now <= day.latestReturn ? now : null;
}

function earliestStart({ access, minutes }: Visit, arrival: number): number | null {
  for (const { open, close } of access) {
    const start = Math.max(open, arrival);
    if (start + minutes <= close) return start;
  }
  return null;
}

function subsets<T>(all: readonly T[]): T[][] {
  let found: T[][] = [[]];
  for (const one of all) found = found.concat(found.map((some) => [...some, one]));
  return found;
}

function permutations<T>(all: readonly T[]): T[][] {
  if (all.length <= 1) return [[...all]];
  return all.flatMap((first, k) => permutations(all.toSpliced(k, 1)).map((rest) => [first, ...rest]));
}
