import { type DayStop, placesOf, promiseOf, type RouteDay } from './day-stop.js';
import { localToMinutes } from './local-time.js';
import type { SnapshotLookup } from './snapshot-lookup.js';

/**
 * When a technician can be back from these stops, made in this order, in minutes since 1970: driven through once for each
 * leg on which lunch can be taken. No lunch is needed by who is back when it must start at the latest.
 *
 * @returns null when they cannot all be made within shift and overtime, or there is no shift
 */
export function earliestBack(lookup: SnapshotLookup, route: RouteDay, stops: readonly DayStop[]): number | null {
  const technician = lookup.technicians.get(route.technicianId)!;
  const shift = technician.shifts.find(({ date }) => date === route.date);
  if (!shift) return null;
  const local = (clock: string) => localToMinutes(technician.zone, route.date, clock);
  const lunch = lookup.lunch(route.technicianId, route.date);
  const path = placesOf(lookup, route, stops);

  const drivenWithLunchOn = (lunchLeg: number): number => {
    let time = local(shift.start);
    for (let leg = 0; leg <= stops.length; leg++) {
      const arrival = time + lookup.drive(path[leg]!, path[leg + 1]!).minutes;
      if (leg !== lunchLeg) time = arrival;
      else if (time > lunch!.to) return Infinity;
      else time = Math.max(arrival, lunch!.from) + lunch!.minutes;
      if (leg < stops.length) time = earliestEnd(lookup, route.date, stops[leg]!, time);
    }
    return time;
  };

  let back = drivenWithLunchOn(NOWHERE);
  if (lunch !== null && back > lunch.to) back = Math.min(...path.slice(1).map((_, leg) => drivenWithLunchOn(leg)));
  return back <= local(shift.end) + technician.maxOvertimeMinutes ? back : null;
}

const NOWHERE = -1;

/** End of a stop's work at the earliest; Infinity where it cannot begin any more. */
function earliestEnd(lookup: SnapshotLookup, date: string, stop: DayStop, arrival: number): number {
  const promise = promiseOf(lookup, stop);
  const slot = promise === undefined ? { from: -Infinity, to: Infinity } : lookup.slot(promise);
  const stays = promise?.kind === 'frozen' ? [{ open: -Infinity, close: Infinity }] : lookup.access(stop.siteId, date);
  const start = Math.max(arrival, slot.from);
  for (const { open, close } of stays) {
    const begin = Math.max(start, open);
    if (begin <= slot.to && begin + stop.minutes <= close) return begin + stop.minutes;
  }
  return Infinity;
}
