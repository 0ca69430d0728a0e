import type { Register, ShopServiceItem } from '@deckround/register';
import type { ReplacementCosts } from '@deckround/reliability';

export interface ItemCosts extends ReplacementCosts {
  /** The part of both that opening the machine costs: saved when it is open anyway. */
  readonly shared: number;
}

/**
 * Cents of replacing once as planned, with the preparation of the machine, and after a failure: the same work plus what
 * the failure itself costs. The drive is left out: whether one is needed for it alone is the planner's to say.
 */
export function replacementCosts(register: Register, machineClass: string, item: ShopServiceItem): ItemCosts {
  const wages = register.technicians.map((each) => each.wageCentsPerHour);
  const wage = wages.length === 0 ? 3500 : wages.reduce((sum, each) => sum + each, 0) / wages.length;
  const price = new Map(register.parts.map((part) => [part.code, part.unitCostCents]));
  const parts = item.parts.reduce((sum, each) => sum + (price.get(each.code) ?? 0) * each.quantity, 0);
  const states = register.classes.find((each) => each.code === machineClass)?.preparations ?? [];
  const preparing = item.preparations.reduce(
    (sum, code) => sum + (states.find((state) => state.code === code)?.minutes ?? 0),
    0,
  );
  const shared = Math.round((preparing * wage) / 60);
  const planned = Math.round((item.minutes * wage) / 60 + parts) + shared;
  return { planned, failed: planned + item.failureCents, shared };
}
