import type { RoutedVisit, WorkingPlan } from './working-plan.js';

/** A plan in numbers, so that it can cross threads. */
export interface PlanInNumbers {
  readonly cost: number;
  /** Per visit: vehicle, stop, minutes, worth, number of units of work, and the units; in driving order. */
  readonly visits: Float64Array;
}

/** What a search shows the other. */
export interface Shown {
  /** The best plan since the last meeting if the plan was divided there, else the best so far. */
  readonly best: PlanInNumbers;
  /** The plan that it stands at. */
  readonly current: PlanInNumbers;
  /** Tells one division of one plan from another; `WHOLE` where it was not divided. */
  readonly division: number;
}

export const WHOLE = -1;

/**
 * Two searches of one problem that run side by side meet every so many iterations and show each other what they have.
 * `meet` returns when both have come to the same meeting, so that the outcome hangs on seeds and iterations alone.
 */
export interface Exchange {
  readonly side: 0 | 1;
  readonly every: number;
  /** @returns what the other shows, and whether it ends there; null when it is gone. `isLast`: this search ends here. */
  meet(shown: Shown, isLast: boolean): (Shown & { readonly isLast: boolean }) | null;
}

export function inNumbers(plan: WorkingPlan, cost: number, routes: readonly (readonly RoutedVisit[])[]): PlanInNumbers {
  const { menus } = plan.problem;
  const visits: number[] = [];
  routes.forEach((route, v) => {
    for (const { stop, minutes, worth, token } of route) {
      const units = menus.units(stop, token);
      visits.push(v, stop, minutes, worth, units.length, ...units);
    }
  });
  return { cost, visits: Float64Array.from(visits) };
}

export function fromNumbers(plan: WorkingPlan, { visits }: PlanInNumbers): RoutedVisit[][] {
  const { menus, vehicles } = plan.problem;
  const routes: RoutedVisit[][] = Array.from({ length: vehicles.count }, () => []);
  for (let p = 0; p < visits.length; ) {
    const stop = visits[p + 1]!;
    const count = visits[p + 4]!;
    const token = menus.tokenOf(stop, Array.from(visits.subarray(p + 5, p + 5 + count)));
    routes[visits[p]!]!.push({ stop, minutes: visits[p + 2]!, worth: visits[p + 3]!, token });
    p += 5 + count;
  }
  return routes;
}
