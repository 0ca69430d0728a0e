import type { Register, ShopServiceItem } from '@deckround/register';
import {
  adviseAge,
  bestAge,
  type LifeSample,
  opportunityThreshold,
  type ReplacementAdvice,
} from '@deckround/reliability';
import { type Belief, believe } from './answer-fit.js';
import type { ComponentLife } from './component-life.js';
import { isReplacing } from './derive-lives.js';
import { groupBy } from './group-by.js';
import { selectLives, toSample } from './life-group.js';
import { replacementCosts } from './replacement-costs.js';
import { statedPrior } from './stated-prior.js';

/** What a shop has learned about the parts that one service item of one machine class replaces. */
export interface LearnedItem {
  /** The service item's id. */
  readonly itemId: string;
  readonly itemCode: string;
  readonly machineClass: string;
  readonly basis: Belief['basis'];
  readonly lives: number;
  readonly failures: number;
  readonly shape: number;
  readonly scaleHours: number;
  /** While the machine is open anyway, parts older than this are worth replacing; null = leave them. */
  readonly opportunityHours: number | null;
  readonly bestHours: number | null;
  readonly words: string;
}

export interface IntervalProposal {
  readonly itemId: string;
  readonly itemCode: string;
  readonly machineClass: string;
  readonly currentHours: number | null;
  readonly proposedHours: number;
  /** Cents per 1,000 machine hours that the change saves, expected. */
  readonly savesCentsPerThousandHours: number;
  readonly evidence: ProposalEvidence;
  readonly sentence: string;
}

export interface ProposalEvidence {
  readonly lives: number;
  readonly failures: number;
  readonly basis: Belief['basis'];
  readonly shape: number;
  readonly scaleHours: number;
  readonly lowHours: number | null;
  readonly highHours: number | null;
  readonly plannedCents: number;
  readonly failedCents: number;
  readonly words: string;
}

/** A change is proposed from so many failures of the item's own lives or pool, and from such a saving. Own choice. */
const LEAST_FAILURES = 5;
const LEAST_SAVING = 0.05;

/** The belief about an item in a class: the class's lives, with the item's other classes as like groups. */
export function beliefOfItem(
  register: Register,
  lives: readonly ComponentLife[],
  item: ShopServiceItem,
  machineClass: string,
): Belief {
  const ofItem = selectLives(lives, { itemCode: item.code });
  const groups = [...groupBy(ofItem, (each) => each.machineClass).values()];
  const own = ofItem.filter((each) => each.machineClass === machineClass);
  return believe(own, groups, statedPrior(register, item));
}

/** Advice for an item: expected cost over the belief, against the interval that the shop keeps now. */
export function adviceFor(
  register: Register,
  belief: Belief,
  item: ShopServiceItem,
  machineClass: string,
  currentHours: number | null,
): ReplacementAdvice {
  return adviseAge(belief.posterior, replacementCosts(register, machineClass, item), currentHours);
}

/** Re-fits every replacing item of every class, and says where another interval would be cheaper. */
export function learnItems(
  register: Register,
  lives: readonly ComponentLife[],
): { readonly learned: LearnedItem[]; readonly proposals: IntervalProposal[] } {
  const learned: LearnedItem[] = [];
  const proposals: IntervalProposal[] = [];
  const inUse = new Set(register.machines.map((each) => each.machineClass));
  for (const shopClass of register.classes) {
    if (!inUse.has(shopClass.code)) continue;
    for (const item of shopClass.items) {
      if (!isReplacing(item.code)) continue;
      const belief = beliefOfItem(register, lives, item, shopClass.code);
      const own = toSample(selectLives(lives, { itemCode: item.code, machineClass: shopClass.code }));
      const shape = belief.report.shape!.value;
      const scaleHours = belief.report.scale!.value;
      const costs = replacementCosts(register, shopClass.code, item);
      learned.push({
        itemId: item.id,
        itemCode: item.code,
        machineClass: shopClass.code,
        basis: belief.basis,
        lives: own.lives,
        failures: own.failures,
        shape,
        scaleHours,
        opportunityHours: opportunityThreshold({ shape, scale: scaleHours }, costs, costs.shared).age,
        bestHours: bestAge({ shape, scale: scaleHours }, costs).age,
        words: belief.words,
      });
      const proposal = propose(register, belief, item, shopClass.code, own);
      if (proposal) proposals.push(proposal);
    }
  }
  return { learned, proposals };
}

function propose(
  register: Register,
  belief: Belief,
  item: ShopServiceItem,
  machineClass: string,
  { lives, failures }: LifeSample,
): IntervalProposal | null {
  if (failures < LEAST_FAILURES || item.rule.hours === null) return null;
  const current = item.rule.hours;
  const advice = adviceFor(register, belief, item, machineClass, current);
  if (advice.age === null || advice.current === null) return null;
  const share = advice.current.excess / advice.costRate;
  const isOutside = (advice.low !== null && current < advice.low) || (advice.high !== null && current > advice.high);
  // Only where the present interval lies outside what the optimum may be, and the saving is worth a change.
  if (share < LEAST_SAVING || !isOutside) return null;
  const proposedHours = rounded(advice.age);
  const costs = replacementCosts(register, machineClass, item);
  const range = `${advice.low === null ? '?' : Math.round(advice.low)} to ${advice.high === null ? 'no upper bound' : Math.round(advice.high)} h`;
  return {
    itemId: item.id,
    itemCode: item.code,
    machineClass,
    currentHours: current,
    proposedHours,
    savesCentsPerThousandHours: Math.round(advice.current.excess * 1000),
    evidence: {
      lives,
      failures,
      basis: belief.basis,
      shape: belief.report.shape!.value,
      scaleHours: belief.report.scale!.value,
      lowHours: advice.low,
      highHours: advice.high,
      plannedCents: costs.planned,
      failedCents: costs.failed,
      words: belief.words,
    },
    sentence: `${item.title} on ${machineClass}: every ${proposedHours} h instead of ${current} h would cost ${Math.round(100 * share)} % less; the best interval lies between ${range} (90 %), from ${failures} failures in ${lives} lives.`,
  };
}

/** Two figures: nobody plans by odd hours. */
function rounded(hours: number): number {
  const unit = 10 ** Math.max(0, Math.floor(Math.log10(hours)) - 1);
  return Math.max(1, Math.round(hours / unit) * unit);
}
