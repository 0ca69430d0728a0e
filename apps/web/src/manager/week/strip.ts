import type { DayRoute, Visit } from '../../data/types.js';

/** A stretch of a technician's day, in minutes since midnight. */
export interface Stretch {
  readonly kind: 'drive' | 'lunch' | 'slack' | 'overtime';
  readonly from: number;
  readonly to: number;
}

export interface StripVisit {
  readonly visit: Visit;
  /** Place in the day's order, from 1: the same number stands on the map. */
  readonly order: number;
  readonly from: number;
  readonly to: number;
  readonly promise: { readonly from: number; readonly to: number } | null;
  readonly machines: number;
  readonly edge: 'anchor' | 'riders';
}

export interface Strip {
  readonly visits: readonly StripVisit[];
  readonly stretches: readonly Stretch[];
}

/**
 * A day route as stretches that follow one another. Time that is neither driving, lunch nor a visit is slack, up to the
 * end of the shift; the last `overtimeMinutes` before coming home are overtime.
 *
 * @param minuteOf  minutes since midnight of that day of an instant
 * @param shiftEnd  end of the shift in the same minutes; null when the technician has none that day
 */
export function stripOf(route: DayRoute, minuteOf: (instant: string) => number, shiftEnd: number | null): Strip {
  const [leave, home] = [minuteOf(route.leaveAt), minuteOf(route.returnAt)];
  const lunch =
    route.lunchFrom === null || route.lunchTo === null
      ? null
      : { from: minuteOf(route.lunchFrom), to: minuteOf(route.lunchTo) };
  const visits = route.visits.map(
    (visit, index): StripVisit => ({
      visit,
      order: index + 1,
      from: minuteOf(visit.startAt),
      to: minuteOf(visit.endAt),
      promise:
        visit.promisedFrom === null || visit.promisedTo === null
          ? null
          : { from: minuteOf(visit.promisedFrom), to: minuteOf(visit.promisedTo) },
      machines: new Set(visit.items.map((item) => item.machineId)).size,
      edge: visit.items.some((item) => item.role !== 'rider') ? 'anchor' : 'riders',
    }),
  );
  const stretches: Stretch[] = [];
  if (lunch) stretches.push({ kind: 'lunch', ...lunch });
  let free = leave;
  const fill = (kind: 'drive' | 'slack', from: number, to: number) => {
    for (const piece of withoutLunch(from, to, lunch)) stretches.push({ kind, ...piece });
  };
  for (const { visit, from, to } of visits) {
    const arrive = minuteOf(visit.arriveAt);
    const setOff = Math.max(free, arrive - visit.driveMinutes - overlap(free, arrive, lunch));
    fill('slack', free, setOff);
    fill('drive', setOff, arrive);
    fill('slack', arrive, from);
    free = to;
  }
  fill('drive', free, home);
  if (shiftEnd !== null && shiftEnd > home) stretches.push({ kind: 'slack', from: home, to: shiftEnd });
  if (route.overtimeMinutes > 0) stretches.push({ kind: 'overtime', from: home - route.overtimeMinutes, to: home });
  return { visits, stretches };
}

type Span = { readonly from: number; readonly to: number };

function overlap(from: number, to: number, span: Span | null): number {
  return span === null ? 0 : Math.max(0, Math.min(to, span.to) - Math.max(from, span.from));
}

function withoutLunch(from: number, to: number, lunch: Span | null): Span[] {
  if (lunch === null || overlap(from, to, lunch) === 0) return from < to ? [{ from, to }] : [];
  return [
    { from, to: Math.min(to, lunch.from) },
    { from: Math.max(from, lunch.to), to },
  ].filter((piece) => piece.from < piece.to);
}

/** Whole hours that hold every strip with its promises, for the clock axis. */
export function axisOf(strips: readonly Strip[]): { from: number; to: number } {
  const ends = strips
    .flatMap(({ visits, stretches }) => [...visits, ...visits.flatMap(({ promise }) => promise ?? []), ...stretches])
    .flatMap(({ from, to }) => [from, to]);
  if (ends.length === 0) return { from: 420, to: 1020 };
  return { from: Math.floor(Math.min(...ends) / 60) * 60, to: Math.ceil(Math.max(...ends) / 60) * 60 };
}
