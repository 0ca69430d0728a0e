import type { ItemEconomics } from '../snapshot.js';

/** Below this shape there is no ageing worth planning for, and the cost is taken as linear. */
const NO_AGEING = 1.05;

/**
 * Cost of doing an item at x = r·x* instead of at its due interval x*, in cents (not rounded).
 *
 * Between completions failures are repaired minimally, M(x) = c_r (x/η)^β; doing the item costs c. The shop's interval
 * is taken as the economic optimum, that is φ(x) = (c + M(x))/x is least at x*, which fixes η: M(x*) = c/(β − 1). Then
 *   h(r) = M(r x*) − M(x*) − (r − 1) x* φ*  =  c/(β − 1) · (r^β − 1 − β (r − 1)),
 * 0 at r = 1, c at r = 0 (the whole interval thrown away), rising with the hazard when late.
 * Linear, c·|r − 1|, when β < 1.05, or when the failure cost c_r is below c/(β − 1): no optimum can then be read from it.
 * Very late costs level off at c + c_r: cap · (1 − exp(−h/cap)).
 *
 * @param r share of the interval used up; below 0 is taken as 0
 * @source marginal shift cost after Wildeman, Dekker & Smit 1997 (from memory, see the planner's notes); minimal repair
 * after Barlow & Hunter 1960; the linear form and the cap are own choices
 */
export function shiftCents(r: number, { doCents, failureCents, hazardShape }: ItemEconomics): number {
  const used = Math.max(0, r);
  const ageing = hazardShape >= NO_AGEING && failureCents * (hazardShape - 1) >= doCents;
  const cost = ageing
    ? (doCents / (hazardShape - 1)) * (Math.min(1e6, used) ** hazardShape - 1 - hazardShape * (used - 1))
    : doCents * Math.abs(used - 1);
  if (used <= 1) return Math.max(0, cost);
  const cap = doCents + failureCents;
  return cap > 0 ? cap * (1 - Math.exp(-cost / cap)) : 0;
}

/**
 * Cost of leaving a temporary repair at a share r of its limit: nothing before the limit, then toward the failure cost,
 * failure · (1 − exp(−3 (r − 1))).
 *
 * @source own choice, no source: a stopgap past its limit is expected to fail within about a third of that limit
 */
export function stopgapCents(r: number, failureCents: number): number {
  return r <= 1 ? 0 : failureCents * (1 - Math.exp(-3 * (r - 1)));
}
