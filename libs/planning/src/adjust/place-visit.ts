import { canDo, hasPartsOn } from '../cheapest-addition.js';
import { routeCents } from '../draft.js';
import type { PlanningInstance } from '../instance.js';
import { respectsMachines, visitsPerDay } from '../machines-down.js';
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
 * can be; otherwise the cheapest set found is broken, each at its price.
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
  const promised = [...route, visit].reduce((sum, each) => sum + priceOf(each), 0);
  const centsOf = (visits: readonly NamedVisit[]) =>
    routeCents(instance, v, visits) - present + promised - visits.reduce((sum, each) => sum + priceOf(each), 0);
  const found: Placement[] = [];
  for (let position = 0; position <= route.length; position++) {
    const visits = route.toSpliced(position, 0, visit);
    const kept = waysToKeep(instance, v, visits, allowBroken).map((way) => ({
      v,
      visits: way,
      position,
      cents: centsOf(way),
    }));
    if (kept.length > 0) found.push(kept.reduce((a, b) => (b.cents < a.cents ? b : a)));
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
  if (items.some((item) => !hasPartsOn(item, day.day))) return 'part';
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

/**
 * The same visits with as many confirmed promises as they can keep: all of them; else all but the cheapest one that is
 * enough, and whichever can be kept beside the dearer ones. None of those let go could be kept besides, so each is broken.
 *
 * @returns none where they cannot be driven even with all of those promises let go
 */
function waysToKeep(
  instance: PlanningInstance,
  v: number,
  visits: readonly NamedVisit[],
  allowBroken: boolean,
): NamedVisit[][] {
  const canBeDriven = (tried: readonly NamedVisit[]) => routeCents(instance, v, tried) < Infinity;
  if (canBeDriven(visits)) return [[...visits]];
  if (!allowBroken) return [];
  const letGo = visits.map((visit) => (visit.promise?.kind === 'confirmed' ? { ...visit, promise: null } : visit));
  if (!canBeDriven(letGo)) return [];
  const dearestFirst = visits
    .flatMap((visit, k) => (letGo[k] === visit ? [] : [k]))
    .sort((a, b) => priceOf(visits[b]!) - priceOf(visits[a]!));
  let most = letGo;
  for (const k of dearestFirst) {
    const kept = most.with(k, visits[k]!);
    if (canBeDriven(kept)) most = kept;
  }
  const allButOne = dearestFirst.toReversed().map((k) => visits.with(k, letGo[k]!));
  return [allButOne.find(canBeDriven), most].filter((way) => way !== undefined);
}

function priceOf(visit: NamedVisit): number {
  return visit.promise?.moveCents ?? 0;
}
