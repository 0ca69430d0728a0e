import type { PlanningInstance } from './instance.js';
import { preparationMinutes } from './preparation.js';

/** S = set-up + Σ item minutes + each shared preparation once per machine. */
export function visitMinutes(
  instance: PlanningInstance,
  site: number,
  items: readonly number[],
): { setup: number; preparation: number; items: number; total: number } {
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
  return { setup, preparation, items: work, total: setup + preparation + work };
}
