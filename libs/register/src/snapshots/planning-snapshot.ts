import type {
  PlanningItem,
  PlanningMachine,
  PlanningPart,
  PlanningPromise,
  PlanningSite,
  PlanningSnapshot,
  PlanningTechnician,
} from '@deckround/planning';
import type { DueForecast } from '@deckround/upkeep';
import { addDays, clockOf, dayNumber } from '../local-date.js';
import type { Machine, OpenRoadCall, OpenStopgap, Part, Register } from '../register.js';
import { accessOf, onDates, shiftsOn } from './access.js';
import { beforeEvent, eventsAhead } from './before-events.js';
import {
  classOf,
  fallsDueAgain,
  type MachineItem,
  machineItems,
  roadCallItemId,
  stopgapItemId,
} from './machine-items.js';
import { partsLeft, partsNeeded, plannedElsewhere, promisedLater } from './planned-elsewhere.js';
import type { PlanningSpan } from './planning-span.js';
import { suppliedItems } from './supplied-items.js';

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
  const { before, after } = plannedElsewhere(register, span);
  const needed = partsNeeded(register);
  const parts = partsLeft(register, span, needed);
  const open = [
    ...planningItems(register, due, span, lastDate),
    ...register.roadCalls.map((call) => roadCallItem(call, span)),
  ].flatMap((item): PlanningItem[] => {
    if (after.has(item.id)) return [];
    const follows = before.get(item.id);
    return follows === undefined ? [item] : fallsDueAgain(item.id) ? [{ ...item, follows }] : [];
  });
  const promises = promisesFrom(register, span);
  const ahead = eventsAhead(register, span);
  const later = promisedLater(register, span, needed);
  const items = suppliedItems(open, { parts, stopgaps: register.stopgaps, promises, later, ahead }, span);
  const machineIds = new Set(items.map((item) => item.machineId));
  return {
    version: 1,
    shopName: register.shop.name,
    currency: register.shop.currency,
    zone: register.shop.timeZone,
    firstDate: span.firstDate,
    days: span.days,
    asOf: span.asOf,
    ...(span.soonest && { isUnderWay: true }),
    travel: register.shop.travel,
    laterTripShare: register.shop.laterTripShare,
    laterLabourShare: 1,
    technicians: technicianRows(register, daysLeft),
    ...openAhead(placeRows(register, machineIds, dates), span),
    items: items.map((item) => beforeEvent(item, ahead(item))),
    parts: partRows(parts),
    promises,
    barred: register.bars.map((bar) => ({ ...bar })),
    previous: register.previous.map(({ siteId, technicianId, date, itemIds }) => ({
      ...{ siteId, technicianId, date },
      itemIds: [...itemIds],
    })),
  };
}

/** Whether somebody who works today has begun by now. */
export function isDayUnderWay(register: Register, today: string, wallClock: (zone: string) => string): boolean {
  return register.technicians.some((technician) =>
    onDates([today], technician.shifts, technician.absences).some(
      ({ date, from }) => wallClock(technician.timeZone) > `${date}T${from}`,
    ),
  );
}

/** Sites on a day under way: closed until a visit of which nobody knows yet can begin. */
function openAhead<Rows extends { sites: PlanningSite[] }>(rows: Rows, { asOf, soonest }: PlanningSpan): Rows {
  if (soonest === undefined) return rows;
  const sites = rows.sites.map((site) => ({
    ...site,
    windows: site.windows.flatMap((window) => {
      const from = soonest(site.zone);
      if (window.date !== asOf || from <= `${asOf}T${window.open}`) return [window];
      return from < `${asOf}T${window.close}` ? [{ ...window, open: from.slice(11) }] : [];
    }),
  }));
  return { ...rows, sites };
}

