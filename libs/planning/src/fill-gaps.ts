import { cheapestAddition } from './cheapest-addition.js';
import { type Draft, evaluateDraft, routeCents } from './draft.js';
import type { PlanningInstance } from './instance.js';
import { makeRoom, makeRoomLate } from './make-room.js';

/**
 * Adds left-out items: must-dos wherever they find room, optional work giving way to them where there is none, those that
 * had better be late even after their last day; then the others wherever that is cheaper than leaving them, dearest
 * first. The search leaves little; a run of few iterations leaves more.
 *
 * @param bound items of frozen visits, which go with them or not at all
 */
export function fillGaps(instance: PlanningInstance, draft: Draft, bound: ReadonlySet<number>): Draft {
  const missing = (routes: Draft, mustDo: boolean) =>
    evaluateDraft(instance, routes)!
      .leftOut.filter((index) => instance.items[index]!.mustDo === mustDo && !bound.has(index))
      .sort((a, b) => instance.items[b]!.deferralCents - instance.items[a]!.deferralCents || a - b);
  let routes = draft;
  const present = draft.map((visits, v) => routeCents(instance, v, visits));
  const take = (other: Draft | null) => {
    for (const [v, visits] of (other ?? []).entries())
      if (visits !== routes[v]) present[v] = routeCents(instance, v, visits);
    routes = other ?? routes;
  };
  const withAdded = (index: number, below: number) => {
    const addition = cheapestAddition(instance, routes, index, present, below);
    return addition && routes.with(addition.v, addition.visits);
  };
  for (const index of missing(routes, true)) {
    const isBetterLate = instance.snapshot.items[index]!.betterLate === true;
    take(
      withAdded(index, Infinity) ??
        makeRoom(instance, routes, index) ??
        (isBetterLate ? makeRoomLate(instance, routes, index) : null),
    );
  }
  for (const index of missing(routes, false)) take(withAdded(index, instance.items[index]!.deferralCents));
  return routes;
}
