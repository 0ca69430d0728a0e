import type { RoutingProblem } from '@deckround/routing';
import { basePlace, overtimePremium, type PlanningInstance, type TimeSpan } from './instance.js';
import type { ItemMenus } from './item-menus.js';
import { visitsPerDay } from './machines-down.js';
import { UNITS_PER_CENT } from './money.js';
import type { PlanStop } from './plan-stops.js';
import { visitMinutes } from './visit-minutes.js';

/** The routing problem of a week: technician-days are vehicles, costs in sixtieths of a cent. */
export function toRoutingProblem(
  instance: PlanningInstance,
  stops: readonly PlanStop[],
  menus: ItemMenus,
): RoutingProblem {
  const { technicianDays, travel, snapshot } = instance;
  const { technicians, sites } = snapshot;
  const column = (pick: (day: (typeof technicianDays)[number], v: number) => number) =>
    Int32Array.from(technicianDays, pick);
  const wages = [...new Set(technicians.map((technician) => technician.wageCentsPerHour))];
  const lists = new WindowLists();
  const windowList = new Int32Array(stops.length * technicianDays.length);
  const fixedCost = new Int32Array(stops.length * technicianDays.length);
  stops.forEach((stop, s) => {
    technicianDays.forEach((day, v) => {
      const cell = s * technicianDays.length + v;
      windowList[cell] = lists.idOf(visitWindows(instance, stop, day));
      fixedCost[cell] = visitFixedCents(instance, stop, day) * UNITS_PER_CENT;
    });
  });
  return {
    places: travel.size,
    minutes: travel.minutes,
    arcCost: wages.map((wage) =>
      travel.minutes.map((minutes, arc) => wage * minutes + travel.cents[arc]! * UNITS_PER_CENT),
    ),
    vehicles: {
      count: technicianDays.length,
      startPlace: column((day) => day.startPlace),
      endPlace: column((day) => basePlace(instance, day.technician)),
      shiftStart: column((day) => day.shiftStart),
      shiftEnd: column((day) => day.shiftEnd),
      latestReturn: column((day) => day.latestReturn),
      lunchMinutes: column((day) => day.lunch?.minutes ?? 0),
      lunchFrom: column((day) => day.lunch?.from ?? 0),
      lunchTo: column((day) => day.lunch?.to ?? 0),
      costClass: column((day) => wages.indexOf(technicians[day.technician]!.wageCentsPerHour)),
      kind: column((_, v) => v),
      overtimeCost: column((day) => overtimePremium(instance, day.technician)),
      capacity: column(() => 1_000_000),
      day: column((day) => day.day),
    },
    stops: {
      count: stops.length,
      place: Int32Array.from(stops, (stop) => stop.site),
      load: new Int32Array(stops.length),
      visits: Int32Array.from(stops, (stop) => stop.visits),
      crowd: Int32Array.from(stops, (stop) => stop.site),
    },
    days: instance.dates.length,
    visitsPerDay: Int32Array.from(sites, visitsPerDay),
    windowList,
    ...lists.columns(),
    fixedCost,
    menus,
  };
}

/** An access window in which the visit must also begin by `last`. */
export interface VisitWindow extends TimeSpan {
  last: number;
}

/** When a visit may take place: access of the site; a promise's slot narrows it (confirmed) or replaces it (frozen). */
export function visitWindows(
  instance: PlanningInstance,
  stop: PlanStop,
  day: { technician: number; day: number },
): VisitWindow[] {
  if (stop.promise) {
    const { technician, day: date, slot } = stop.promise;
    if (technician !== day.technician || date !== day.day) return [];
    const { total } = visitMinutes(instance, stop.site, stop.items);
    return [{ open: slot.open, last: slot.close, close: slot.close + total }];
  }
  if (instance.isBarred(stop.site, day.technician, day.day)) return [];
  const access = instance.windows[stop.site]![day.day]!;
  const slot = promiseKeptBy(stop, day)?.slot ?? { open: -Infinity, close: Infinity };
  return access
    .map(({ open, close }) => ({ open: Math.max(open, slot.open), last: Math.min(close, slot.close), close }))
    .filter((window) => window.open <= window.last);
}

/** The confirmed promise that a visit by this technician on this day keeps. */
export function promiseKeptBy(stop: PlanStop, day: { technician: number; day: number }) {
  return stop.confirmed.find((promise) => promise.technician === day.technician && promise.day === day.day);
}

function visitFixedCents(instance: PlanningInstance, stop: PlanStop, day: { technician: number; day: number }): number {
  const site = instance.snapshot.sites[stop.site]!;
  const technician = instance.snapshot.technicians[day.technician]!;
  const stranger = site.preferredTechnicianId !== null && site.preferredTechnicianId !== technician.id;
  return site.visitFeeCents + (stranger ? site.preferenceCents : 0) - (promiseKeptBy(stop, day)?.moveCents ?? 0);
}

/** Window lists, equal ones stored once. */
class WindowLists {
  private readonly start = [0];
  private readonly open: number[] = [];
  private readonly last: number[] = [];
  private readonly close: number[] = [];
  private readonly ids = new Map<string, number>();

  idOf(spans: readonly VisitWindow[]): number {
    if (spans.length === 0) return -1;
    const key = spans.map((span) => `${span.open}-${span.last}-${span.close}`).join();
    let id = this.ids.get(key);
    if (id === undefined) {
      id = this.start.length - 1;
      for (const span of spans) {
        this.open.push(span.open);
        this.last.push(span.last);
        this.close.push(span.close);
      }
      this.start.push(this.open.length);
      this.ids.set(key, id);
    }
    return id;
  }

  columns() {
    return {
      windowStart: Int32Array.from(this.start),
      windowOpen: Int32Array.from(this.open),
      windowLast: Int32Array.from(this.last),
      windowClose: Int32Array.from(this.close),
    };
  }
}
