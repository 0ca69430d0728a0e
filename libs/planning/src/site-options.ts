import type { WorkOption } from './machine-options.js';

/** How many options a list may hold while machines are merged, and in the end. */
const CAP = 64;

/** Rising minutes, strictly rising net; the first option does nothing. */
export interface SiteOptions {
  readonly count: number;
  readonly minutes: Int32Array;
  readonly net: Float64Array;
}

/**
 * Combines the machines of a site: one option of each, minutes and net added up, dominated sums dropped.
 * Exact while no list exceeds the cap; beyond it the list is thinned evenly, its first and last option kept.
 *
 * @param machines    per machine its options, the empty one first
 * @param mostMinutes longer sums are dropped
 * @param mostMachines at most so many machines get any work
 * @returns the merger's own arrays, good until the next call
 */
export function siteOptions(
  machines: readonly (readonly WorkOption[])[],
  mostMinutes: number,
  mostMachines: number,
): SiteOptions {
  return merger.merge(machines, mostMinutes, mostMachines);
}

/**
 * Items of option `k` of `siteOptions(machines, mostMinutes, mostMachines)`, by rising index. Merges once more: few
 * options are ever chosen, and remembering where all of them come from would take most of the memory of a long run.
 */
export function itemsOfOption(
  machines: readonly (readonly WorkOption[])[],
  mostMinutes: number,
  mostMachines: number,
  k: number,
): number[] {
  return merger.itemsOf(merger.merge(machines, mostMinutes, mostMachines), k);
}

class OptionList implements SiteOptions {
  count = 0;
  readonly minutes = new Int32Array(CAP);
  readonly net = new Float64Array(CAP);
  /** Where each option comes from. */
  readonly node = new Int32Array(CAP);

  /** Only the option that does nothing. */
  clear(): this {
    this.count = 1;
    this.minutes[0] = 0;
    this.net[0] = 0;
    this.node[0] = 0;
    return this;
  }
}

function listAt(lists: OptionList[], k: number): OptionList {
  lists[k] ??= new OptionList();
  return lists[k];
}

/** Best net for every number of minutes; ties keep what came first. Typed arrays, kept between calls for speed. */
class Merger {
  private net = new Float64Array(0);
  private fromNode = new Int32Array(0);
  private fromOption = new Int32Array(0);
  private kept = new Int32Array(0);
  /** Longest minutes in the frontier. */
  private reach = -1;
  /** Node 0 does nothing; every other one adds an option of a machine to its parent. */
  private readonly parent: number[] = [0];
  private readonly added: (WorkOption | null)[] = [null];
  private nodes = 1;
  private optionMinutes = new Int32Array(64);
  private optionNet = new Float64Array(64);
  private readonly lists = [new OptionList(), new OptionList()] as const;
  private readonly listsByCount: [OptionList[], OptionList[]] = [[], []];

  merge(machines: readonly (readonly WorkOption[])[], mostMinutes: number, mostMachines: number): OptionList {
    this.nodes = 1;
    if (mostMinutes < 0) return this.lists[0].clear();
    this.reserve(mostMinutes);
    let useful = 0;
    for (const options of machines) if (options.length > 1) useful++;
    if (mostMachines < useful) return this.mergeFew(machines, mostMinutes, mostMachines);
    let merged = this.lists[0].clear();
    let spare: OptionList = this.lists[1];
    for (const options of machines) {
      if (options.length <= 1) continue;
      this.addSums(merged, options, 0, mostMinutes);
      this.take(spare, options);
      [merged, spare] = [spare, merged];
    }
    return merged;
  }

  itemsOf(list: OptionList, k: number): number[] {
    const items: number[] = [];
    for (let node = list.node[k]!; node > 0; node = this.parent[node]!) items.push(...this.added[node]!.items);
    return items.sort((a, b) => a - b);
  }

