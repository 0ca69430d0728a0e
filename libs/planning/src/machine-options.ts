import { type PreparationForest, preparationMinutes } from './preparation.js';

/** What could be done at one machine, or one site, in one visit. */
export interface WorkOption {
  minutes: number;
  /** Worth of the items less the labour for all minutes, preparation included; money units of the caller. */
  net: number;
  items: readonly number[];
}

export interface OfferedItem {
  index: number;
  minutes: number;
  /** Preparation states, closed under parents. */
  bits: number;
  gain: number;
}

const ENUMERATE_UP_TO = 8;
const STATES_UP_TO = 6;

/**
 * Best subsets of a machine's open items: rising minutes, strictly rising net, the empty set first.
 * minutes(X) = Σ p_i + Σ τ_h over the union of preparation states, each once;
 * net(X) = Σ gain_i − wage × minutes(X).
 * All subsets are looked at for up to 8 items. Beyond that, per union of preparation states the items that need no
 * more than those, in order of gain per minute.
 *
 * @source dominance list: own design after the planner note, 4.5
 */
export function machineOptions(items: readonly OfferedItem[], forest: PreparationForest, wage: number): WorkOption[] {
  const useful = items.filter((item) => item.gain > wage * item.minutes);
  if (useful.length <= ENUMERATE_UP_TO) return undominated(allSubsets(useful, forest, wage));
  return undominated(perPreparation(useful, forest, wage));
}

function allSubsets(items: readonly OfferedItem[], forest: PreparationForest, wage: number): WorkOption[] {
  const options: WorkOption[] = [];
  for (let mask = 0; mask < 1 << items.length; mask++) {
    let minutes = 0;
    let gain = 0;
    let bits = 0;
    const chosen: number[] = [];
    for (let k = 0; k < items.length; k++) {
      if ((mask & (1 << k)) === 0) continue;
      const item = items[k]!;
      minutes += item.minutes;
      gain += item.gain;
      bits |= item.bits;
      chosen.push(item.index);
    }
    minutes += preparationMinutes(bits, forest);
    options.push({ minutes, net: gain - wage * minutes, items: chosen });
  }
  return options;
}

function perPreparation(items: readonly OfferedItem[], forest: PreparationForest, wage: number): WorkOption[] {
  const distinct = [...new Set(items.map((item) => item.bits))];
  const worthOf = new Map(
    distinct.map((bits) => [bits, items.reduce((sum, i) => sum + (i.bits === bits ? i.gain : 0), 0)]),
  );
  distinct.sort((a, b) => worthOf.get(b)! - worthOf.get(a)! || a - b);
  const unions = new Set<number>([distinct.reduce((all, bits) => all | bits, 0), 0]);
  const tried = Math.min(distinct.length, STATES_UP_TO);
  for (let mask = 1; mask < 1 << tried; mask++) {
    let union = 0;
    for (let k = 0; k < tried; k++) if (mask & (1 << k)) union |= distinct[k]!;
    unions.add(union);
  }
  const options: WorkOption[] = [{ minutes: 0, net: 0, items: [] }];
  for (const union of unions) {
    const inside = items.filter((item) => (item.bits & ~union) === 0);
    inside.sort((a, b) => b.gain * a.minutes - a.gain * b.minutes || a.index - b.index);
    let minutes = 0;
    let gain = 0;
    let bits = 0;
    const chosen: number[] = [];
    for (const item of inside) {
      minutes += item.minutes;
      gain += item.gain;
      bits |= item.bits;
      chosen.push(item.index);
      const total = minutes + preparationMinutes(bits, forest);
      options.push({ minutes: total, net: gain - wage * total, items: [...chosen] });
    }
  }
  return options;
}

/** Keeps what no other option beats: rising minutes, strictly rising net. Ties go to the earlier option. */
export function undominated(options: WorkOption[]): WorkOption[] {
  const order = options.map((_, k) => k);
  order.sort((a, b) => options[a]!.minutes - options[b]!.minutes || options[b]!.net - options[a]!.net || a - b);
  const kept: WorkOption[] = [];
  let best = -Infinity;
  for (const k of order) {
    const option = options[k]!;
    if (option.net > best) {
      kept.push(option);
      best = option.net;
    }
  }
  return kept;
}
