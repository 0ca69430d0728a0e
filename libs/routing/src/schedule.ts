/** "Never" for an earliest time. Far enough from the integer limit that minutes can be added. */
export const NEVER = 1_000_000_000;
/** "Impossible" for a latest time. */
export const IMPOSSIBLE = -1_000_000_000;

/**
 * Earliest departure when arriving at `arrival`: the first window with begin = max(arrival, open) ≤ last and
 * begin + service ≤ close.
 *
 * @param from, to windows from … to − 1 of the list
 * @returns NEVER when no window fits
 */
export function earliestDeparture(
  arrival: number,
  service: number,
  open: Int32Array,
  last: Int32Array,
  close: Int32Array,
  from: number,
  to: number,
): number {
  for (let w = from; w < to; w++) {
    const begin = Math.max(arrival, open[w]!);
    if (begin <= last[w]! && begin + service <= close[w]!) return begin + service;
  }
  return NEVER;
}

/**
 * Latest arrival so that service can end by `by`: the last window with
 * begin = min(last, min(by, close) − service) ≥ open.
 *
 * @returns IMPOSSIBLE when no window fits
 */
export function latestArrival(
  by: number,
  service: number,
  open: Int32Array,
  last: Int32Array,
  close: Int32Array,
  from: number,
  to: number,
): number {
  for (let w = to - 1; w >= from; w--) {
    const begin = Math.min(last[w]!, Math.min(by, close[w]!) - service);
    if (begin >= open[w]!) return begin;
  }
  return IMPOSSIBLE;
}

/**
 * Arrival after a drive of `travel` with lunch before, on or after it: max(dep + travel, from) + length if dep ≤ to.
 *
 * @returns NEVER when lunch can no longer start
 */
export function arrivalAfterLunch(departure: number, travel: number, length: number, from: number, to: number): number {
  if (departure > to) return NEVER;
  const there = departure + travel;
  return Math.max(there, from) + length;
}

/**
 * Latest departure so that a drive with lunch arrives by `by`: min(to, by − length − travel) if from + length ≤ by.
 *
 * @returns IMPOSSIBLE when lunch cannot be over by then
 */
export function departureBeforeLunch(by: number, travel: number, length: number, from: number, to: number): number {
  if (from + length > by) return IMPOSSIBLE;
  const leave = by - length - travel;
  return Math.min(leave, to);
}
