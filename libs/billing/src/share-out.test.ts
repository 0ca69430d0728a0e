import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { shareOfDrive, shareOut } from './share-out.js';

describe('sharing by the largest remainder', () => {
  it('gives what is left to the largest remainders, first come first served', () => {
    expect(shareOut(100, [1, 1, 1])).toEqual([34, 33, 33]);
    expect(shareOut(10, [0, 0])).toEqual([5, 5]);
    expect(shareOut(7, [0, 3])).toEqual([0, 7]);
  });

  it('never loses or makes a cent, and is never a cent off the exact share', () => {
    const weights = fc.array(fc.integer({ min: 0, max: 600 }), { minLength: 1, maxLength: 14 });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000_000 }), weights, (total, given) => {
        const shares = shareOut(total, given);
        const whole = given.reduce((one, other) => one + other, 0);
        expect(shares.reduce((one, other) => one + other, 0)).toBe(total);
        shares.forEach((share, index) => {
          const exact = whole === 0 ? total / given.length : (total * given[index]!) / whole;
          expect(Math.abs(share - exact)).toBeLessThan(1 + 1e-6);
        });
      }),
      { seed: 7, numRuns: 2000 },
    );
  });

  it('shares a day’s drive to the cent, in whatever order its visits are finished', () => {
    const day = fc.array(fc.integer({ min: 0, max: 95 }), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 90_000 }), day, fc.infiniteStream(fc.nat()), (cost, drives, picks) => {
        const visits = drives.map((driveMinutes, index) => ({
          visitId: `v${index}`,
          driveMinutes,
          given: null as number | null,
        }));
        while (visits.some((visit) => visit.given === null)) {
          const open = visits.filter((visit) => visit.given === null);
          const next = open[picks.next().value! % open.length]!;
          next.given = shareOfDrive(cost, visits, next.visitId);
        }
        expect(visits.reduce((total, visit) => total + visit.given!, 0)).toBe(cost);
      }),
      { seed: 8, numRuns: 1000 },
    );
  });
});
