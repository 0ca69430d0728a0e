import type { DraftVisit } from './draft.js';
import { basePlace, type PlanningInstance } from './instance.js';
import { visitMinutes } from './visit-minutes.js';

const known = new WeakMap<readonly DraftVisit[], { instance: PlanningInstance; v: number; busy: number }>();

/** Minutes of driving and work of a technician-day. Remembered by the list: thousands of items are held against each day. */
export function busyMinutes(instance: PlanningInstance, v: number, visits: readonly DraftVisit[]): number {
  const before = known.get(visits);
  if (before?.instance === instance && before.v === v) return before.busy;
  const busy = addUp(instance, v, visits);
  known.set(visits, { instance, v, busy });
  return busy;
}

function addUp(instance: PlanningInstance, v: number, visits: readonly DraftVisit[]): number {
  if (visits.length === 0) return 0;
  const { minutes, size } = instance.travel;
  const { startPlace, technician } = instance.technicianDays[v]!;
  let place = startPlace;
  let busy = 0;
  for (const { site, items } of visits) {
    busy += minutes[place * size + site]! + visitMinutes(instance, site, items).total;
    place = site;
  }
  return busy + minutes[place * size + basePlace(instance, technician)]!;
}

/** Whether a technician-day with so many minutes of driving and work can end in time, lunch included, if nobody waits. */
export function canEndInTime(instance: PlanningInstance, v: number, busy: number): boolean {
  const { shiftStart, latestReturn, lunch } = instance.technicianDays[v]!;
  const back = shiftStart + busy;
  return (lunch && back > lunch.to ? back + lunch.minutes : back) <= latestReturn;
}

/**
 * What a new visit costs at least, by its position in a technician-day: drives, labour and fee, without timing and
 * overtime, and before rounding; Infinity where the day cannot end in time with it.
 *
 * @param total minutes on site
 */
export function leastCents(
  instance: PlanningInstance,
  v: number,
  visits: readonly DraftVisit[],
  site: number,
  total: number,
): (position: number) => number {
  const { travel, snapshot } = instance;
  const { minutes, cents, size } = travel;
  const { technician, startPlace } = instance.technicianDays[v]!;
  const base = basePlace(instance, technician);
  const wage = snapshot.technicians[technician]!.wageCentsPerHour / 60;
  const busy = busyMinutes(instance, v, visits) + total;
  const anywhere = wage * total + snapshot.sites[site]!.visitFeeCents - 1;
  return (position) => {
    const from = visits[position - 1]?.site ?? startPlace;
    const to = visits[position]?.site ?? base;
    const there = from * size + site;
    const onward = site * size + to;
    const direct = from * size + to;
    const isFirst = visits.length === 0;
    const detour = minutes[there]! + minutes[onward]! - (isFirst ? 0 : minutes[direct]!);
    if (!canEndInTime(instance, v, busy + detour)) return Infinity;
    return cents[there]! + cents[onward]! - (isFirst ? 0 : cents[direct]!) + wage * detour + anywhere;
  };
}