/** Promises from today on; of a day that is under way also what nobody was promised, all of it at its very time. */
function promisesFrom({ promises, previous }: Register, { asOf, soonest }: PlanningSpan): PlanningPromise[] {
  const isFast = (visit: { readonly date: string }) => soonest !== undefined && visit.date === asOf;
  return [
    ...promises
      .filter((promise) => promise.date >= asOf)
      .map(({ start, ...promise }) => ({
        ...promise,
        ...(isFast(promise) && { kind: 'frozen' as const, from: start, to: start }),
        itemIds: [...promise.itemIds],
      })),
    ...previous.filter(isFast).map(({ start, ...visit }) => ({
      ...visit,
      ...{ kind: 'frozen' as const, from: start, to: start, moveCents: 0 },
      itemIds: [...visit.itemIds],
    })),
  ];
}

export function partRows(parts: readonly Part[]): PlanningPart[] {
  return parts.map((part) => ({
    id: part.id,
    description: part.description,
    designation: part.designation === '' ? null : part.designation,
    unit: 'each',
    onHand: part.onHand,
    arrivals: part.arrivals.map((arrival) => ({ ...arrival })),
    leadDays: part.leadDays,
  }));
}

/** Technicians with their shifts on the given days. */
export function technicianRows(register: Register, dates: readonly string[]): PlanningTechnician[] {
  return register.technicians.map((technician) => ({
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
    shifts: shiftsOn(dates, technician.shifts, technician.absences).map(({ rest, ...shift }) => ({
      ...shift,
      ...(rest && { rest: { ...rest } }),
    })),
  }));
}

/** The machines given and their sites with access on the given days; an event ends the day's access. */
export function placeRows(
  register: Register,
  machineIds: ReadonlySet<string>,
  dates: readonly string[],
): { sites: PlanningSite[]; machines: PlanningMachine[] } {
  const machines = register.machines.filter((machine) => machineIds.has(machine.id));
  const siteIds = new Set(machines.map((machine) => machine.siteId));
  return {
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
        windows: accessOf(register, site, dates),
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
  };
}

export function machineLabel(machine: Machine): string {
  return [machine.machineClass, machine.model, machine.serial].filter((each) => each !== '').join(' ');
}

function planningItems(
  register: Register,
  due: readonly DueForecast[],
  span: PlanningSpan,
  lastDate: string,
): PlanningItem[] {
  const known = new Map(machineItems(register).map((each) => [each.id, each]));
  const stopgaps = new Map(register.stopgaps.map((each) => [each.id, each]));
  const isElsewhere = ({ date }: { readonly date: string }) =>
    date > lastDate || (date >= span.asOf && date < span.firstDate);
  const promised = new Set(
    [...register.promises, ...promisesFrom(register, span)]
      .filter((visit) => !isElsewhere(visit))
      .flatMap((visit) => visit.itemIds),
  );
  // What a visit to come does comes once more when it falls due, not to ride along.
  const latest = ({ isPlanned }: DueForecast['why']) => (isPlanned ? lastDate : addDays(lastDate, RIDER_DAYS));
  const isDue = ({ itemId, p10, why }: DueForecast) => (p10 !== null && p10 <= latest(why)) || promised.has(itemId);
  /** Machine and preparation that due work opens. */
  const opened = new Set(
    due.flatMap((forecast) => {
      const each = forecast.kind === 'service' && isDue(forecast) ? known.get(forecast.itemId) : undefined;
      return each ? each.item.preparations.map((state) => `${each.machine.id} ${state}`) : [];
    }),
  );
  return due.flatMap((forecast) => {
    if (forecast.kind === 'stopgap') {
      const stopgap = stopgaps.get(forecast.itemId);
      return stopgap ? [stopgapItem(forecast, stopgap, span, lastDate)] : [];
    }
    const each = known.get(forecast.itemId);
    if (!each) return [];
    if (isDue(forecast)) return [serviceItem(forecast, each, span, timingOf(forecast, span))];
    const age = opportunityAge(forecast, each);
    const isOpenAnyway = each.item.preparations.some((state) => opened.has(`${each.machine.id} ${state}`));
    return age !== null && isOpenAnyway
      ? [serviceItem(forecast, each, span, opportunityTiming(forecast, each, register, age, span.days))]
      : [];
  });
}

