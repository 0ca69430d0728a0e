import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { type Spot, spotGroups } from './spot-groups.js';

const APART = 40;
const middle = (spots: readonly Spot[], members: readonly number[]): Spot => ({
  x: members.reduce((sum, each) => sum + spots[each]!.x, 0) / members.length,
  y: members.reduce((sum, each) => sum + spots[each]!.y, 0) / members.length,
});

describe('spots on the map', () => {
  it('stand alone where there is room, together where there is none', () => {
    const spots = [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 10, y: 0 },
      { x: 100, y: 0 },
      { x: 100, y: 40 },
    ];
    expect(spotGroups(spots, APART)).toEqual([[0, 2], [1, 3], [4]]);
  });

  it('are each in one group, and no two groups are nearer than told', () => {
    const spot = fc.record({ x: fc.integer({ min: 0, max: 360 }), y: fc.integer({ min: 0, max: 380 }) });
    fc.assert(
      fc.property(fc.array(spot, { maxLength: 120 }), (spots) => {
        const groups = spotGroups(spots, APART);
        expect(groups.flat().sort((a, b) => a - b)).toEqual(spots.map((_, index) => index));
        const middles = groups.map((members) => middle(spots, members));
        for (const [k, a] of middles.entries())
          for (const b of middles.slice(0, k)) expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(APART - 1e-6);
      }),
      { seed: 1 },
    );
  });
});
