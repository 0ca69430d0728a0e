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

/** The options where nothing is worth doing. */
const NOTHING: readonly WorkOption[] = [{ minutes: 0, net: 0, items: [] }];

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
export function machineOptions(
  items: readonly OfferedItem[],
  forest: PreparationForest,
  wage: number,
): readonly WorkOption[] {
  const useful = items.filter((item) => item.gain > wage * item.minutes);
  if (useful.length === 0) return NOTHING;
  if (useful.length <= ENUMERATE_UP_TO) return bestSubsets(useful, forest, wage);
  return undominated(perPreparation(useful, forest, wage));
}

/** Minutes, gain and states of a set follow from those of the set without its first item. */
function bestSubsets(items: readonly OfferedItem[], forest: PreparationForest, wage: number): WorkOption[] {
  const sets = 1 << items.length;
  let longest = 0;
  for (let set = 1; set < sets; set++) {
    const first = set & -set;
    const rest = set ^ first;
    const item = items[31 - Math.clz32(first)]!;
    const added = item.bits & ~stateBits[rest]!;
    stateBits[set] = stateBits[rest]! | added;
    gains[set] = gains[rest]! + item.gain;
    lengths[set] = lengths[rest]! + item.minutes + (added === 0 ? 0 : preparationMinutes(added, forest));
    longest = Math.max(longest, lengths[set]!);
  }
  if (best.length <= longest) best = new Int32Array(2 * longest + 1);
  best.fill(-1, 0, longest + 1);
  for (let set = 0; set < sets; set++) {
    const rival = best[lengths[set]!]!;
    if (rival < 0 || gains[set]! > gains[rival]!) best[lengths[set]!] = set;
  }
  const options: WorkOption[] = [];
  let most = -Infinity;
  for (let minutes = 0; minutes <= longest; minutes++) {
    const set = best[minutes]!;
    if (set < 0) continue;
    const net = gains[set]! - wage * minutes;
    if (net <= most) continue;
    most = net;
    options.push({ minutes, net, items: items.filter((_, k) => set & (1 << k)).map((item) => item.index) });
  }
  return options;
}

/** The best set of every length; this and what follows are kept between calls for speed. */
let best = new Int32Array(256);
/** Per set of items, set 0 empty. */
const lengths = new Int32Array(1 << ENUMERATE_UP_TO);
const gains = new Float64Array(1 << ENUMERATE_UP_TO);
const stateBits = new Int32Array(1 << ENUMERATE_UP_TO);

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
function undominated(options: WorkOption[]): WorkOption[] {
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
