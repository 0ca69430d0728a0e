import { expect } from '@jest/globals';

/** Relative difference of at most `tolerance`: how computed reference values are held. */
export function expectNear(value: number | null | undefined, expected: number, tolerance = 1e-6): void {
  if (value === null || value === undefined || !(Math.abs(value - expected) <= tolerance * Math.abs(expected)))
    expect(`${value}`).toBe(`${expected} within ${tolerance} of itself`);
  else expect(Math.abs(value - expected)).toBeLessThanOrEqual(tolerance * Math.abs(expected));
}
