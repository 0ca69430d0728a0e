import type { TravelMatrix } from '@deckround/routing';
import { SnapshotInconsistent } from './errors.js';
import { laterTripCents, meanWage } from './later-trip.js';
import { type PreparationForest, preparationBits, preparationForest } from './preparation.js';
import type { PlanningBar, PlanningSnapshot, PlanningTechnician } from './snapshot.js';
import { travelOf } from './travel-of.js';
import { datesFrom, WallClock } from './wall-clock.js';

/** Minutes are elapsed minutes from the shop's midnight at the first date; every index points into the snapshot. */
export interface TimeSpan {
  open: number;
  close: number;
}

export interface TechnicianDay {
  technician: number;
  day: number;
  date: string;
  shiftStart: number;
  shiftEnd: number;
  /** Place where the day begins: the base, or the site where the technician is now. */
  startPlace: number;
  latestReturn: number;
  /** Begins between `from` and `to`; a rest between two stretches at their only minute. */
  lunch: { minutes: number; from: number; to: number } | null;
}

export interface InstanceItem {
  index: number;
  site: number;
  machine: number;
  /** First day index it can be done. */
  releaseDay: number;
  /** Day index of the visit in which it stands in a planned week; −1 = none. */
  standsOn: number;
  /** Last day index it can be done; −1 = none. */
  latestDay: number;
  preparationBits: number;
  minutes: number;
  skill: string | null;
  mustDo: boolean;
  timingCents: readonly number[];
  /** Deferral price with this item's share of a later trip. */
  deferralCents: number;
  /** The part of `deferralCents` that is labour put off. */
  laterLabourCents: number;
}

export interface InstancePromise {
  index: number;
  kind: 'frozen' | 'confirmed';
  site: number;
  technician: number;
  day: number;
  slot: TimeSpan;
  items: number[];
  moveCents: number;
}

/** A visit as the former plan had it, with those of its items that are still open. */
export interface FormerVisit {
  site: number;
  technician: number;
  day: number;
  items: readonly number[];
}

export interface PlanningInstance {
  snapshot: PlanningSnapshot;
  clock: WallClock;
  dates: string[];
  /** Places: the sites in order, then the technicians. */
  travel: TravelMatrix;
  technicianDays: TechnicianDay[];
  /** [site][day]: access, in order of time. */
  windows: TimeSpan[][][];
  forests: PreparationForest[];
  items: InstanceItem[];
  promises: InstancePromise[];
  /** Visits of the former plan whose site, technician and day are still there. */
  previous: FormerVisit[];
  /** Whether the technician must not be sent to the site on that day. */
  isBarred(site: number, technician: number, day: number): boolean;
}

/**
 * Resolves a snapshot: wall clocks to minutes, names to indices, deferral prices with their share of a later trip.
 *
 * @throws SnapshotInconsistent when an item, machine or promise names something that is not there, or somebody has two
 *         shifts on one day
 */
