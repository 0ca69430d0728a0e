import type { InsertionScan } from '../insertion-scan.js';
import type { Random } from '../random.js';
import type { WorkingPlan } from '../working-plan.js';

/** Puts drawn stops into drawn routes wherever they fit, and accepts the plan. */
export function fillPlan(plan: WorkingPlan, scan: InsertionScan, random: Random, attempts: number): void {
  const { stops, vehicles } = plan.problem;
  for (let attempt = 0; attempt < attempts; attempt++) {
    const stop = random.below(stops.count);
    const v = random.below(vehicles.count);
    const slot = plan.freeSlot(stop);
    if (slot < 0 || !plan.admits(stop, v)) continue;
    scan.scan(stop, v);
    if (scan.position1 >= 0) plan.insert(slot, v, scan.position1, scan.option1);
  }
  plan.commit();
}
