import { canDo, cheapestAddition } from './cheapest-addition.js';
import { type Draft, evaluateDraft, evaluateRoute, routeCents } from './draft.js';
import type { PlanningInstance } from './instance.js';

/** What more of a technician's regular day would save. */
export interface ExtraTime {
  technicianId: string;
  date: string;
  /** Cents saved by the added minutes; 0 = nothing that waits would fit or pay. */
  cents: number;
  /** The item that would be done then; null where only overtime is saved. */
  itemId: string | null;
}

/** Left-out items looked at, the dearest to leave first. */
const MOST_ITEMS = 40;

/**
 * Shadow price of `minutes` more of each technician-day: the best single item left out that would then fit and pay, with
 * everything else unchanged, or the overtime that becomes regular time.
 */
export function extraTime(instance: PlanningInstance, draft: Draft, minutes = 15): ExtraTime[] {
  const { leftOut } = evaluateDraft(instance, draft)!;
  const dearest = leftOut
    .sort((a, b) => instance.items[b]!.deferralCents - instance.items[a]!.deferralCents || a - b)
    .slice(0, MOST_ITEMS);
  return instance.technicianDays.map((day, v): ExtraTime => {
    const longer: PlanningInstance = {
      ...instance,
      technicianDays: instance.technicianDays.with(v, {
        ...day,
        shiftEnd: day.shiftEnd + minutes,
        latestReturn: day.latestReturn + minutes,
      }),
    };
    const alone = (inst: PlanningInstance) => ({ ...inst, technicianDays: [inst.technicianDays[v]!] });
    const visits = draft[v]!;
    const now = routeCents(instance, v, visits);
    const relieved =
      visits.length === 0 || evaluateRoute(longer, v, visits) === null ? 0 : now - routeCents(longer, v, visits);
    let best: ExtraTime = {
      technicianId: instance.snapshot.technicians[day.technician]!.id,
      date: day.date,
      cents: Math.max(0, relieved),
      itemId: null,
    };
    for (const index of dearest) {
      if (!canDo(instance, index, v)) continue;
      const gain = (inst: PlanningInstance) => {
        const present = routeCents(inst, v, visits);
        const found = cheapestAddition(alone(inst), [visits], index, [present]);
        return found ? instance.items[index]!.deferralCents - found.cents : -Infinity;
      };
      const then = gain(longer);
      const saved = then - Math.max(0, gain(instance)) + relieved;
      if (then > 0 && saved > best.cents)
        best = { ...best, cents: Math.round(saved), itemId: instance.snapshot.items[index]!.id };
    }
    return best;
  });
}
