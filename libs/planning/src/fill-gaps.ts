import { type Addition, cheapestAddition } from './cheapest-addition.js';
import { type Draft, type DraftVisit, evaluateDraft, routeCents } from './draft.js';
import type { PlanningInstance } from './instance.js';

/**
 * Adds left-out items wherever that is cheaper than leaving them, dearest first, until nothing is.
 * The search leaves little; a run of few iterations leaves more.
 *
 * @param bound items of frozen visits, which go with them or not at all
 */
export function fillGaps(instance: PlanningInstance, draft: Draft, bound: ReadonlySet<number>): Draft {
  const routes: DraftVisit[][] = draft.map((visits) => [...visits]);
  const present = routes.map((visits, v) => routeCents(instance, v, visits));
  const { leftOut } = evaluateDraft(instance, routes)!;
  const price = (index: number) => instance.items[index]!.deferralCents + (instance.items[index]!.mustDo ? 1e9 : 0);
  for (const index of leftOut.sort((a, b) => price(b) - price(a) || a - b)) {
    if (bound.has(index)) continue;
    const addition: Addition | null = cheapestAddition(instance, routes, index, present, price(index));
    if (addition === null) continue;
    routes[addition.v] = addition.visits;
    present[addition.v] = present[addition.v]! + addition.cents;
  }
  return routes;
}
