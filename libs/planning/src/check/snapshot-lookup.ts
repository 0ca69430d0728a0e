import type { TravelMatrix } from '@deckround/routing';
import type { PlanningItem, PlanningMachine, PlanningPromise, PlanningSnapshot } from '../snapshot.js';
import type { PlannedVisit } from '../week-plan.js';
import { instantToMinutes, localToMinutes } from './local-time.js';

interface Drive {
  minutes: number;
  metres: number;
  cents: number;
}

interface Stay {
  open: number;
  close: number;
}

/** The snapshot by name, with the few quantities that several checks need. Own arithmetic throughout. */
export class SnapshotLookup {
  readonly items: Map<string, PlanningItem>;
  readonly machines: Map<string, PlanningMachine>;
  readonly sites: Map<string, PlanningSnapshot['sites'][number]>;
  readonly technicians: Map<string, PlanningSnapshot['technicians'][number]>;
  /** Promises by visit that concern this horizon: dated within it, with at least one item that still exists. */
  readonly promises: Map<string, PlanningPromise>;
  /** Number of items by the site of their machine. */
  private readonly itemsAt = new Map<string, number>();
  private readonly place = new Map<string, number>();
  /** Items of one site ask for the same drives. */
  private readonly drivesKnown = new Map<string, readonly Drive[]>();
  private readonly accessKnown = new Map<string, readonly Stay[]>();

  constructor(
    readonly snapshot: PlanningSnapshot,
    private readonly travel: TravelMatrix,
  ) {
    this.items = new Map(snapshot.items.map((row) => [row.id, row]));
    this.machines = new Map(snapshot.machines.map((row) => [row.id, row]));
    this.sites = new Map(snapshot.sites.map((row) => [row.id, row]));
    this.technicians = new Map(snapshot.technicians.map((row) => [row.id, row]));
    const { firstDate, days } = snapshot;
    const last = new Date(Date.parse(firstDate) + (days - 1) * 86_400_000).toISOString().slice(0, 10);
    this.promises = new Map(
      snapshot.promises
        .filter(({ date, itemIds }) => date >= firstDate && date <= last && itemIds.some((id) => this.items.has(id)))
        .map((promise) => [promise.visitId, promise]),
    );
    for (const { machineId } of snapshot.items) {
      const site = this.machines.get(machineId)?.siteId;
      if (site !== undefined) this.itemsAt.set(site, (this.itemsAt.get(site) ?? 0) + 1);
    }
    snapshot.sites.forEach((row, k) => {
      this.place.set(`site ${row.id}`, k);
    });
    snapshot.technicians.forEach((row, k) => {
      this.place.set(`base ${row.id}`, snapshot.sites.length + k);
    });
  }

  /** Drive between two places named `site X` or `base X`. */
  drive(from: string, to: string): Drive {
    const arc = this.place.get(from)! * this.travel.size + this.place.get(to)!;
    return {
      minutes: this.travel.minutes[arc]!,
      metres: this.travel.metres[arc]!,
      cents: this.travel.cents[arc]!,
    };
  }

  /** Drives from each site, or each base, to a site, nearest first. */
  drivesTo(siteId: string, from: 'sites' | 'bases'): readonly Drive[] {
    const key = `${from} ${siteId}`;
    let drives = this.drivesKnown.get(key);
    if (drives === undefined) {
      const { sites, technicians } = this.snapshot;
      const names =
        from === 'sites'
          ? sites.filter((site) => site.id !== siteId).map((site) => `site ${site.id}`)
          : technicians.map((technician) => `base ${technician.id}`);
      drives = names.map((name) => this.drive(name, `site ${siteId}`)).sort((a, b) => a.minutes - b.minutes);
      this.drivesKnown.set(key, drives);
    }
    return drives;
  }

  /** Items waiting at a site. */
  openAt(siteId: string): number {
    return this.itemsAt.get(siteId) ?? 0;
  }

  /** Names of all preparation states an item needs on its machine, parents included. */
  states(item: PlanningItem): Set<string> {
    const known = new Map(this.machines.get(item.machineId)!.preparations.map((row) => [row.state, row]));
    const needed = new Set<string>();
    const open = [...item.preparations];
    while (open.length > 0) {
      const state = known.get(open.pop()!);
      if (!state || needed.has(state.state)) continue;
      needed.add(state.state);
      if (state.parent !== null) open.push(state.parent);
    }
    return needed;
  }

