import type { MovePrices } from '../../data/types.js';

export type MovePlace = MovePrices['places'][number];
export type ClosedDay = MovePrices['closed'][number];

export const ARROW_KEYS = ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'] as const;
export type ArrowKey = (typeof ARROW_KEYS)[number];

const isDay = (place: { technicianId: string; date: string }, technicianId: string, date: string) =>
  place.technicianId === technicianId && place.date === date;

/** The place of a technician-day whose start lies nearest to a clock time. */
export function nearestPlace(
  prices: MovePrices,
  technicianId: string,
  date: string,
  minute: number,
  minuteOf: (instant: string) => number,
): MovePlace | null {
  const places = prices.places.filter((place) => isDay(place, technicianId, date));
  const distance = (place: MovePlace) => Math.abs(minuteOf(place.startAt) - minute);
  return places.toSorted((a, b) => distance(a) - distance(b))[0] ?? null;
}

export function closedDay(prices: MovePrices, technicianId: string, date: string): ClosedDay | null {
  return prices.closed.find((day) => isDay(day, technicianId, date)) ?? null;
}

/**
 * Where an arrow key leads: left and right within the day's order, up and down to the day shown before or after that
 * has a place, to the one nearest in time.
 *
 * @param days  technician-days in the order in which they are shown
 */
export function placeAfterKey(
  prices: MovePrices,
  days: readonly { readonly technicianId: string; readonly date: string }[],
  now: MovePlace,
  key: ArrowKey,
  minuteOf: (instant: string) => number,
): MovePlace {
  if (key === 'ArrowLeft' || key === 'ArrowRight') {
    const own = prices.places
      .filter((place) => isDay(place, now.technicianId, now.date))
      .toSorted((a, b) => a.order - b.order);
    const at = own.findIndex((place) => place.order === now.order);
    return own[at + (key === 'ArrowLeft' ? -1 : 1)] ?? now;
  }
  const step = key === 'ArrowUp' ? -1 : 1;
  const from = days.findIndex((day) => isDay(now, day.technicianId, day.date));
  for (let at = from + step; at >= 0 && at < days.length; at += step) {
    const { technicianId, date } = days[at]!;
    const found = nearestPlace(prices, technicianId, date, minuteOf(now.startAt), minuteOf);
    if (found) return found;
  }
  return now;
}
