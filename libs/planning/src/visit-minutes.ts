import type { PlanningInstance } from './instance.js';
import { preparationMinutes } from './preparation.js';

interface VisitMinutes {
  setup: number;
  preparation: number;
  items: number;
  total: number;
}

const memo = new WeakMap<readonly number[], VisitMinutes>();

/** S = set-up + Σ item minutes + each shared preparation once per machine. Remembered by the list. */
export function visitMinutes(instance: PlanningInstance, site: number, items: readonly number[]): VisitMinutes {
  const known = memo.get(items);
  if (known) return known;
  const bits = new Map<number, number>();
  let work = 0;
  for (const index of items) {
    const item = instance.items[index]!;
    work += item.minutes;
    bits.set(item.machine, (bits.get(item.machine) ?? 0) | item.preparationBits);
  }
  let preparation = 0;
  for (const [machine, states] of bits) preparation += preparationMinutes(states, instance.forests[machine]!);
  const setup = instance.snapshot.sites[site]!.setupMinutes;
  const minutes = { setup, preparation, items: work, total: setup + preparation + work };
  memo.set(items, minutes);
  return minutes;
}
