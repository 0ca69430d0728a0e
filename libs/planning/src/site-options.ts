import type { WorkOption } from './machine-options.js';

/** How many options a list may hold while machines are merged, and in the end. */
const CAP = 64;

/** A sum of two options; its items are looked up only when it is chosen. */
export interface CombinedOption {
  minutes: number;
  net: number;
  parts: readonly [CombinedOption | WorkOption, CombinedOption | WorkOption] | null;
}

/**
 * Combines the machines of a site: one option of each, minutes and net added up, dominated sums dropped.
 * Exact while no list exceeds the cap; beyond it the list is thinned evenly, its first and last option kept.
 *
 * @param machines    per machine its options, the empty one first
 * @param mostMinutes longer sums are dropped
 * @param mostMachines at most so many machines get any work
 * @returns rising minutes, strictly rising net; the first does nothing
 */
export function siteOptions(
  machines: readonly (readonly WorkOption[])[],
  mostMinutes: number,
  mostMachines: number,
): CombinedOption[] {
  const nothing: CombinedOption = { minutes: 0, net: 0, parts: null };
  if (mostMinutes < 0) return [nothing];
  if (frontier.mostMinutes < mostMinutes) frontier = new Frontier(mostMinutes);
  const useful = machines.filter((options) => options.length > 1);
  if (mostMachines >= useful.length) {
    let merged = [nothing];
    for (const options of useful) {
      frontier.addSums(merged, options, mostMinutes);
      merged = frontier.take(mostMinutes);
    }
    return merged;
  }
  let byCount: CombinedOption[][] = [[nothing]];
  for (const options of useful) {
    const working = options.slice(1);
    const next: CombinedOption[][] = [];
    for (let count = 0; count <= Math.min(byCount.length, mostMachines); count++) {
      frontier.add(byCount[count] ?? [], mostMinutes);
      if (count > 0) frontier.addSums(byCount[count - 1]!, working, mostMinutes);
      next.push(frontier.take(mostMinutes));
    }
    byCount = next;
  }
  for (const options of byCount) frontier.add(options, mostMinutes);
  return frontier.take(mostMinutes);
}

/** Items of a combined option, by rising index. */
export function itemsOfOption(option: CombinedOption | WorkOption): number[] {
  const items: number[] = [];
  const open: (CombinedOption | WorkOption)[] = [option];
  while (open.length > 0) {
    const next = open.pop()!;
    if ('items' in next) items.push(...next.items);
    else if (next.parts) open.push(...next.parts);
  }
  return items.sort((a, b) => a - b);
}

/** Best net for every number of minutes; ties keep what came first. */
class Frontier {
  private readonly net: Float64Array;
  private readonly first: (CombinedOption | WorkOption | undefined)[];
  private readonly second: (WorkOption | undefined)[];
  private readonly kept: Int32Array;

  constructor(readonly mostMinutes: number) {
    this.net = new Float64Array(mostMinutes + 1).fill(-Infinity);
    this.first = new Array(mostMinutes + 1);
    this.second = new Array(mostMinutes + 1);
    this.kept = new Int32Array(mostMinutes + 1);
  }

  add(options: readonly CombinedOption[], mostMinutes: number): void {
    for (const option of options) {
      if (option.minutes > mostMinutes || option.net <= this.net[option.minutes]!) continue;
      this.net[option.minutes] = option.net;
      this.first[option.minutes] = option;
      this.second[option.minutes] = undefined;
    }
  }

  addSums(a: readonly CombinedOption[], b: readonly WorkOption[], mostMinutes: number): void {
    for (const first of a) {
      for (const second of b) {
        const minutes = first.minutes + second.minutes;
        if (minutes > mostMinutes) break;
        const net = first.net + second.net;
        if (net <= this.net[minutes]!) continue;
        this.net[minutes] = net;
        this.first[minutes] = first;
        this.second[minutes] = second;
      }
    }
  }

  /** The undominated options, thinned to the cap; empties the frontier. */
  take(mostMinutes: number): CombinedOption[] {
    const { net, kept } = this;
    let found = 0;
    let best = -Infinity;
    for (let minutes = 0; minutes <= mostMinutes; minutes++) {
      if (net[minutes]! <= best) continue;
      best = net[minutes]!;
      kept[found++] = minutes;
    }
    const options: CombinedOption[] = [];
    const count = Math.min(CAP, found);
    for (let k = 0; k < count; k++) {
      const minutes = kept[count === found ? k : Math.round((k * (found - 1)) / (CAP - 1))]!;
      const first = this.first[minutes]!;
      const second = this.second[minutes];
      options.push(second ? { minutes, net: net[minutes]!, parts: [first, second] } : (first as CombinedOption));
    }
    net.fill(-Infinity, 0, mostMinutes + 1);
    return options;
  }
}

/** Kept between calls for speed; empty whenever nobody is inside `siteOptions`. */
let frontier = new Frontier(1000);