export function buildInstance(snapshot: PlanningSnapshot): PlanningInstance {
  const clock = new WallClock(snapshot.zone, snapshot.firstDate);
  const dates = datesFrom(snapshot.firstDate, snapshot.days);
  const dayOf = new Map(dates.map((date, d) => [date, d]));
  const siteOf = indexById(snapshot.sites, 'site');
  const machineOf = indexById(snapshot.machines, 'machine');
  const technicianOf = indexById(snapshot.technicians, 'technician');
  const itemOf = indexById(snapshot.items, 'item');
  const travel = travelOf(snapshot);

  const technicianDays = snapshot.technicians.flatMap((technician, k) =>
    eachDayOnce(technician)
      .filter((shift) => dayOf.has(shift.date))
      .map((shift) => {
        const siteId = shift.underWay?.siteId ?? null;
        const startPlace = siteId === null ? undefined : known(siteOf, siteId, 'site');
        return technicianDay({ snapshot, clock }, k, dayOf.get(shift.date)!, shift, startPlace);
      })
      .filter((shift) => shift.shiftStart < shift.shiftEnd),
  );
  technicianDays.sort((a, b) => a.day - b.day || a.technician - b.technician);

  const windows = snapshot.sites.map((site) => {
    const perDay: TimeSpan[][] = dates.map(() => []);
    for (const window of site.windows) {
      const day = dayOf.get(window.date);
      if (day === undefined) continue;
      const open = clock.minutes(site.zone, window.date, window.open);
      const close = clock.minutes(site.zone, window.date, window.close);
      if (open < close) perDay[day]!.push({ open, close });
    }
    return perDay.map(merged);
  });

  const forests = snapshot.machines.map(preparationForest);
  const siteOfMachine = snapshot.machines.map((machine) => known(siteOf, machine.siteId, 'site'));
  const machineOfItem = snapshot.items.map((item) => known(machineOf, item.machineId, 'machine'));
  const openItems = new Array<number>(snapshot.sites.length).fill(0);
  for (const machine of machineOfItem) openItems[siteOfMachine[machine]!]!++;
  const tripCents = laterTripCents(snapshot, travel);
  const wage = meanWage(snapshot);

  const items = snapshot.items.map((item, index): InstanceItem => {
    if (item.timingCostCents.length < snapshot.days) {
      throw new SnapshotInconsistent(`item ${item.id}: needs ${snapshot.days} timing costs, one per day`);
    }
    const machine = machineOfItem[index]!;
    const site = siteOfMachine[machine]!;
    const share = Math.round((snapshot.laterTripShare * tripCents[site]!) / Math.max(1, openItems[site]!));
    const laterLabourCents = Math.round(((snapshot.laterLabourShare ?? 0) * wage * item.minutes) / 60);
    return {
      index,
      site,
      machine,
      releaseDay: releaseDay(item.releaseDate, dates),
      standsOn: -1,
      latestDay: latestDay(item.latestDate ?? null, dates),
      preparationBits: preparationBits(item, forests[machine]!),
      minutes: item.minutes,
      skill: item.skill,
      mustDo: item.mustDo,
      timingCents: item.timingCostCents,
      deferralCents: item.deferralCents + share + laterLabourCents,
      laterLabourCents,
    };
  });

  const promises = snapshot.promises.flatMap((promise, index): InstancePromise[] => {
    const items = knownItems(promise.itemIds, itemOf);
    const day = dayOf.get(promise.date);
    if (day === undefined || items.length === 0) return [];
    const site = known(siteOf, promise.siteId, 'site');
    const zone = snapshot.sites[site]!.zone;
    return [
      {
        index,
        kind: promise.kind,
        site,
        technician: technicianOf.get(promise.technicianId) ?? -1,
        day,
        slot: {
          open: clock.minutes(zone, promise.date, promise.from),
          close: clock.minutes(zone, promise.date, promise.to),
        },
        items,
        moveCents: promise.moveCents,
      },
    ];
  });

  const previous = snapshot.previous.flatMap((visit): FormerVisit[] => {
    const site = siteOf.get(visit.siteId);
    const technician = technicianOf.get(visit.technicianId);
    const day = dayOf.get(visit.date);
    if (site === undefined || technician === undefined || day === undefined) return [];
    return [{ site, technician, day, items: knownItems(visit.itemIds, itemOf) }];
  });

  const isBarred = barsOf(snapshot.barred ?? [], siteOf, technicianOf, dayOf);
  return { snapshot, clock, dates, travel, technicianDays, windows, forests, items, promises, previous, isBarred };
}

/** Cents per hour that an overtime minute costs on top of the wage, which driving and working minutes pay anyway. */
export function overtimePremium(instance: PlanningInstance, technician: number): number {
  const { overtimeCentsPerHour, wageCentsPerHour } = instance.snapshot.technicians[technician]!;
  return Math.max(0, overtimeCentsPerHour - wageCentsPerHour);
}

