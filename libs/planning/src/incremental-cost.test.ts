import { Random } from '@deckround/routing';
import { describe, expect, it } from '@jest/globals';
import { InsertionScan } from '../../routing/src/insertion-scan.js';
import { WorkingPlan } from '../../routing/src/working-plan.js';
import { type DraftVisit, evaluateDraft, evaluateRoute } from './draft.js';
import { buildInstance } from './instance.js';
import { ItemMenus } from './item-menus.js';
import { UNITS_PER_CENT } from './money.js';
import { planStops } from './plan-stops.js';
import { generateSnapshot } from './test-support/generate-snapshot.js';
import { promiseKeptBy, toRoutingProblem } from './to-routing.js';

/** A shop whose days are short enough for overtime; wages are whole cents a minute, so that nothing is rounded. */
function crowdedShop() {
  const shop = generateSnapshot({
    seed: 41,
    sites: 14,
    machinesPerSite: 4,
    items: 120,
    technicians: 3,
    days: 3,
    promises: true,
    mustDos: false,
    reachKm: 25,
  });
  return {
    ...shop,
    technicians: shop.technicians.map((technician) => ({
      ...technician,
      wageCentsPerHour: 3600,
      overtimeCentsPerHour: 5400,
      maxOvertimeMinutes: 90,
      shifts: technician.shifts.map((shift) => ({ ...shift, end: '13:00' })),
    })),
    promises: shop.promises.map((promise) => ({ ...promise, kind: 'confirmed' as const })),
  };
}

describe('the cost that the search keeps', () => {
  it('is that of the whole draft to the cent after each of 10,000 random moves of a planning problem', () => {
    const random = new Random(99);
    const instance = buildInstance(crowdedShop());
    const stops = planStops(instance);
    const menus = new ItemMenus(instance, stops);
    const problem = toRoutingProblem(instance, stops, menus);
    const plan = new WorkingPlan(problem);
    const scan = new InsertionScan(plan);
    // the search counts from a week in which everything is left out and every promise broken
    const nothingDone = evaluateDraft(
      instance,
      instance.technicianDays.map(() => []),
    )!;
    const drafted = () =>
      plan.routes().map((route, v) =>
        route.map(
          (visit): DraftVisit => ({
            site: stops[visit.stop]!.site,
            items: menus.itemsOf(visit.stop, visit.token),
            promise: promiseKeptBy(stops[visit.stop]!, instance.technicianDays[v]!) ?? null,
          }),
        ),
      );
    const seen = { lunch: 0, overtime: 0, twiceVisited: 0, shorterOption: 0, promiseKept: 0, rollback: 0 };
    let accepted = plan.cost;
    for (let move = 0; move < 10_000; move++) {
      const v = random.below(problem.vehicles.count);
      if (plan.length[v]! > 0 && random.chance(0.4)) {
        const position = 1 + random.below(plan.length[v]!);
        plan.removeRun(v, position, 1 + random.below(plan.length[v]! - position + 1));
        plan.refresh(v);
      } else {
        const stop = random.below(problem.stops.count);
        const slot = plan.freeSlot(stop);
        if (slot >= 0 && plan.admits(stop, v)) {
          scan.scan(stop, v);
          if (scan.position1 >= 0) {
            const option = random.chance(0.6) ? random.below(scan.option1 + 1) : scan.option1;
            if (option < scan.option1) seen.shorterOption++;
            plan.insert(slot, v, scan.position1, option);
          }
        }
      }
      if (random.chance(0.3)) {
        if (random.chance(0.7)) {
          plan.commit();
          accepted = plan.cost;
        } else {
          plan.rollback();
          seen.rollback++;
          expect(plan.cost).toBe(accepted);
        }
      }
      const draft = drafted();
      const { cost } = evaluateDraft(instance, draft)!;
      expect(plan.cost / UNITS_PER_CENT).toBe(cost.total - nothingDone.cost.total);
      if (draft[v]!.length > 0 && evaluateRoute(instance, v, draft[v]!)!.times.lunch !== null) seen.lunch++;
      if (cost.overtime > 0) seen.overtime++;
      if (cost.disruption < nothingDone.cost.disruption) seen.promiseKept++;
      const visited = draft.flat().map((visit) => visit.site);
      if (new Set(visited).size < visited.length) seen.twiceVisited++;
    }
    for (const times of Object.values(seen)) expect(times).toBeGreaterThan(100);
  });
});
