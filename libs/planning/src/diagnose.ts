import { type Clause, clause } from './clause.js';
import { type Situation, withRoomFor } from './probe.js';
import { type Relaxation, type Relaxed, relaxations } from './relaxations.js';

export interface Remedies {
  remedies: string[];
  remedyRules: Clause[][];
}

const MOST_REMEDIES = 3;
/** Of rules that are given up visit by visit, so many are tried in pairs. */
const MOST_VISITS_IN_PAIRS = 3;
/** Rules given up step by step; in pairs first the widest step is tried, then how little is enough. */
const BY_STEPS = ['shift', 'access', 'part-by'];

/**
 * What would let an item be done that could not be placed: every rule given up by itself, then in pairs. The cheapest
 * sufficient sets in words, mildest first; empty when not even two rules together help.
 *
 * @param bare the week without the work that gives way to a must-do anyway: it is no rule
 */
export function diagnose(bare: Situation, index: number): Remedies {
  if (withRoomFor(bare, index) !== null) {
    const words = 'if other work moves or waits: plan again, with more time';
    return worded([[{ rule: 'other-work', weight: 0, words, values: {} }]]);
  }
  const single = relaxations(bare, index);
  const enough = byRule(single).flatMap((same) => mildestEnough(same, (each) => suffices(bare, [each], index)) ?? []);
  if (enough.length > 0) return worded(enough.map((each) => saidOf(bare, [each])));
  const candidates = forPairs(single);
  const pairs: Relaxation[][] = [];
  for (const [a, first] of candidates.entries())
    for (const second of candidates.slice(a + 1)) {
      if (first.rule === second.rule) continue;
      if (suffices(bare, [first, second], index)) pairs.push([first, second]);
    }
  return worded(mildest(pairs).map((pair) => saidOf(bare, narrowed(bare, pair, single, index))));
}

/** A rule given up, in words. */
interface Said extends Pick<Relaxed, 'words' | 'values'> {
  rule: string;
  weight: number;
}

function worded(sets: readonly Said[][]): Remedies {
  const told = mildest(sets);
  return {
    remedies: told.map((set) => `It fits ${set.map((each) => each.words).join(' and ')}.`),
    remedyRules: told.map((set) => set.map((each) => clause(each.rule, each.values))),
  };
}

/** Of sets of the same rules the mildest, and of those the mildest few. */
function mildest<Rule extends { rule: string; weight: number }>(sets: readonly Rule[][]): Rule[][] {
  const weight = (set: readonly Rule[]) => set.reduce((sum, each) => sum + each.weight, 0);
  const seen = new Set<string>();
  return [...sets]
    .sort((a, b) => weight(a) - weight(b))
    .filter((set) => {
      const rules = set.map((each) => each.rule).join('+');
      return !seen.has(rules) && seen.add(rules);
    })
    .slice(0, MOST_REMEDIES);
}

/** The week with the rules given up one after the other; null where one of them opens nothing. */
function given(bare: Situation, set: readonly Relaxation[]): { situation: Situation; said: Said[] } | null {
  let situation = bare;
  const said: Said[] = [];
  for (const { rule, weight, apply } of set) {
    const relaxed = apply(situation);
    if (relaxed === null) return null;
    situation = relaxed.situation;
    said.push({ rule, weight, words: relaxed.words, values: relaxed.values });
  }
  return { situation, said };
}

function suffices(bare: Situation, set: readonly Relaxation[], index: number): boolean {
  const relaxed = given(bare, set);
  return relaxed !== null && withRoomFor(relaxed.situation, index) !== null;
}

function saidOf(bare: Situation, set: readonly Relaxation[]): Said[] {
  return given(bare, set)!.said;
}

/** Relaxations of each rule, mildest first. */
function byRule(single: readonly Relaxation[]): Relaxation[][] {
  const rules = [...new Set(single.map((each) => each.rule))];
  return rules.map((rule) => single.filter((each) => each.rule === rule).sort((a, b) => a.weight - b.weight));
}

/** The mildest of one rule that is enough; where the widest step is not, no other step is either. */
function mildestEnough(same: readonly Relaxation[], isEnough: (each: Relaxation) => boolean): Relaxation | undefined {
  const widest = same.at(-1)!;
  if (!BY_STEPS.includes(widest.rule)) return same.find(isEnough);
  return isEnough(widest) ? (same.slice(0, -1).find(isEnough) ?? widest) : undefined;
}

function forPairs(single: readonly Relaxation[]): Relaxation[] {
  return byRule(single).flatMap((same) =>
    BY_STEPS.includes(same[0]!.rule) ? same.slice(-1) : same.slice(0, MOST_VISITS_IN_PAIRS),
  );
}

/** A sufficient set with each rule given up no further than it must be. */
function narrowed(
  bare: Situation,
  set: readonly Relaxation[],
  single: readonly Relaxation[],
  index: number,
): Relaxation[] {
  let least = [...set];
  for (const [k, { rule }] of set.entries()) {
    if (!BY_STEPS.includes(rule)) continue;
    const steps = byRule(single.filter((each) => each.rule === rule))[0]!;
    // The widest step, which is among them, is enough.
    least = least.with(k, steps.find((each) => suffices(bare, least.with(k, each), index))!);
  }
  return least;
}
