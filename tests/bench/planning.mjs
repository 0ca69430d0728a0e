/** Planning benchmark. */
import { appendFileSync } from 'node:fs';
import { baselinePlan, checkPlan, planWeek } from '@deckround/planning';
import { generateSnapshot } from '../../libs/planning/dist/test-support/generate-snapshot.js';
import { benchOptions } from './bench-options.mjs';

const { seconds, seed, weeks, out } = benchOptions(
  `bench:planning [-- --seconds S --seed N --weeks 30 --out results.jsonl]
Plans generated weeks and compares each with the better of both two-stage baselines; every plan is checked.`,
  { seconds: 2, seed: 1, weeks: 30, out: undefined },
);
const savings = [];
for (let week = 1; week <= weeks; week++) {
  const snapshot = generateSnapshot({
    seed: week,
    sites: 12 + ((week * 7) % 49),
    machinesPerSite: 4 + (week % 6),
    items: 60 + ((week * 53) % 440),
    technicians: 2 + (week % 4),
    days: 5 + (week % 2),
    promises: week % 2 === 0,
  });
  const plan = planWeek(snapshot, {
    snapshotHash: '',
    seed,
    stop: { seconds, now: () => performance.now() },
  });
  const baselines = ['due-day', 'seven-day-merge'].map((variant) => baselinePlan(snapshot, variant));
  const better = Math.min(...baselines.map((baseline) => baseline.cost.total));
  const saving = 1 - plan.cost.total / better;
  savings.push(saving);
  const line = {
    week,
    items: snapshot.items.length,
    cents: plan.cost.total,
    baselineCents: baselines.map((baseline) => baseline.cost.total),
    savingPercent: Number((100 * saving).toFixed(2)),
    faults: checkPlan(snapshot, plan).length,
    iterations: plan.iterations,
  };
  console.log(JSON.stringify(line));
  if (out) appendFileSync(out, `${JSON.stringify(line)}\n`);
}
const mean = savings.reduce((sum, saving) => sum + saving, 0) / savings.length;
console.log(
  JSON.stringify({
    weeks: savings.length,
    meanSavingPercent: Number((100 * mean).toFixed(2)),
    leastSavingPercent: Number((100 * Math.min(...savings)).toFixed(2)),
  }),
);