  /** Minutes of preparation for items done together: each state once per machine. */
  preparationMinutes(items: readonly PlanningItem[]): number {
    const opened = new Set<string>();
    let minutes = 0;
    for (const item of items) {
      for (const state of this.states(item)) {
        const key = JSON.stringify([item.machineId, state]);
        if (opened.has(key)) continue;
        opened.add(key);
        minutes += this.machines.get(item.machineId)!.preparations.find((row) => row.state === state)!.minutes;
      }
    }
    return minutes;
  }

  /** Minutes of a visit in which these items are done: set-up, preparation and work. */
  visitMinutes(siteId: string, items: readonly PlanningItem[]): number {
    const work = items.reduce((sum, item) => sum + item.minutes, 0);
    return this.sites.get(siteId)!.setupMinutes + this.preparationMinutes(items) + work;
  }

  /** When a site can be entered, in minutes since 1970, on one date or (null) at all; windows that touch are one stay. */
  access(siteId: string, date: string | null): readonly Stay[] {
    const key = JSON.stringify([siteId, date]);
    let stays = this.accessKnown.get(key);
    if (stays === undefined) {
      const { zone, windows } = this.sites.get(siteId)!;
      stays = united(
        windows
          .filter((window) => date === null || window.date === date)
          .map((window) => ({
            open: localToMinutes(zone, window.date, window.open),
            close: localToMinutes(zone, window.date, window.close),
          })),
      );
      this.accessKnown.set(key, stays);
    }
    return stays;
  }

  /** Cents that doing an item on a day costs for its being early or late. */
  timing(itemId: string, date: string): number {
    const day = Math.round((Date.parse(date) - Date.parse(this.snapshot.firstDate)) / 86_400_000);
    return this.items.get(itemId)!.timingCostCents[day]!;
  }

  /**
   * When lunch begins on a day, in minutes since 1970, and how long it lasts; of a day in two stretches, the rest between
   * them. Null = none is due, since it has been taken or the shift begins after its hours.
   */
  lunch(technicianId: string, date: string): { minutes: number; from: number; to: number } | null {
    const { lunch, zone, shifts } = this.technicians.get(technicianId)!;
    const shift = shifts.find((row) => row.date === date);
    const local = (clock: string) => localToMinutes(zone, date, clock);
    if (shift?.rest) {
      const from = local(shift.rest.from);
      return { minutes: Math.max(local(shift.rest.to) - from, lunch === null ? 0 : lunch.minutes), from, to: from };
    }
    if (lunch === null || shift?.underWay?.lunchTaken === true) return null;
    const hours = { from: local(lunch.earliest), to: local(lunch.latest) };
    return shift !== undefined && local(shift.start) > hours.to ? null : { minutes: lunch.minutes, ...hours };
  }

  /** Slot of a promise for the start of work, in minutes since 1970. */
  slot(promise: PlanningPromise): { from: number; to: number } {
    const { zone } = this.sites.get(promise.siteId)!;
    return {
      from: localToMinutes(zone, promise.date, promise.from),
      to: localToMinutes(zone, promise.date, promise.to),
    };
  }

  /** The frozen promise that a visit stands for, if any. */
  frozenFor(visit: PlannedVisit): PlanningPromise | undefined {
    return this.snapshot.promises.find((row) => row.kind === 'frozen' && row.visitId === visit.promisedVisitId);
  }

  span(visit: PlannedVisit): { start: number; end: number } {
    return { start: instantToMinutes(visit.startAt), end: instantToMinutes(visit.endAt) };
  }
}

function united(stays: Stay[]): Stay[] {
  const union: Stay[] = [];
  for (const stay of stays.filter(({ open, close }) => open < close).sort((a, b) => a.open - b.open)) {
    const last = union.at(-1);
    if (last !== undefined && stay.open <= last.close) last.close = Math.max(last.close, stay.close);
    else union.push(stay);
  }
  return union;
}
