import { type Addition, cheapestAddition } from './cheapest-addition.js';
import { type Draft, type DraftVisit, routeCents } from './draft.js';
import type { PlanningInstance } from './instance.js';

/** A week in which a must-do is to find room: its rules, and what of its work stands fast. */
export interface Situation {
  instance: PlanningInstance;
  draft: Draft;
  /** Cost of each technician-day, cents; a bound once a rule is given up, so that only whether it fits is exact. */
  present: readonly number[];
}

/** Visits looked at one by one, the nearest first; of those that make room and find another place themselves. */
const MOST_VISITS = 12;
const MOST_MOVED = 4;

/**
 * The week with nothing in it that gives way to a must-do anyway: of visits that nobody was promised only the must-dos,
 * of confirmed ones at least one item, so that they are still made. Promises that the plan breaks bind nobody.
 */
export function withoutOptionalWork(instance: PlanningInstance, draft: Draft): Situation {
  const bare = draft.map((visits) => visits.map((visit) => mustDosOf(instance, visit)).filter((v) => v !== null));
  const kept = new Set(bare.flat().map((visit) => visit.promise?.index));
  return {
    instance: { ...instance, promises: instance.promises.filter(({ index }) => kept.has(index)) },
    draft: bare,
    present: bare.map((visits, v) => routeCents(instance, v, visits)),
  };
}

function mustDosOf({ items }: PlanningInstance, visit: DraftVisit): DraftVisit | null {
  if (visit.promise?.kind === 'frozen') return visit;
  const needed = visit.items.filter((item) => items[item]!.mustDo);
  if (needed.length > 0) return { ...visit, items: needed };
  if (visit.promise === null) return null;
  const shortest = visit.items.reduce((a, b) => (items[b]!.minutes < items[a]!.minutes ? b : a));
  return { ...visit, items: [shortest] };
}

/** Visits of a draft that may be in the way at a site, the nearest first. */
export function nearestVisits(
  { instance, draft }: Situation,
  site: number,
  isMeant: (visit: DraftVisit) => boolean,
  most = MOST_VISITS,
): DraftVisit[] {
  const { minutes, size } = instance.travel;
  const drive = (visit: DraftVisit) => minutes[visit.site * size + site]!;
  return draft
    .flat()
    .filter(isMeant)
    .sort((a, b) => drive(a) - drive(b))
    .slice(0, most);
}

/** The cheapest place of an item with all visits where they are. */
export function placeFor({ instance, draft, present }: Situation, index: number): Addition | null {
  return cheapestAddition(instance, draft, index, present);
}

/**
 * The week with an item beside all its must-dos, as they stand or with one visit that nobody was promised making room and
 * its work in another place; null where there is no room.
 */
export function withRoomFor(situation: Situation, index: number): Situation | null {
  const placed = withPlaced(situation, index);
  if (placed !== null) return placed;
  // What has no room in a week of promises alone is not helped by moving anything else.
  const promises = situation.draft.map((visits) => visits.filter((visit) => visit.promise !== null));
  if (placeFor({ ...situation, draft: promises }, index) === null) return null;
  const { site } = situation.instance.items[index]!;
  for (const visit of nearestVisits(situation, site, (each) => each.promise === null, MOST_MOVED)) {
    const inItsPlace = withPlaced(without(situation, visit), index);
    const moved = inItsPlace && placedAll(inItsPlace, visit.items);
    if (moved) return moved;
  }
  return null;
}

/** The week without one visit; other technician-days stay the same arrays. */
export function without(situation: Situation, visit: DraftVisit): Situation {
  const v = situation.draft.findIndex((visits) => visits.includes(visit));
  return {
    ...situation,
    draft: situation.draft.with(
      v,
      situation.draft[v]!.filter((each) => each !== visit),
    ),
  };
}

function placedAll(situation: Situation, items: readonly number[]): Situation | null {
  let placed: Situation | null = situation;
  for (const item of items) placed &&= withPlaced(placed, item);
  return placed;
}

function withPlaced(situation: Situation, index: number): Situation | null {
  const addition = placeFor(situation, index);
  return addition && { ...situation, draft: situation.draft.with(addition.v, addition.visits) };
}
