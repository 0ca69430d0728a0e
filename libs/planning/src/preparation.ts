import type { PlanningItem, PlanningMachine } from './snapshot.js';

/** Preparation states of a machine as bits, each with its minutes. */
export interface PreparationForest {
  /** One entry per state, in the machine's order. */
  readonly minutes: readonly number[];
  /** State name → bits of the state and all its parents. */
  readonly closure: ReadonlyMap<string, number>;
}

/** A parent that is unknown, or a circle of parents, ends the chain. */
export function preparationForest(machine: PlanningMachine): PreparationForest {
  const index = new Map(machine.preparations.map((preparation, k) => [preparation.state, k]));
  const closure = new Map<string, number>();
  machine.preparations.forEach((preparation) => {
    let bits = 0;
    let at: string | null = preparation.state;
    while (at !== null && index.has(at)) {
      const k: number = index.get(at)!;
      if (bits & (1 << k)) break;
      bits |= 1 << k;
      at = machine.preparations[k]!.parent;
    }
    closure.set(preparation.state, bits);
  });
  return { minutes: machine.preparations.map((preparation) => preparation.minutes), closure };
}

/** Bits of all states that the item needs, parents included. States the machine does not have cost nothing. */
export function preparationBits(item: PlanningItem, forest: PreparationForest): number {
  return item.preparations.reduce((bits, state) => bits | (forest.closure.get(state) ?? 0), 0);
}

/** Minutes to bring about all states in `bits`: each once. */
export function preparationMinutes(bits: number, forest: PreparationForest): number {
  return forest.minutes.reduce((sum, minutes, k) => sum + (bits & (1 << k) ? minutes : 0), 0);
}
