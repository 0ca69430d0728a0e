import { canDo, respectsMachines } from '../cheapest-addition.js';
import { evaluateRoute, routeCents } from '../draft.js';
import type { PlanningInstance } from '../instance.js';
import { visitsPerDay } from '../to-routing.js';
import { type NamedDraft, type NamedVisit } from './standing-week.js';

export interface Placement {
  v: number;
  /** The technician-day afterwards; visits whose promise had to be broken carry none any more. */
  visits: NamedVisit[];
  /** Index of the placed visit among them. */
  position: number;
  /** What the technician-day costs more, promises broken included. */
  cents: number;
}

/** Why a technician-day cannot take a visit, nearest obstacle first. */
export type PlacementObstacle = 'skill' | 'part' | 'access' | 'machines-down' | 'time';

/**
 * Every place of one technician-day for a visit, the rest of the day in its order. Promised slots are kept where they
 * can be; otherwise the fewest are broken, each at its price.
 *
 * @returns placements by position, or what stands in the way of all of them
 */
export function placements(
  instance: PlanningInstance,
  draft: NamedDraft,
  v: number,
  visit: NamedVisit,
  allowBroken: boolean,
): Placement[] | PlacementObstacle {
  const obstacle = obstacleOf(instance, draft, v, visit);
  if (obstacle !== null) return obstacle;
  const route = draft[v]!;
  const present = routeCents(instance, v, route);
  const found: Placement[] = [];
  for (let position = 0; position <= route.length; position++) {
    const visits = route.toSpliced(position, 0, visit);
    const kept = [visits, ...(allowBroken ? relaxations(visits) : [])].find(
      (tried) => evaluateRoute(instance, v, tried) !== null,
    );
    if (!kept) continue;
    const broken = visits.reduce((sum, each, k) => sum + (kept[k]!.promise === each.promise ? 0 : priceOf(each)), 0);
    found.push({ v, visits: kept, position, cents: routeCents(instance, v, kept) - present + broken });
  }
  return found.length > 0 ? found : 'time';
}

function obstacleOf(
  instance: PlanningInstance,
  draft: NamedDraft,
  v: number,
  visit: NamedVisit,
): PlacementObstacle | null {
  const day = instance.technicianDays[v]!;
  const { skills } = instance.snapshot.technicians[day.technician]!;
  const items = visit.items.map((index) => instance.items[index]!);
  if (items.some((item) => item.skill !== null && !skills.includes(item.skill))) return 'skill';
  if (items.some((item) => item.releaseDay > day.day)) return 'part';
  if (instance.windows[visit.site]![day.day]!.length === 0) return 'access';
  if (items.some((item) => !canDo(instance, item.index, v))) return 'access';
  let today = 0;
  for (const [w, visits] of draft.entries()) {
    if (instance.technicianDays[w]!.day !== day.day) continue;
    for (const other of visits) if (other.site === visit.site) today += w === v ? 1000 : 1;
  }
  const site = instance.snapshot.sites[visit.site]!;
  if (today >= visitsPerDay(site) || !respectsMachines(instance, visit)) return 'machines-down';
  return null;
}

/** The same visits with ever more confirmed promises let go: one at a time, the cheapest first, then all. */
function relaxations(visits: readonly NamedVisit[]): NamedVisit[][] {
  const breakable = visits
    .flatMap((visit, k) => (visit.promise?.kind === 'confirmed' ? [k] : []))
    .sort((a, b) => priceOf(visits[a]!) - priceOf(visits[b]!));
  const without = (ks: readonly number[]) =>
    visits.map((visit, k) => (ks.includes(k) ? { ...visit, promise: null } : visit));
  return breakable.length === 0 ? [] : [...breakable.map((k) => without([k])), without(breakable)];
}

function priceOf(visit: NamedVisit): number {
  return visit.promise?.moveCents ?? 0;
}