/** A technician's day by the hours of a shift; it begins at the base unless told otherwise. */
export function technicianDay(
  { snapshot, clock }: Pick<PlanningInstance, 'snapshot' | 'clock'>,
  k: number,
  day: number,
  shift: PlanningTechnician['shifts'][number],
  startPlace = snapshot.sites.length + k,
): TechnicianDay {
  const technician = snapshot.technicians[k]!;
  const at = (time: string) => clock.minutes(technician.zone, shift.date, time);
  const shiftEnd = at(shift.end);
  return {
    technician: k,
    day,
    date: shift.date,
    shiftStart: at(shift.start),
    shiftEnd,
    startPlace,
    latestReturn: shiftEnd + technician.maxOvertimeMinutes,
    lunch: lunchOf(technician, shift, at),
  };
}

/** Indices of those items that are still open. */
export function knownItems(ids: readonly string[], itemOf: ReadonlyMap<string, number>): number[] {
  return ids.flatMap((id) => itemOf.get(id) ?? []);
}

/** Place index of a technician's base. */
export function basePlace(instance: PlanningInstance, technician: number): number {
  return instance.snapshot.sites.length + technician;
}

function releaseDay(date: string | null, dates: string[]): number {
  if (date === null) return 0;
  const day = dates.findIndex((candidate) => candidate >= date);
  return day < 0 ? dates.length : day;
}

function latestDay(date: string | null, dates: string[]): number {
  return date === null ? dates.length - 1 : dates.findLastIndex((candidate) => candidate <= date);
}

function barsOf(
  bars: readonly PlanningBar[],
  siteOf: ReadonlyMap<string, number>,
  technicianOf: ReadonlyMap<string, number>,
  dayOf: ReadonlyMap<string, number>,
): PlanningInstance['isBarred'] {
  const anyone = -1;
  const keys = new Set<string>();
  for (const { siteId, technicianId, date } of bars) {
    // What names a row that is not in this plan concerns nobody in it.
    const site = siteOf.get(siteId);
    const technician = technicianId === null ? anyone : technicianOf.get(technicianId);
    const day = date === null ? anyone : dayOf.get(date);
    if (site !== undefined && technician !== undefined && day !== undefined) keys.add(`${site}|${technician}|${day}`);
  }
  if (keys.size === 0) return () => false;
  return (site, technician, day) =>
    [technician, anyone].some((who) => [day, anyone].some((when) => keys.has(`${site}|${who}|${when}`)));
}

function merged(spans: TimeSpan[]): TimeSpan[] {
  const result: TimeSpan[] = [];
  for (const span of spans.sort((a, b) => a.open - b.open || a.close - b.close)) {
    const last = result.at(-1);
    if (last && span.open <= last.close) last.close = Math.max(last.close, span.close);
    else result.push({ ...span });
  }
  return result;
}

function indexById(rows: readonly { id: string }[], what: string): Map<string, number> {
  const index = new Map<string, number>();
  rows.forEach((row, k) => {
    if (index.has(row.id)) throw new SnapshotInconsistent(`${what} ${row.id} occurs twice`);
    index.set(row.id, k);
  });
  return index;
}

function known(index: Map<string, number>, id: string, what: string): number {
  const found = index.get(id);
  if (found === undefined) throw new SnapshotInconsistent(`${what} ${id} is named but not in the snapshot`);
  return found;
}

function eachDayOnce({ id, shifts }: PlanningTechnician): PlanningTechnician['shifts'] {
  const twice = shifts.find(({ date }, k) => shifts.findIndex((other) => other.date === date) !== k);
  if (twice) throw new SnapshotInconsistent(`technician ${id} has two shifts on ${twice.date}: write one with a rest`);
  return shifts;
}

/**
 * The rest of a day in two stretches, which lasts no less than lunch; else lunch, unless it has been taken or the shift
 * begins when it is over.
 */
function lunchOf(
  { lunch }: PlanningTechnician,
  { start, rest, underWay }: PlanningTechnician['shifts'][number],
  at: (time: string) => number,
): TechnicianDay['lunch'] {
  if (rest) {
    const from = at(rest.from);
    return { minutes: Math.max(at(rest.to) - from, lunch?.minutes ?? 0), from, to: from };
  }
  if (lunch === null || start > lunch.latest || underWay?.lunchTaken === true) return null;
  return { minutes: lunch.minutes, from: at(lunch.earliest), to: at(lunch.latest) };
}
