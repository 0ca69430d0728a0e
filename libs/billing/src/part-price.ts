import type { ChargeSettings } from './charge-settings.js';
import { amount, Exact } from './money.js';
import type { PartUsed } from './visit-record.js';

/** The price of one piece: the part's own, or its cost with the mark-up of its step, rounded. */
export function partPrice(part: PartUsed, rule: ChargeSettings['parts'], currency: string): string {
  if (rule.basis === 'price') return amount(part.unitPrice, currency);
  const cost = new Exact(part.unitCost);
  const step = rule.markUps.find(({ upToCost }) => upToCost === null || cost.lessThanOrEqualTo(upToCost));
  return amount(cost.times(new Exact(100).plus(step?.percent ?? 0)).div(100), currency);
}
