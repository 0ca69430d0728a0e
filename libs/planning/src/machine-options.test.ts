import { Random } from '@deckround/routing';
import { describe, expect, it } from '@jest/globals';
import { machineOptions, type OfferedItem } from './machine-options.js';
import { preparationForest } from './preparation.js';
import { siteOptions } from './site-options.js';

const forest = preparationForest({
  id: 'M',
  siteId: 'S',
  label: '',
  machineClass: '',
  preparations: [
    { state: 'deck raised', minutes: 5, parent: null },
    { state: 'blades off', minutes: 10, parent: 'deck raised' },
    { state: 'belt off', minutes: 8, parent: 'deck raised' },
  ],
});
const states = [0, 1, 1 | 2, 1 | 4, 1 | 2 | 4];

function offered(random: Random, count: number, first = 0): OfferedItem[] {
  return Array.from({ length: count }, (_, k) => ({
    index: first + k,
    minutes: 5 + random.below(40),
    bits: states[random.below(states.length)]!,
    gain: random.below(4000),
  }));
}

/** Best net for at most so many minutes, by trying every subset over all machines. */
function bestByEnumeration(machines: OfferedItem[][], wage: number, minutes: number, mostMachines: number): number {
  const all = machines.flatMap((items, m) => items.map((item) => ({ ...item, m })));
  let best = 0;
  for (let mask = 0; mask < 1 << all.length; mask++) {
    const chosen = all.filter((_, k) => mask & (1 << k));
    let time = 0;
    let gain = 0;
    const bits = new Map<number, number>();
    for (const item of chosen) {
      time += item.minutes;
      gain += item.gain;
      bits.set(item.m, (bits.get(item.m) ?? 0) | item.bits);
    }
    for (const states of bits.values()) time += (states & 1 ? 5 : 0) + (states & 2 ? 10 : 0) + (states & 4 ? 8 : 0);
    if (time <= minutes && bits.size <= mostMachines) best = Math.max(best, gain - wage * time);
  }
  return best;
}

describe('menus', () => {
  it('hold the best subset for every number of minutes, as enumeration finds it', () => {
    const random = new Random(11);
    for (let round = 0; round < 60; round++) {
      const counts = [1 + random.below(4), random.below(4), random.below(3)];
      let first = 0;
      const machines = counts.map((count) => {
        const items = offered(random, count, first);
        first += count;
        return items;
      });
      const wage = 20 + random.below(60);
      const mostMachines = 1 + random.below(3);
      const menu = siteOptions(
        machines.map((items) => machineOptions(items, forest, wage)),
        300,
        mostMachines,
      );
      for (const minutes of [0, 15, 40, 75, 120, 200, 300]) {
        const best = Math.max(0, ...menu.net.slice(0, menu.count).filter((_, k) => menu.minutes[k]! <= minutes));
        expect(best).toBe(bestByEnumeration(machines, wage, minutes, mostMachines));
      }
    }
  });

  it('pay shared preparation once', () => {
    const items = [0, 1].map((index) => ({ index, minutes: 6, bits: 1 | 2, gain: 9999 }));
    expect(machineOptions(items, forest, 1).at(-1)).toMatchObject({ minutes: 6 + 6 + 5 + 10, items: [0, 1] });
  });

  it('rise in minutes and strictly in net, also beyond eight items', () => {
    const random = new Random(3);
    const options = machineOptions(offered(random, 14), forest, 30);
    for (let k = 1; k < options.length; k++) {
      expect(options[k]!.minutes).toBeGreaterThan(options[k - 1]!.minutes);
      expect(options[k]!.net).toBeGreaterThan(options[k - 1]!.net);
    }
    expect(options.length).toBeGreaterThan(5);
  });
});
