import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { DrawnSet } from './drawn-set.js';
import { Random } from './random.js';

describe('DrawnSet', () => {
  it('holds what a set holds, and draws every member', () => {
    const step = fc.oneof(fc.tuple(fc.nat(11), fc.boolean()), fc.constant('clear' as const));
    fc.assert(
      fc.property(fc.array(step, { maxLength: 60 }), (steps) => {
        const drawn = new DrawnSet(12);
        const plain = new Set<number>();
        for (const each of steps) {
          if (each === 'clear') {
            drawn.clear();
            plain.clear();
            continue;
          }
          const [x, isIn] = each;
          drawn.set(x, isIn);
          if (isIn) plain.add(x);
          else plain.delete(x);
          expect(drawn.count).toBe(plain.size);
          expect(new Set(drawn.members.slice(0, drawn.count))).toEqual(plain);
        }
        if (plain.size === 0) return;
        const random = new Random(steps.length);
        const met = new Set(Array.from({ length: 400 }, () => drawn.draw(random)));
        expect(met).toEqual(plain);
      }),
      { seed: 20, numRuns: 300 },
    );
  });
});
