import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { takeFrom } from './token-bucket.js';

const POLICY = { quota: 10, windowSeconds: 60 };

describe('a bucket', () => {
  it('gives its quota at once, then one each sixth of a minute', () => {
    let fullAt = 0;
    const ask = (now: number) => {
      const answer = takeFrom(fullAt, POLICY, 1, now);
      fullAt = answer.fullAt;
      return answer.taken;
    };
    const burst = Array.from({ length: 11 }, () => ask(1000));
    expect(burst.map((each) => each.remaining)).toEqual([9, 8, 7, 6, 5, 4, 3, 2, 1, 0, 0]);
    expect(burst.map((each) => each.allowed)).toEqual([...Array(10).fill(true), false]);
    expect(burst[10]).toMatchObject({ resetSeconds: 60, retryAfterSeconds: 6 });
    expect(ask(6999).allowed).toBe(false);
    expect(ask(7000).allowed).toBe(true);
    expect(ask(7000).allowed).toBe(false);
    expect(ask(200_000)).toMatchObject({ allowed: true, remaining: 9 });
  });

  it('is only looked at for nothing', () => {
    const { fullAt, taken } = takeFrom(0, POLICY, 0, 5);
    expect([fullAt, taken.allowed, taken.remaining]).toEqual([5, true, 10]);
  });

  it('tells whole seconds at whatever instant it is asked', () => {
    const instant = fc.integer({ min: 0, max: 3e7 }).map((microseconds) => microseconds / 1000);
    fc.assert(
      fc.property(instant, (now) => {
        const { taken } = takeFrom(0, { quota: 5, windowSeconds: 60 }, 1, now);
        expect(taken).toEqual({ allowed: true, remaining: 4, resetSeconds: 12, retryAfterSeconds: 0 });
      }),
      { seed: 20260604, numRuns: 1000 },
    );
  });

  it('never lets more through in any window than the quota and what filled up meanwhile', () => {
    const waits = fc.array(fc.integer({ min: 0, max: 9000 }), { minLength: 1, maxLength: 200 });
    fc.assert(
      fc.property(waits, (steps) => {
        let fullAt = 0;
        let now = 0;
        const passed: number[] = [];
        for (const step of steps) {
          now += step;
          const answer = takeFrom(fullAt, POLICY, 1, now);
          fullAt = answer.fullAt;
          if (answer.taken.allowed) passed.push(now);
          else {
            const later = now + answer.taken.retryAfterSeconds * 1000;
            expect(takeFrom(fullAt, POLICY, 1, later).taken.allowed).toBe(true); // Retry-After keeps its word
          }
        }
        for (const from of passed) {
          const within = passed.filter((at) => at >= from && at < from + 60_000).length;
          expect(within).toBeLessThanOrEqual(20);
        }
      }),
      { seed: 20260604, numRuns: 200 },
    );
  });
});
