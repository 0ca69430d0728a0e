import { gammaQuantile } from '../numeric/gamma.js';

/** One machine's repairs against a new machine; money in one unit, e.g. cents. */
export interface RepairOrReplaceCase {
  /** Machine hours now, and expected in the coming year. */
  readonly hours: number;
  readonly hoursNextYear: number;
  /** Unplanned repairs on record in `watchedHours`, and what they cost together. */
  readonly repairs: number;
  readonly repairCost: number;
  readonly watchedHours: number;
  /** Mean cost of a repair on like machines, for a machine that had none yet. */
  readonly usualRepairCost: number;
  /** Power-law exponent of the fleet's repairs (1 = no wear-out). */
  readonly wearExponent: number;
  readonly newPrice: number;
  readonly resaleNow: number;
  readonly resaleInAYear: number;
  /** Hours a new machine is kept, and its repair cost per hour over them (the fleet's mean). */
  readonly newLifeHours: number;
  readonly newRepairCostPerHour: number;
  readonly newResaleShare: number;
}

export interface RepairOrReplaceAdvice {
  /** Per hour over the coming year: repairs and the drop in resale, with 90 % limits. */
  readonly keepPerHour: number;
  readonly keepLow: number;
  readonly keepHigh: number;
  readonly replacePerHour: number;
  /** Repair cost of the coming year above which replacing is cheaper. */
  readonly breakEvenRepairsNextYear: number;
  readonly expectedRepairsNextYear: number;
  readonly verdict: 'keep' | 'replace' | 'cannot-tell';
  readonly sentence: string;
}

/**
 * Keep for another year, or replace: the marginal cost per hour of keeping against the average cost per hour of a new
 * machine over its life. Repairs are a Poisson process whose rate grows as hours^(β−1); its level has the gamma law of
 * r + ½ events over the watched hours (Jeffreys prior), costs per repair are taken as their mean.
 *
 * @source marginal against average cost is the classical economic-life argument (from memory); Jeffreys prior from memory
 */
export function repairOrReplace(each: RepairOrReplaceCase): RepairOrReplaceAdvice | null {
  if (!(each.watchedHours > 0) || !(each.hoursNextYear > 0) || !(each.newLifeHours > 0)) return null;
  const { wearExponent: b, hours, hoursNextYear, watchedHours } = each;
  const from = Math.max(0, hours - watchedHours);
  const grown = (low: number, high: number) => high ** b - low ** b;
  const growth = grown(hours, hours + hoursNextYear) / grown(from, Math.max(hours, from + watchedHours));
  const perRepair = each.repairs === 0 ? each.usualRepairCost : each.repairCost / each.repairs;
  const cost = (events: number) => events * growth * perRepair;
  const drop = Math.max(0, each.resaleNow - each.resaleInAYear);
  const perHour = (repairs: number) => (repairs + drop) / hoursNextYear;
  const a = each.repairs + 0.5;
  const keepPerHour = perHour(cost(each.repairs));
  const keepLow = perHour(cost(gammaQuantile(a, 0.05)));
  const keepHigh = perHour(cost(gammaQuantile(a, 0.95)));
  const replacePerHour = (each.newPrice * (1 - each.newResaleShare)) / each.newLifeHours + each.newRepairCostPerHour;
  const breakEvenRepairsNextYear = Math.max(0, replacePerHour * hoursNextYear - drop);
  const verdict = keepLow > replacePerHour ? 'replace' : keepHigh < replacePerHour ? 'keep' : 'cannot-tell';
  const expectedRepairsNextYear = cost(each.repairs);
  return {
    keepPerHour,
    keepLow,
    keepHigh,
    replacePerHour,
    breakEvenRepairsNextYear,
    expectedRepairsNextYear,
    verdict,
    sentence:
      verdict === 'replace'
        ? 'Keeping it another year costs more per hour than a new one over its life, even at the low end of what its repairs may cost.'
        : verdict === 'keep'
          ? 'Keeping it another year costs less per hour than a new one over its life, even at the high end of what its repairs may cost.'
          : 'The data cannot tell: what its repairs may cost next year lies on both sides of the break-even.',
  };
}
