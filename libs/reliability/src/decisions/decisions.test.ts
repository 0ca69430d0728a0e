import { describe, expect, it } from '@jest/globals';
import { type Life, sampleOf } from '../life/life.js';
import { LifePosterior } from '../life/life-posterior.js';
import { quantile, survival } from '../life/weibull.js';
import { WeibullLikelihood } from '../life/weibull-likelihood.js';
import { adviseAge, bestAge, chanceOfFailure } from './age-replacement.js';
import { opportunityThreshold } from './opportunity.js';
import { stopgapRisk } from './stopgap-risk.js';

const LIFE = { shape: 2.5, scale: 800 };
const COSTS = { planned: 120, failed: 900 };

describe('while it is open anyway', () => {
  it('the less the opening would cost by itself, the older a part may get', () => {
    const at = (shared: number) => opportunityThreshold(LIFE, COSTS, shared).age!;
    const best = bestAge(LIFE, COSTS).age!;
    expect(at(90)).toBeLessThan(at(60));
    expect(at(60)).toBeLessThan(at(30));
    expect(at(30)).toBeLessThan(best);
    expect(at(0)).toBeGreaterThan(0.98 * best);
  });

  it('the threshold is where keeping costs as much as replacing: simulated renewal costs agree', () => {
    // Cost of keeping a part of age a until its own end, less the best rate g for the hours it still runs, by quadrature.
    const { age: end, costRate: g } = bestAge(LIFE, COSTS);
    const keep = (a: number) => {
      const steps = 20_000;
      const width = (end! - a) / steps;
      let hours = 0;
      for (let i = 0; i < steps; i++) hours += (survival(LIFE, a + (i + 0.5) * width) / survival(LIFE, a)) * width;
      const fails = 1 - survival(LIFE, end!) / survival(LIFE, a);
      return COSTS.planned * (1 - fails) + COSTS.failed * fails - g * hours;
    };
    const { age } = opportunityThreshold(LIFE, COSTS, 60);
    expect(keep(age!)).toBeGreaterThanOrEqual(60 - 0.01);
    expect(keep(age! - end! / 400)).toBeLessThan(60);
  });

  it('parts that do not age are left in place', () => {
    expect(opportunityThreshold({ shape: 1, scale: 500 }, COSTS, 100).age).toBeNull();
  });
});

describe('advice', () => {
  const belief = (failed: readonly number[]) =>
    LifePosterior.of(
      failed.length === 0
        ? null
        : new WeibullLikelihood(sampleOf(failed.map((age): Life => ({ age, outcome: 'failed' })))),
      { shape: { median: 2.5, sdLog: 0.3 }, scale: { scale: 800, worthFailures: 2 } },
    );

  it('without failures rests on the stated prior, near the optimum of its middle', () => {
    const advice = adviseAge(belief([]), COSTS, null);
    expect(advice.age).toBeGreaterThan(150);
    expect(advice.age).toBeLessThan(450);
    expect(advice.current).toBeNull();
  });

  it('what the current age costs is never below nothing, and nothing at the advised age', () => {
    const many = Array.from({ length: 60 }, (_, i) => quantile(LIFE, (i + 0.5) / 60));
    const advice = adviseAge(belief(many), COSTS, 900);
    expect(advice.current!.excess).toBeGreaterThan(0);
    expect(advice.low!).toBeLessThan(advice.age!);
    expect(advice.high!).toBeGreaterThan(advice.age!);
    expect(Math.abs(advice.age! / bestAge(LIFE, COSTS).age! - 1)).toBeLessThan(0.12);
    expect(adviseAge(belief(many), COSTS, advice.age).current!.excess).toBeCloseTo(0, 6);
    for (const point of advice.curve) {
      expect(point.low).toBeLessThanOrEqual(point.costRate + 1e-12);
      expect(point.high).toBeGreaterThanOrEqual(point.low);
    }
  });

  it('waits where a failure costs no more than planned work', () => {
    expect(adviseAge(belief([500, 700, 900]), { planned: 100, failed: 100 }, null).age).toBeNull();
  });
});

it('a stopgap on a worn seat is more likely to fail than a sound part, and the range says how sure that is', () => {
  const risk = stopgapRisk(LIFE, [0.05, 0.3], 0, 25);
  expect(risk.low).toBeGreaterThan(chanceOfFailure(LIFE, 0, 25));
  expect(risk.low).toBeLessThan(risk.chance);
  expect(risk.chance).toBeLessThan(risk.high);
  expect(risk.chance).toBeCloseTo(1 - survival({ shape: 2.5, scale: 800 * Math.sqrt(0.015) }, 25), 12);
  expect(risk.sentence).toBe(
    "Chance of failing within 25 h: about 3 % (under 1 to 27 %), if it lives 5 to 30 % of a sound part's life.",
  );
});
