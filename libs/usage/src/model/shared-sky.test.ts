import { describe, expect, test } from '@jest/globals';
import type { LookBack } from './look-back.js';
import { type Period, sharedVariance, skyOf } from './shared-sky.js';

const period = (ratio: number, weight = 1): Period => ({ ratio, reliability: 1, weight });

/** Look-backs of one climate, `count` in each period of 28 days, at these ratios of hours run to hours expected. */
function lookBacks(ratios: readonly number[], count: number): LookBack[] {
  return ratios.flatMap((ratio, p) =>
    Array.from({ length: count }, () => ({
      ...{ expected: 30, hours: 30 * ratio, evidenceHours: 100, weight: 1 },
      ...{ climate: 0, middle: 28 * p + 14, days: 30 },
    })),
  );
}

describe('what a climate has in common', () => {
  test('calm periods say less than they seem to: with none at all the prior stands, with many it fades', () => {
    const prior = sharedVariance([], 0.04, 1);
    expect(prior).toBeCloseTo(0.9 ** 2 * 0.04 * 2, 9);
    const few = sharedVariance([period(1), period(1)], 0.04, 1);
    const many = sharedVariance(
      Array.from({ length: 40 }, () => period(1)),
      0.04,
      1,
    );
    expect(few).toBeLessThan(prior);
    expect(few).toBeGreaterThan(0.6 * prior);
    expect(many).toBeLessThan(0.15 * prior);
  });

  test('dry and wet periods widen the law, the more so the fewer years the season was learned from', () => {
    const calm = [1, 1.02, 0.98, 1.01].map((ratio) => period(ratio));
    const wild = [1.5, 0.6, 1.4, 0.7].map((ratio) => period(ratio));
    expect(sharedVariance(wild, 0.01, 1)).toBeGreaterThan(3 * sharedVariance(calm, 0.01, 1));
    expect(sharedVariance(wild, 0.01, 1)).toBeCloseTo((2 / 1.25) * sharedVariance(wild, 0.01, 4), 9);
  });

  test('seasons unlike the weeks ahead do not count', () => {
    const ahead = [period(1.1), period(0.9)];
    const same = sharedVariance(ahead, 0.04, 2);
    expect(sharedVariance([...ahead, period(3, 0)], 0.04, 2)).toBeCloseTo(same, 12);
  });

  test('a thousand machines in one period are one observation of their sky', () => {
    const ten = skyOf(lookBacks([1.4, 0.7], 200)).periods;
    const thousand = skyOf(lookBacks([1.4, 0.7], 2000)).periods;
    expect(thousand).toHaveLength(2);
    const ratio = sharedVariance(thousand, 0.02, 1) / sharedVariance(ten, 0.02, 1);
    expect(ratio).toBeGreaterThan(0.95);
    expect(ratio).toBeLessThan(1.1);
  });

  test('the factor takes out what a period had in common, and leaves few hours alone', () => {
    const many = lookBacks([1.5], 1000);
    expect(skyOf(many).factor(many[0]!)).toBeCloseTo(1.5, 1);
    const few = lookBacks([1.5], 1);
    expect(skyOf(few).factor(few[0]!)).toBeLessThan(1.1);
  });
});
