import { expect, test } from '@jest/globals';
import fc from 'fast-check';
import { shiftCents } from './timing-cost.js';

const blades = { doCents: 3000, failureCents: 20000, hazardShape: 2, latePenaltyCentsPerDay: 0 };

test('zero at the due interval, the whole cost when thrown away at once', () => {
  expect(shiftCents(1, blades)).toBe(0);
  expect(shiftCents(0, blades)).toBeCloseTo(3000, 9);
  // β = 2: h = c (r − 1)²
  expect(shiftCents(0.5, blades)).toBeCloseTo(750, 9);
});

test('agrees with the definition M(x) − M(x*) − (x − x*) φ*, x* being the minimum of φ', () => {
  const [c, cr, beta, xStar] = [3000, 20000, 3, 40];
  const eta = xStar * ((cr * (beta - 1)) / c) ** (1 / beta);
  const m = (x: number) => cr * (x / eta) ** beta;
  const phi = (x: number) => (c + m(x)) / x;
  expect(phi(xStar)).toBeLessThan(phi(xStar * 1.01));
  expect(phi(xStar)).toBeLessThan(phi(xStar * 0.99));
  const x = 28;
  const h = m(x) - m(xStar) - (x - xStar) * phi(xStar);
  expect(shiftCents(x / xStar, { ...blades, hazardShape: beta })).toBeCloseTo(h, 6);
});

test('never negative, falls until due and rises after, bounded', () => {
  const economics = fc.record({
    doCents: fc.integer({ min: 0, max: 1e6 }),
    failureCents: fc.integer({ min: 0, max: 1e7 }),
    hazardShape: fc.double({ min: 1, max: 6, noNaN: true }),
    latePenaltyCentsPerDay: fc.constant(0),
  });
  const share = fc.double({ min: -1, max: 1e4, noNaN: true });
  fc.assert(
    fc.property(economics, share, share, (e, a, b) => {
      const [near, far] = [a, b].sort((x, y) => Math.abs(x - 1) - Math.abs(y - 1)) as [number, number];
      if (near < 1 === far < 1) expect(shiftCents(near, e)).toBeLessThanOrEqual(shiftCents(far, e) + 1e-6);
      expect(shiftCents(a, e)).toBeGreaterThanOrEqual(0);
      expect(shiftCents(a, e)).toBeLessThanOrEqual(e.doCents + e.failureCents + 1e-6);
    }),
    { seed: 5, numRuns: 500 },
  );
});
