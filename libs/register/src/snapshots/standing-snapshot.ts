import type { PlanningItem, PlanningSnapshot, PlanningTechnician } from '@deckround/planning';
import { addDays } from '../local-date.js';
import type { Register } from '../register.js';
import { countedOn } from './parts-in-turn.js';
import { plannedElsewhere } from './planned-elsewhere.js';
import { partRows, placeRows, technicianRows } from './planning-snapshot.js';
import { standingReleases } from './standing-releases.js';

/** Where a technician is in the middle of a day. */
export interface StartedDay {
  readonly technicianId: string;
  /** Site of the last visit begun. */
  readonly siteId: string;
  /** When that visit ends, wall clock of the technician's zone. */
  readonly freeAt: string;
  readonly lunchTaken: boolean;
}

type Shift = PlanningTechnician['shifts'][number];

export interface PresentState {
  /** The days that are still this plan's, not a newer one's. */
  readonly days: readonly string[];
  /** Local date and time in a zone, `2026-06-08T09:40`. */
  readonly wallClock: (zone: string) => string;
  readonly started: readonly StartedDay[];
  /** Items done or under way since the plan was made. */
  readonly closedItemIds: ReadonlySet<string>;
  /** Work that the plan did not know: calls, and what was found on the spot. */
  readonly added: readonly PlanningItem[];
}

/**
 * The snapshot a week was planned from, brought up to now without forecasting again: people, access, parts, bars and new
 * work as they are, timing costs as they were, and what is over today or stands on other days by now cut off; nobody works
 * on days that a newer plan has taken over. Work of visits waits for its parts as they are expected today. A week that is
 * over stays whole.
 */
export function standingSnapshot(register: Register, planned: PlanningSnapshot, state: PresentState): PlanningSnapshot {
  const dates = state.days;
  const today = state.wallClock(planned.zone).slice(0, 10);
  const isOver = today > dates.at(-1)!;
  const { before, after } = plannedElsewhere(register, { ...planned, asOf: today });
  const lastDate = addDays(planned.firstDate, planned.days - 1);
  const visits = [...register.promises, ...register.previous].filter(
    ({ date }) => date >= planned.firstDate && date <= lastDate,
  );
  const itemsOf = (isOurs: boolean) =>
    new Set(visits.filter(({ date }) => dates.includes(date) === isOurs).flatMap(({ itemIds }) => itemIds));
  const standing = itemsOf(true);
  const takenOver = itemsOf(false);
  const isHere = ({ id, follows }: PlanningItem) =>
    isOver || standing.has(id) || (!takenOver.has(id) && !after.has(id) && (!before.has(id) || follows !== undefined));
  const known = new Set(register.machines.map((machine) => machine.id));
  const added = new Set(state.added.map((item) => item.id));
  const releases = standingReleases(register, dates, today);
  const items = [
    ...planned.items.filter(
      (item) => known.has(item.machineId) && !state.closedItemIds.has(item.id) && !added.has(item.id),
    ),
    ...state.added.filter((item) => known.has(item.machineId)),
  ]
    .filter(isHere)
    .map((item) => (releases.has(item.id) ? { ...item, releaseDate: releases.get(item.id)! } : item));
  const started = new Map(state.started.map((day) => [day.technicianId, day]));
  const machineIds = new Set(items.map((item) => item.machineId));
  // A technician's day may begin at a site where nothing is left to do.
  for (const { siteId } of state.started) {
    const machine = register.machines.find((each) => each.siteId === siteId);
    if (machine) machineIds.add(machine.id);
  }
  const { sites, machines } = placeRows(register, machineIds, dates);
  return {
    ...planned,
    technicians: technicianRows(register, dates).map((technician) => ({
      ...technician,
      shifts: isOver
        ? technician.shifts
        : technician.shifts.flatMap((shift) => {
            const [today, clock] = state.wallClock(technician.zone).split('T') as [string, string];
            if (shift.date !== today) return shift.date > today ? [shift] : [];
            return leftOfShift(shift, clock, started.get(technician.id));
          }),
    })),
    sites: sites.map((site) => ({
      ...site,
      windows: isOver
        ? site.windows
        : site.windows.flatMap((window) => {
            const [today, clock] = state.wallClock(site.zone).split('T') as [string, string];
            if (window.date !== today) return window.date > today ? [window] : [];
            const open = latest(window.open, clock);
            return open < window.close ? [{ ...window, open }] : [];
          }),
    })),
    machines,
    items,
    parts: partRows(countedOn(register.parts, today)),
    promises: [],
    barred: register.bars.map((bar) => ({ ...bar })),
    previous: [],
  };
}

/** What is left of a shift; one that has come to its rest goes on after it, with no lunch to come. */
function leftOfShift(shift: Shift, clock: string, day: StartedDay | undefined): Shift[] {
  const { rest, ...worked } = shift;
  const free = latest(shift.start, clock, day?.freeAt ?? '');
  const isRested = rest !== undefined && free >= rest.from;
  const start = isRested ? latest(free, rest.to) : free;
  if (start >= shift.end) return [];
  const underWay = { siteId: day?.siteId ?? null, lunchTaken: isRested || day?.lunchTaken === true };
  return [{ ...(isRested ? worked : shift), start, ...((day || isRested) && { underWay }) }];
}

function latest(...clocks: string[]): string {
  return clocks.sort().at(-1)!;
}
