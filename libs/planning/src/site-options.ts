import { undominated, type WorkOption } from './machine-options.js';

/** How many options a list may hold while machines are merged, and in the end. */
const CAP = 64;

/**
 * Combines the machines of a site: one option of each, minutes and net added up, dominated sums dropped.
 * Exact while no list exceeds the cap; beyond it the list is thinned evenly, its first and last option kept.
 *
 * @param machines    per machine its options, the empty one first
 * @param mostMinutes longer sums are dropped
 * @param mostMachines at most so many machines get any work
 */
export function siteOptions(
  machines: readonly (readonly WorkOption[])[],
  mostMinutes: number,
  mostMachines: number,
): WorkOption[] {
  const nothing: WorkOption = { minutes: 0, net: 0, items: [] };
  const useful = machines.filter((options) => options.length > 1);
  if (mostMachines >= useful.length) {
    let merged = [nothing];
    for (const options of useful) merged = thinned(crossed(merged, options, mostMinutes));
    return merged;
  }
  let byCount: WorkOption[][] = [[nothing]];
  for (const options of useful) {
    const working = options.slice(1);
    const next: WorkOption[][] = [];
    for (let count = 0; count <= Math.min(byCount.length, mostMachines); count++) {
      const idle = byCount[count] ?? [];
      const busy = count > 0 ? crossed(byCount[count - 1]!, working, mostMinutes) : [];
      next.push(thinned(undominated([...idle, ...busy])));
    }
    byCount = next;
  }
  return thinned(undominated(byCount.flat()));
}

function crossed(a: readonly WorkOption[], b: readonly WorkOption[], mostMinutes: number): WorkOption[] {
  const sums: WorkOption[] = [];
  const pairs: [WorkOption, WorkOption][] = [];
  for (const first of a) {
    for (const second of b) {
      const minutes = first.minutes + second.minutes;
      if (minutes > mostMinutes) break;
      sums.push({ minutes, net: first.net + second.net, items: NONE });
      pairs.push([first, second]);
    }
  }
  const pairOf = new Map(sums.map((sum, k) => [sum, pairs[k]!]));
  return undominated(sums).map((sum) => {
    const [first, second] = pairOf.get(sum)!;
    return { ...sum, items: [...first.items, ...second.items] };
  });
}

const NONE: readonly number[] = [];

function thinned(options: WorkOption[]): WorkOption[] {
  if (options.length <= CAP) return options;
  return Array.from({ length: CAP }, (_, k) => options[Math.round((k * (options.length - 1)) / (CAP - 1))]!);
}
