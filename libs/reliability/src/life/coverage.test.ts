import { expect, test } from '@jest/globals';
import { adviseAge } from '../decisions/age-replacement.js';
import { costAboveBest } from '../decisions/opportunity.js';
import { reportGroup } from './group-report.js';
import { type Life, sampleOf } from './life.js';
import { FLAT_PRIOR, LifePosterior } from './life-posterior.js';
import { WeibullLikelihood } from './weibull-likelihood.js';

/** A linear congruential generator is enough here: the full simulation is tests/bench/reliability.mjs. */
function randomOf(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
}

function simulated(random: () => number, shape: number, scale: number, failures: number): Life[] {
  const lives: Life[] = [];
  for (let seen = 0; seen < failures; ) {
    const age = scale * (-Math.log(random())) ** (1 / shape);
    const watchedTo = scale * (0.5 + random());
    const entry = random() < 0.3 ? scale * 0.4 * random() : 0;
    if (age <= entry) continue;
    if (watchedTo <= entry) continue;
    lives.push(age <= watchedTo ? { age, entry, outcome: 'failed' } : { age: watchedTo, entry, outcome: 'running' });
    if (age <= watchedTo) seen += 1;
  }
  return lives;
}

// 300 seeded runs: a true coverage of 90 % lies within 85 to 95 % with more than 99 % chance.
test.each([8, 30])('90 %% intervals hold the truth about 90 times in 100, at %d failures', (failures) => {
  const random = randomOf(11 * failures);
  const runs = 300;
  let [shape, scale] = [0, 0];
  for (let run = 0; run < runs; run++) {
    const report = reportGroup(sampleOf(simulated(random, 1.8, 700, failures)));
    if (report.shape!.low <= 1.8 && 1.8 <= report.shape!.high) shape += 1;
    if (report.scale!.low <= 700 && 700 <= report.scale!.high) scale += 1;
  }
  expect(shape / runs).toBeGreaterThan(0.85);
  expect(shape / runs).toBeLessThan(0.95);
  expect(scale / runs).toBeGreaterThan(0.85);
  expect(scale / runs).toBeLessThan(0.95);
});

test('advice from 30 failures costs at most 3 % more than the true optimum, on average', () => {
  const random = randomOf(3);
  const costs = { planned: 1, failed: 5 };
  const runs = 12;
  let above = 0;
  for (let run = 0; run < runs; run++) {
    const likelihood = new WeibullLikelihood(sampleOf(simulated(random, 2.5, 600, 30)));
    above += costAboveBest(
      { shape: 2.5, scale: 600 },
      costs,
      adviseAge(LifePosterior.of(likelihood, FLAT_PRIOR), costs, null).age,
    );
  }
  expect(above / runs).toBeLessThan(0.03);
});

test('conditional interval of a complete sample: simulated pivots of the shape (Thoman, Bain & Antle 1969, from memory)', () => {
  // Quantiles 0.05 and 0.95 of the maximum likelihood shape for n = 10 and true shape 1: 0.738 and 1.807 (memory). The
  // average of ln(high/low) over samples must be near ln(1.807/0.738), whatever the sample.
  const random = randomOf(17);
  let sum = 0;
  for (let run = 0; run < 100; run++) {
    const lives = Array.from({ length: 10 }, (): Life => ({ age: -Math.log(random()), outcome: 'failed' }));
    const { shape } = reportGroup(sampleOf(lives));
    sum += Math.log(shape!.high / shape!.low);
  }
  expect(Math.abs(sum / 100 - Math.log(1.807 / 0.738))).toBeLessThan(0.05);
});
