import type { InsertionScan } from '../insertion-scan.js';
import type { Random } from '../random.js';
import type { WorkingPlan } from '../working-plan.js';

/** Takes a drawn run of visits out of a drawn route, or puts a drawn stop into it where that is cheapest. */
export function randomMove(plan: WorkingPlan, scan: InsertionScan, random: Random): void {
  const v = random.below(plan.problem.vehicles.count);
  if (plan.length[v]! > 0 && random.chance(0.45)) {
    const position = 1 + random.below(plan.length[v]!);
    plan.removeRun(v, position, 1 + random.below(plan.length[v]! - position + 1));
    plan.refresh(v);
    return;
  }
  const stop = random.below(plan.problem.stops.count);
  const slot = plan.freeSlot(stop);
  if (slot < 0 || !plan.admits(stop, v)) return;
  scan.scan(stop, v);
  if (scan.position1 >= 0) plan.insert(slot, v, scan.position1, scan.option1);
}
