import type { PlanningItem, PlanningSnapshot } from '@deckround/planning';
import type { DueForecast } from '@deckround/upkeep';
import { addDays, clockOf, weekdayOf } from '../local-date.js';
import type { DateRange, Machine, OpenStopgap, Part, Register, WeeklyWindow } from '../register.js';
import { classOf, type MachineItem, machineItems } from './machine-items.js';

export interface PlanningSpan {
  readonly asOf: string;
  readonly firstDate: string;
  readonly days: number;
}

/** Items whose range begins within this many days past the horizon may ride along with a visit. */
const RIDER_DAYS = 10;

export function planningSnapshot(
  register: Register,
  due: readonly DueForecast[],
  span: PlanningSpan,
): PlanningSnapshot {
  const lastDate = addDays(span.firstDate, span.days - 1);
  const dates = Array.from({ length: span.days }, (_, index) => addDays(span.firstDate, index));
  // Planning again in mid-week must not send anybody to a day that is over.
  const daysLeft = dates.filter((date) => date >= span.asOf);
  const items = planningItems(register, due, span, lastDate);
  const machineIds = new Set(items.map((item) => item.machineId));
  const machines = register.machines.filter((machine) => machineIds.has(machine.id));
  const siteIds = new Set(machines.map((machine) => machine.siteId));
  return {
    version: 1,
    shopName: register.shop.name,
    currency: register.shop.currency,
    zone: register.shop.timeZone,
    firstDate: span.firstDate,
    days: span.days,
    asOf: span.asOf,
    travel: register.shop.travel,
    laterTripShare: register.shop.laterTripShare,
    laterLabourShare: 1,
    technicians: register.technicians.map((technician) => ({
      id: technician.id,
      name: technician.name,
      latitude: technician.latitude,
      longitude: technician.longitude,
      zone: technician.timeZone,
      skills: [...technician.skills],
      wageCentsPerHour: technician.wageCentsPerHour,
      overtimeCentsPerHour: technician.overtimeCentsPerHour,
      maxOvertimeMinutes: technician.maxOvertimeMinutes,
      lunch: technician.lunch && {
        minutes: technician.lunch.minutes,
        earliest: clockOf(technician.lunch.earliestMinute),
        latest: clockOf(technician.lunch.latestMinute),
      },
      shifts: onDates(daysLeft, technician.shifts, technician.absences).map(({ date, from, to }) => ({
        date,
        start: from,
        end: to,
      })),
    })),
    sites: register.sites
      .filter((site) => siteIds.has(site.id))
      .map((site) => ({
        id: site.id,
        name: site.name,
        latitude: site.latitude,
        longitude: site.longitude,
        zone: site.timeZone,
        setupMinutes: site.setupMinutes,
        visitFeeCents: site.visitFeeCents,
        maxMachinesDown: site.maxMachinesDown,
        downRule: site.downRule,
        windows: onDates(dates, site.access, site.blackouts).map(({ date, from, to }) => ({
          date,
          open: from,
          close: to,
        })),
        preferredTechnicianId: site.preferredTechnicianId,
        preferenceCents: site.preferenceCents,
      })),
    machines: machines.map((machine) => ({
      id: machine.id,
      siteId: machine.siteId,
      label: machineLabel(machine),
      machineClass: machine.machineClass,
      preparations: (classOf(register, machine)?.preparations ?? []).map(({ code, minutes, parent }) => ({
        state: code,
        minutes,
        parent,
      })),
    })),
    items,
    parts: register.parts.map((part) => ({
      id: part.id,
      description: part.description,
      designation: part.designation === '' ? null : part.designation,
      unit: 'each',
      onHand: part.onHand,
      arrivals: part.arrivals.map((arrival) => ({ ...arrival })),
      leadDays: part.leadDays,
    })),
    promises: register.promises
      .filter((promise) => promise.date >= span.asOf)
      .map((promise) => ({ ...promise, itemIds: [...promise.itemIds] })),
    previous: register.previous.map((each) => ({ ...each, itemIds: [...each.itemIds] })),
  };
}

export function machineLabel(machine: Machine): string {
  return [machine.machineClass, machine.model, machine.serial].filter((each) => each !== '').join(' ');
}

/** Id of the work that an open stopgap owes. */
export function stopgapItemId(stopgapId: string): string {
  return `stopgap/${stopgapId}`;
}

