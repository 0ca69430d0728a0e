import { evaluateRoute, routeCents } from '../draft.js';
import { describeChange, type PlanChange } from './describe-change.js';
import { type Placement, type PlacementObstacle, placements } from './place-visit.js';
import { findVisit, isBroken, type NamedDraft, type StandingWeek } from './standing-week.js';

/** One place where a visit could go instead. */
export interface MovePrice {
  technicianId: string;
  date: string;
  /** Its place in the order of that day, from 0. */
  order: number;
  startAt: string;
  endAt: string;
  /** What the plan costs more with the visit there, everything else in its order. */
  cents: number;
  isWhereItStands: boolean;
  /** Visits whose promise it would break. */
  breaks: string[];
  /** Visits that begin at another time then; minutes later (+) or earlier (−). */
  shifts: { visitId: string; minutes: number }[];
}

export interface MovePrices {
  visitId: string;
  places: MovePrice[];
  /** Technician-days that cannot take it, and why. */
  closed: { technicianId: string; date: string; obstacle: PlacementObstacle }[];
}

/**
 * What moving a visit to each place of the week would cost, exactly, with everything else in its order.
 * Breaking its own promise is part of the price. One that cannot stand where it does is priced against not making it.
 *
 * @returns null when there is no such visit in the week
 */
export function priceMoves(week: StandingWeek, visitId: string): MovePrices | null {
  const { instance, draft } = week;
  const lifted = liftVisit(week, visitId);
  if (lifted === null) return null;
  const { visit, here } = lifted;
  const saved =
    here === null
      ? visit.items.reduce((sum, item) => sum + instance.items[item]!.deferralCents, 0)
      : routeCents(instance, here.v, draft[here.v]!) - routeCents(instance, here.v, lifted.draft[here.v]!);
  const starts = startsById(week, draft);
  const result: MovePrices = { visitId, places: [], closed: [] };
  for (const [v, day] of instance.technicianDays.entries()) {
    const technicianId = instance.snapshot.technicians[day.technician]!.id;
    const found = placesOn(week, lifted, v);
    if (!Array.isArray(found)) {
      result.closed.push({ technicianId, date: day.date, obstacle: found });
      continue;
    }
    for (const placement of found) {
      const isWhereItStands = v === here?.v && placement.position === here.k;
      // On its own day a broken promise of the visit itself is in the placement's price already; one that nobody can
      // keep is broken anyway.
      const own = here === null || v === here.v ? 0 : (visit.promise?.moveCents ?? 0);
      result.places.push({
        technicianId,
        date: day.date,
        order: placement.position,
        ...timesOf(week, placement),
        cents: Math.round(placement.cents + own - saved),
        isWhereItStands,
        ...disturbed(week, placement, starts),
      });
    }
  }
  return result;
}

/** The draft with the visit at another place; null when it cannot go there. */
export function moveVisit(
  week: StandingWeek,
  visitId: string,
  to: { technicianId: string; date: string; order?: number | undefined },
): { draft: NamedDraft; change: PlanChange } | null {
  const { instance } = week;
  const lifted = liftVisit(week, visitId);
  if (lifted === null) return null;
  const v = instance.technicianDays.findIndex(
    (day) => day.date === to.date && instance.snapshot.technicians[day.technician]!.id === to.technicianId,
  );
  if (v < 0) return null;
  const found = placesOn(week, lifted, v);
  if (!Array.isArray(found)) return null;
  const chosen =
    to.order === undefined
      ? found.reduce((a, b) => (b.cents < a.cents ? b : a))
      : found.find((placement) => placement.position === to.order);
  if (!chosen) return null;
  const after = lifted.draft.with(v, chosen.visits);
  return { draft: after, change: describeChange(week, after) };
}

type Lifted = NonNullable<ReturnType<typeof liftVisit>>;

/**
 * Places of one technician-day for a lifted visit. Elsewhere it keeps no promise. On its own day one that is held fast
 * is let go wherever it does not stand, and keeps what the customer was told as far as that can be.
 */
function placesOn({ instance, announced }: StandingWeek, { visit, here, draft }: Lifted, v: number) {
  if (v !== here?.v) return placements(instance, draft, v, { ...visit, promise: null }, true);
  if (visit.promise?.kind !== 'frozen') return placements(instance, draft, v, visit, true);
  const held = placements(instance, draft, v, visit, true);
  const letGo = placements(instance, draft, v, { ...visit, promise: announced.get(visit.visitId) ?? null }, true);
  const isHome = (placement: Placement) => placement.position === here.k;
  if (!Array.isArray(held) || !Array.isArray(letGo)) return held;
  return [...held.filter(isHome), ...letGo.filter((placement) => !isHome(placement))].sort(
    (a, b) => a.position - b.position,
  );
}

/** The visit, where it stands, and the draft without it; `here` is null where it cannot stand any more. */
function liftVisit({ draft, homeless }: StandingWeek, visitId: string) {
  const here = findVisit(draft, visitId);
  if (here === null) {
    const visit = homeless.find((each) => each.visitId === visitId);
    return visit === undefined ? null : { visit, here, draft };
  }
  const { v, k } = here;
  return { visit: draft[v]![k]!, here, draft: draft.with(v, draft[v]!.toSpliced(k, 1)) };
}

function timesOf({ instance }: StandingWeek, { v, visits, position }: Placement) {
  const { times } = evaluateRoute(instance, v, visits)!;
  const { zone } = instance.snapshot.sites[visits[position]!.site]!;
  return {
    startAt: instance.clock.instant(times.start[position]!, zone),
    endAt: instance.clock.instant(times.end[position]!, zone),
  };
}

function startsById({ instance }: StandingWeek, draft: NamedDraft): Map<string, number> {
  const starts = new Map<string, number>();
  for (const [v, visits] of draft.entries()) {
    if (visits.length === 0) continue;
    const { times } = evaluateRoute(instance, v, visits) ?? {};
    for (const [k, visit] of visits.entries()) if (times) starts.set(visit.visitId!, times.start[k]!);
  }
  return starts;
}

function disturbed(week: StandingWeek, { v, visits, position }: Placement, starts: ReadonlyMap<string, number>) {
  const { instance } = week;
  const { times } = evaluateRoute(instance, v, visits)!;
  const breaks: string[] = [];
  const shifts: MovePrice['shifts'] = [];
  for (const [k, visit] of visits.entries()) {
    const start = times.start[k]!;
    if (isBroken(week, visit.visitId, { v, start })) breaks.push(visit.visitId!);
    const was = starts.get(visit.visitId!);
    if (k !== position && was !== undefined && was !== start)
      shifts.push({ visitId: visit.visitId!, minutes: start - was });
  }
  return { breaks, shifts };
}
