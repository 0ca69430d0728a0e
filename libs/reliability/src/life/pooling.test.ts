import { describe, expect, it } from '@jest/globals';
import { fitWeibull } from './fit-weibull.js';
import { reportGroup } from './group-report.js';
import { type Life, sampleOf } from './life.js';
import { poolGroups } from './pooling.js';
import { fitThresholdWeibull } from './threshold-weibull.js';
import { quantile } from './weibull.js';

const STATED = { shape: { median: 2, sdLog: 0.4 }, scale: { scale: 900, worthFailures: 1 } };

/** Lives at evenly spread shares of a law, so that nothing depends on luck. */
function spread(shape: number, scale: number, n: number, outcome: Life['outcome'] = 'failed'): Life[] {
  return Array.from({ length: n }, (_, i) => ({ age: quantile({ shape, scale }, (i + 0.5) / n), outcome }));
}

describe('partial pooling', () => {
  const like = [580, 600, 620, 640, 600].map((scale) => sampleOf(spread(2, scale, 40)));

  it('draws a group with three failures toward its like, and hardly one with two hundred', () => {
    const few = sampleOf(spread(2, 1200, 3));
    const many = sampleOf(spread(2, 1200, 200));
    const scaleIn = (group: typeof few) => {
      const { prior } = poolGroups([...like, group], STATED);
      return reportGroup(group, prior).scale!.value;
    };
    const alone = fitWeibull(few);
    expect(alone.ok && alone.scale).toBeGreaterThan(1100);
    expect(scaleIn(few)).toBeLessThan(950);
    expect(scaleIn(few)).toBeGreaterThan(600);
    expect(scaleIn(many)).toBeGreaterThan(1100);
  });

  it('makes a group of three narrower than it is alone, and says what the pool counts for', () => {
    const few = sampleOf(spread(2, 640, 3));
    const pool = poolGroups([...like, few], STATED);
    const pooled = reportGroup(few, pool.prior).scale!;
    const alone = reportGroup(few).scale!;
    expect(pooled.high / pooled.low).toBeLessThan(0.6 * (alone.high / alone.low));
    expect(pool.sentence).toMatch(/^Learned from 203 failures in 6 groups: .* counts like \d+ failures\.$/);
  });

  it('lets unlike groups keep apart: the more they differ, the less the pool counts', () => {
    const unlike = [150, 400, 900, 2000, 4000].map((scale) => sampleOf(spread(2, scale, 40)));
    const near = poolGroups(like, STATED).prior.scale!.worthFailures;
    const far = poolGroups(unlike, STATED).prior.scale!.worthFailures;
    expect(far).toBeLessThan(near);
    // Mixing unlike groups must not pass for parts that do not age.
    expect(poolGroups(unlike, STATED).prior.shape!.median).toBeGreaterThan(1.7);
  });

  it('one group alone is not its own pool', () => {
    expect(poolGroups([like[0]!], STATED).prior).toBe(STATED);
  });
});

it('a threshold is found where no part fails early, and its likelihood is never below that of the plain law', () => {
  const shifted = sampleOf(spread(1.6, 300, 80).map((each) => ({ ...each, age: each.age + 400 })));
  const fit = fitThresholdWeibull(shifted);
  const plain = fitWeibull(shifted);
  if (!fit.ok || !plain.ok) throw new Error('no fit');
  expect(fit.logLikelihood).toBeGreaterThan(plain.logLikelihood + 5);
  expect(Math.abs(fit.threshold - 400)).toBeLessThan(15);
  expect(Math.abs(fit.after.shape - 1.6)).toBeLessThan(0.2);
});