/** Hours of the part in place, if it is so old that replacing it pays while its place is open anyway; else null. */
function opportunityAge({ why }: DueForecast, { item }: MachineItem): number | null {
  const threshold = item.learned?.opportunityHours ?? null;
  if (threshold === null || why.lastCompletion === null) return null;
  const age = why.lifetimeHoursNow - why.lastCompletion.lifetimeHours;
  return age >= threshold ? age : null;
}

/**
 * Timing of work that is not due but may ride along: leaving it loses what replacing now would gain. That is nothing at
 * the threshold and the whole preparation, which another visit would cost again, at the best planned age; straight
 * between, never more. So no trip is made for it, and it is done where it costs only its own minutes.
 *
 * @source relative value of an old part (libs/reliability, opportunity.ts): its two ends are exact, the line is own choice
 */
function opportunityTiming(forecast: DueForecast, each: MachineItem, register: Register, age: number, days: number) {
  const { opportunityHours, bestHours } = each.item.learned!;
  const reach = Math.max(1, (bestHours ?? 2 * age) - opportunityHours!);
  const share = Math.min(1, (age - opportunityHours!) / reach);
  const states = classOf(register, each.machine)?.preparations ?? [];
  const minutes = states
    .filter((state) => each.item.preparations.includes(state.code))
    .reduce((sum, state) => sum + state.minutes, 0);
  const wages = register.technicians.map((technician) => technician.wageCentsPerHour);
  const wage = wages.length === 0 ? 0 : wages.reduce((sum, each) => sum + each, 0) / wages.length;
  return {
    timingCostCents: new Array<number>(days).fill(0),
    deferralCents: Math.round((share * minutes * wage) / 60),
    dueP10: forecast.p10,
    dueP50: forecast.p50,
    dueP90: forecast.p90,
    because: `${each.title}: ${Math.round(age)} h old, worth replacing from ${Math.round(opportunityHours!)} h on while the place is open anyway.`,
  };
}

function serviceItem(
  forecast: DueForecast,
  each: MachineItem,
  span: PlanningSpan,
  timing: ReturnType<typeof timingOf>,
): PlanningItem {
  const overdueAtTheEnd = forecast.probabilityOverdue[span.days - 1] ?? 0;
  return {
    ...timing,
    id: each.id,
    machineId: each.machine.id,
    code: each.item.code,
    title: each.title,
    minutes: each.minutes,
    skill: each.item.skill,
    parts: each.parts.map((part) => ({ ...part })),
    consumables: each.consumables.map((consumable) => ({ ...consumable })),
    preparations: [...each.item.preparations],
    releaseDate: null,
    mustDo: each.item.mustDo && overdueAtTheEnd >= 0.5,
  };
}

function stopgapItem(forecast: DueForecast, stopgap: OpenStopgap, span: PlanningSpan, lastDate: string): PlanningItem {
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
    parts: stopgap.partId === null ? [] : [{ partId: stopgap.partId, quantity: stopgap.partQuantity }],
    consumables: [],
    preparations: [...stopgap.preparations],
    releaseDate: null,
    mustDo: reachesItsLimit,
  };
}

/** A call is answered within the horizon whatever it costs, and every day of waiting counts. */
export function roadCallItem(call: OpenRoadCall, span: PlanningSpan): PlanningItem {
  const waited = (day: number) => {
    const date = addDays(span.firstDate, day);
    return Math.max(0, dayNumber(date) - dayNumber(span.asOf)) * call.downCentsPerDay;
  };
  return {
    id: roadCallItemId(call.id),
    machineId: call.machineId,
    code: 'road-call',
    title: call.title,
    minutes: call.minutes,
    skill: call.skill,
    parts: [],
    consumables: [],
    preparations: [],
    releaseDate: null,
    mustDo: true,
    timingCostCents: Array.from({ length: span.days }, (_, day) => waited(day)),
    deferralCents: waited(span.days + 7),
    dueP10: null,
    dueP50: null,
    dueP90: null,
    because: 'The customer called',
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