function planningItems(
  register: Register,
  due: readonly DueForecast[],
  span: PlanningSpan,
  lastDate: string,
): PlanningItem[] {
  const known = new Map(machineItems(register).map((each) => [each.id, each]));
  const stopgaps = new Map(register.stopgaps.map((each) => [each.id, each]));
  const parts = new Map(register.parts.map((part) => [part.id, part]));
  const promised = new Set(register.promises.flatMap((promise) => promise.itemIds));
  const latest = addDays(lastDate, RIDER_DAYS);
  return due.flatMap((forecast) => {
    if (forecast.kind === 'stopgap') {
      const stopgap = stopgaps.get(forecast.itemId);
      return stopgap ? [stopgapItem(forecast, stopgap, parts, span, lastDate)] : [];
    }
    const each = known.get(forecast.itemId);
    const isNear = forecast.p10 !== null && forecast.p10 <= latest;
    return each && (isNear || promised.has(each.id)) ? [serviceItem(forecast, each, parts, span)] : [];
  });
}

function serviceItem(
  forecast: DueForecast,
  each: MachineItem,
  parts: ReadonlyMap<string, Part>,
  span: PlanningSpan,
): PlanningItem {
  const overdueAtTheEnd = forecast.probabilityOverdue[span.days - 1] ?? 0;
  return {
    ...timingOf(forecast, span),
    id: each.id,
    machineId: each.machine.id,
    code: each.item.code,
    title: each.title,
    minutes: each.minutes,
    skill: each.item.skill,
    parts: each.parts.map((part) => ({ ...part })),
    consumables: each.consumables.map((consumable) => ({ ...consumable })),
    preparations: [...each.item.preparations],
    releaseDate: releaseDate(each.parts, parts, span.asOf),
    mustDo: each.item.mustDo && overdueAtTheEnd >= 0.5,
  };
}

function stopgapItem(
  forecast: DueForecast,
  stopgap: OpenStopgap,
  parts: ReadonlyMap<string, Part>,
  span: PlanningSpan,
  lastDate: string,
): PlanningItem {
  const needed = stopgap.partId === null ? [] : [{ partId: stopgap.partId, quantity: stopgap.partQuantity }];
  const release = stopgap.partExpectedOn ?? releaseDate(needed, parts, span.asOf);
  const reachesItsLimit =
    (forecast.probabilityOverdue[span.days - 1] ?? 0) >= 0.1 || (forecast.p10 !== null && forecast.p10 <= lastDate);
  return {
    ...timingOf(forecast, span),
    id: stopgapItemId(stopgap.id),
    machineId: stopgap.machineId,
    code: stopgap.code,
    title: stopgap.title,
    minutes: stopgap.minutes,
    skill: stopgap.skill,
    parts: needed,
    consumables: [],
    preparations: [...stopgap.preparations],
    releaseDate: release,
    // The return that a stopgap owes is never left out for money, as soon as the part can be there.
    mustDo: reachesItsLimit && (release === null || release <= lastDate),
  };
}

/**
 * Costs relative to the cheapest of the choices that are left: what an overdue item has cost so far is sunk, and no
 * plan can change it.
 */
function timingOf(forecast: DueForecast, span: PlanningSpan) {
  const onDays = forecast.timingCostCents.slice(0, span.days);
  const sunk = Math.min(...onDays, forecast.deferralCents);
  return {
    timingCostCents: onDays.map((cents) => cents - sunk),
    deferralCents: forecast.deferralCents - sunk,
    dueP10: forecast.p10,
    dueP50: forecast.p50,
    dueP90: forecast.p90,
    because: forecast.why.sentence,
  };
}

/** First day on which enough of every part is there: on the shelf, on order, or ordered today. null = now. */
function releaseDate(
  needed: readonly { partId: string; quantity: number }[],
  parts: ReadonlyMap<string, Part>,
  asOf: string,
): string | null {
  let latest: string | null = null;
  for (const { partId, quantity } of needed) {
    const part = parts.get(partId);
    if (!part || part.onHand >= quantity) continue;
    let have = part.onHand;
    const arrivals = [...part.arrivals].sort((a, b) => (a.date < b.date ? -1 : 1));
    const enough = arrivals.find((arrival) => {
      have += arrival.quantity;
      return have >= quantity;
    });
    const ordered = addDays(asOf, part.leadDays);
    const date = enough && enough.date < ordered ? enough.date : ordered;
    if (latest === null || date > latest) latest = date;
  }
  return latest;
}

function onDates(dates: readonly string[], weekly: readonly WeeklyWindow[], closed: readonly DateRange[]) {
  return dates
    .filter((date) => !closed.some((range) => range.from <= date && date <= range.to))
    .flatMap((date) =>
      weekly
        .filter((window) => window.weekday === weekdayOf(date))
        .map((window) => ({ date, from: clockOf(window.startMinute), to: clockOf(window.endMinute) })),
    );
}
