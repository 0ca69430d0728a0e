import { canDo } from '../cheapest-addition.js';
import { type DraftVisit, evaluateDraft, routeCents } from '../draft.js';
import { buildInstance } from '../instance.js';
import { visitsPerDay } from '../machines-down.js';
import type { PlanningSnapshot } from '../snapshot.js';

/**
 * Cost of the cheapest week of all, by trying every technician-day or none for every item and every order of the
 * visits. One visit per site and technician-day. For a handful of items without promises.
 */
export function cheapestWeek(snapshot: PlanningSnapshot): number {
  const instance = buildInstance(snapshot);
  const days = instance.technicianDays.length;
  const { items } = instance;
  const routeMemo = new Map<string, { cents: number; visits: DraftVisit[] }>();
  const cheapestRoute = (v: number, chosen: number[]) => {
    const key = `${v}:${chosen.join()}`;
    let found = routeMemo.get(key);
    if (!found) {
      const sites = [...new Set(chosen.map((item) => items[item]!.site))];
      const visits = sites.map(
        (site): DraftVisit => ({
          site,
          items: chosen.filter((item) => items[item]!.site === site),
          promise: null,
        }),
      );
      found = { cents: chosen.length === 0 ? 0 : Infinity, visits: [] };
      for (const order of permutations(visits)) {
        const cents = routeCents(instance, v, order);
        if (cents < found.cents) found = { cents, visits: order };
      }
      routeMemo.set(key, found);
    }
    return found;
  };
  let best: { missing: number; cost: number } = { missing: Infinity, cost: Infinity };
  const assignment = new Array<number>(items.length).fill(-1);
  const assign = (index: number): void => {
    if (index < items.length) {
      for (let v = -1; v < days; v++) {
        if (v >= 0 && !canDo(instance, index, v)) continue;
        assignment[index] = v;
        assign(index + 1);
      }
      return;
    }
    const chosen = Array.from({ length: days }, (_, v) => items.flatMap((_, k) => (assignment[k] === v ? [k] : [])));
    const draft: DraftVisit[][] = [];
    for (let v = 0; v < days; v++) {
      const route = cheapestRoute(v, chosen[v]!);
      if (route.cents === Infinity) return;
      draft.push(route.visits);
    }
    for (const [s, site] of snapshot.sites.entries()) {
      for (let d = 0; d < snapshot.days; d++) {
        const today = draft.flatMap((visits, v) =>
          instance.technicianDays[v]!.day === d ? visits.filter((visit) => visit.site === s) : [],
        );
        if (today.length > visitsPerDay(site)) return;
        const tooMany = today.some(
          (visit) => new Set(visit.items.map((item) => items[item]!.machine)).size > site.maxMachinesDown,
        );
        if (site.downRule === 'whole-visit' && tooMany) return;
      }
    }
    const { cost, mustDoMissing } = evaluateDraft(instance, draft)!;
    if (mustDoMissing < best.missing || (mustDoMissing === best.missing && cost.total < best.cost)) {
      best = { missing: mustDoMissing, cost: cost.total };
    }
  };
  assign(0);
  return best.cost;
}

function permutations<T>(values: readonly T[]): T[][] {
  if (values.length <= 1) return [[...values]];
  return values.flatMap((value, k) => permutations(values.toSpliced(k, 1)).map((rest) => [value, ...rest]));
}
