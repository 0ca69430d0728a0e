/**
 * Planning benchmark. Usage, after a build:
 *   node tests/bench/planning.mjs [--seconds S] [--seed N] [--weeks 30] [--out results.jsonl]
 * Plans generated weeks and compares each with the better of both two-stage baselines; every plan is checked.
 */
import { appendFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { baselinePlan, checkPlan, planWeek } from '@deckround/planning';
import { generateSnapshot } from '../../libs/planning/dist/test-support/generate-snapshot.js';

const { values } = parseArgs({
  options: {
    seconds: { type: 'string', default: '2' },
    seed: { type: 'string', default: '1' },
    weeks: { type: 'string', default: '30' },
    out: { type: 'string' },
  },
});
const savings = [];
for (let week = 1; week <= Number(values.weeks); week++) {
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
    seed: Number(values.seed),
    stop: { seconds: Number(values.seconds), now: () => performance.now() },
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
  if (values.out) appendFileSync(values.out, `${JSON.stringify(line)}\n`);
}
const mean = savings.reduce((sum, saving) => sum + saving, 0) / savings.length;
console.log(
  JSON.stringify({
    weeks: savings.length,
    meanSavingPercent: Number((100 * mean).toFixed(2)),
    leastSavingPercent: Number((100 * Math.min(...savings)).toFixed(2)),
  }),
);