  /** One list per number of machines worked on. */
  private mergeFew(
    machines: readonly (readonly WorkOption[])[],
    mostMinutes: number,
    mostMachines: number,
  ): OptionList {
    let [byCount, next] = this.listsByCount;
    listAt(byCount, 0).clear();
    let counts = 1;
    for (const options of machines) {
      if (options.length <= 1) continue;
      const most = Math.min(counts, mostMachines);
      for (let count = 0; count <= most; count++) {
        if (count < counts) this.add(byCount[count]!);
        if (count > 0) this.addSums(byCount[count - 1]!, options, 1, mostMinutes);
        this.take(listAt(next, count), options);
      }
      counts = most + 1;
      [byCount, next] = [next, byCount];
    }
    for (let count = 0; count < counts; count++) this.add(byCount[count]!);
    this.take(this.lists[0], []);
    return this.lists[0];
  }

  private reserve(mostMinutes: number): void {
    if (this.net.length > mostMinutes) return;
    this.net = new Float64Array(mostMinutes + 1).fill(-Infinity);
    this.fromNode = new Int32Array(mostMinutes + 1);
    this.fromOption = new Int32Array(mostMinutes + 1);
    this.kept = new Int32Array(mostMinutes + 1);
  }

  private add(list: OptionList): void {
    for (let k = 0; k < list.count; k++) {
      const minutes = list.minutes[k]!;
      if (list.net[k]! <= this.net[minutes]!) continue;
      this.net[minutes] = list.net[k]!;
      this.fromNode[minutes] = list.node[k]!;
      this.fromOption[minutes] = 0;
      if (minutes > this.reach) this.reach = minutes;
    }
  }

  /** Every option of the list with every option of the machine from number `first` on. */
  private addSums(list: OptionList, options: readonly WorkOption[], first: number, mostMinutes: number): void {
    const count = options.length;
    if (this.optionMinutes.length < count) {
      this.optionMinutes = new Int32Array(2 * count);
      this.optionNet = new Float64Array(2 * count);
    }
    const { net, fromNode, fromOption, optionMinutes, optionNet } = this;
    for (let b = first; b < count; b++) {
      optionMinutes[b] = options[b]!.minutes;
      optionNet[b] = options[b]!.net;
    }
    let { reach } = this;
    for (let a = 0; a < list.count; a++) {
      const minutesA = list.minutes[a]!;
      const netA = list.net[a]!;
      const node = list.node[a]!;
      for (let b = first; b < count; b++) {
        const minutes = minutesA + optionMinutes[b]!;
        if (minutes > mostMinutes) break;
        const sum = netA + optionNet[b]!;
        if (sum <= net[minutes]!) continue;
        net[minutes] = sum;
        fromNode[minutes] = node;
        fromOption[minutes] = b;
        if (minutes > reach) reach = minutes;
      }
    }
    this.reach = reach;
  }

  /** Fills the list with the undominated options, thinned to the cap; empties the frontier. */
  private take(list: OptionList, options: readonly WorkOption[]): void {
    const { net, kept } = this;
    let found = 0;
    let best = -Infinity;
    for (let minutes = 0; minutes <= this.reach; minutes++) {
      if (net[minutes]! <= best) continue;
      best = net[minutes]!;
      kept[found++] = minutes;
    }
    list.count = Math.min(CAP, found);
    for (let k = 0; k < list.count; k++) {
      const minutes = kept[list.count === found ? k : Math.round((k * (found - 1)) / (CAP - 1))]!;
      const option = this.fromOption[minutes]!;
      list.minutes[k] = minutes;
      list.net[k] = net[minutes]!;
      list.node[k] = option === 0 ? this.fromNode[minutes]! : this.addNode(this.fromNode[minutes]!, options[option]!);
    }
    net.fill(-Infinity, 0, this.reach + 1);
    this.reach = -1;
  }

  private addNode(parent: number, option: WorkOption): number {
    this.parent[this.nodes] = parent;
    this.added[this.nodes] = option;
    return this.nodes++;
  }
}

const merger = new Merger();
