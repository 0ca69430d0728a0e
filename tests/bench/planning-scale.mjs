/** Long horizons and road calls. A process for each size, so that memory is its own. */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { checkPlan, planWeek, roadCallOptions, standingWeek, workedDates } from '@deckround/planning';
import { planInThread } from '@deckround/worker';
import { standingVisits } from '../../libs/planning/dist/test-support/a-standing-week.js';
import { generateSnapshot } from '../../libs/planning/dist/test-support/generate-snapshot.js';
import { benchOptions, numbersFrom, oneOf } from './bench-options.mjs';

const { sizes, seconds, threads, calls, weeks, one } = benchOptions(
  `bench:planning-scale [-- --sizes 50,100,200,500 --seconds S --threads 2 --calls 100 --weeks 0]
Sizes are sites: ten machines each, a technician for every 25 sites, four weeks. Planned as the worker does it, the search
in two threads or one. Then road calls into a week of 10 technicians: how long the options take, and whether promises move
unsaid. With --weeks N also N small generated weeks, every plan checked.`,
  { sizes: '50,100,200,500', seconds: 40, threads: '2', calls: 100, weeks: 0, one: 0 },
  (values) => ({
    ...values,
    sizes: numbersFrom(1, 'sizes', values.sizes),
    threads: Number(oneOf('threads', values.threads, ['1', '2'])),
  }),
);
const now = () => performance.now();

if (one > 0) {
  await oneSize(one);
} else {
  for (const size of sizes) {
    const { stdout, stderr, status } = spawnSync(process.execPath, [
      fileURLToPath(import.meta.url),
      ...['--one', size, '--seconds', seconds, '--threads', threads].map(String),
    ]);
    if (status !== 0) throw new Error(stderr.toString());
    process.stdout.write(stdout);
  }
  if (calls > 0) roadCalls(calls);
  if (weeks > 0) smallWeeks(weeks);
}

async function oneSize(sites) {
  const snapshot = generateSnapshot({
    ...{ seed: 1, sites, machinesPerSite: 10, items: sites * 12, technicians: Math.max(2, sites / 25) },
    ...{ days: 28, mustDos: true, promises: true, reachKm: 60 },
  });
  const begin = now();
  const options = { snapshotHash: '', seed: 1, seconds, threads };
  const plan = await planInThread(snapshot, options).plan;
  const planned = now();
  const faults = checkPlan(snapshot, plan).length;
  console.log(
    JSON.stringify({
      sites,
      ...{ items: snapshot.items.length, technicians: snapshot.technicians.length, days: 28 },
      threads: options.threads,
      planSeconds: Number(((planned - begin) / 1000).toFixed(1)),
      checkSeconds: Number(((now() - planned) / 1000).toFixed(1)),
      ...{ iterations: plan.iterations, cents: plan.cost.total, visits: plan.visits.length, faults },
      mustDosMissing: plan.leftOut.filter((row) => row.mustDo).length,
      peakMegabytes: Math.round(process.resourceUsage().maxRSS / 1024),
    }),
  );
}

function roadCalls(count) {
  const base = generateSnapshot({
    ...{ seed: 3, sites: 80, machinesPerSite: 6, items: 520, technicians: 10, days: 5, mustDos: true },
  });
  const visits = standingVisits(planWeek(base, { snapshotHash: '', seed: 1, stop: { iterations: 20_000 } }), 2);
  const times = [];
  let kinds = 0;
  let unsaid = 0;
  for (let call = 0; call < count; call++) {
    const machine = base.machines[(call * 37) % base.machines.length];
    const item = {
      ...{ id: 'call', machineId: machine.id, code: 'road-call', title: 'Road call', minutes: 45 + 15 * (call % 4) },
      ...{ skill: null, parts: [], consumables: [], preparations: [], releaseDate: null, mustDo: true },
      timingCostCents: [0, 15_000, 30_000, 45_000, 60_000],
      ...{ deferralCents: 90_000, dueP10: null, dueP50: null, dueP90: null, because: 'The customer called' },
    };
    const begin = now();
    const week = standingWeek({ ...base, items: [...base.items, item] }, visits);
    const dates = workedDates(week).slice(0, 3);
    const options = roadCallOptions(week, { itemId: 'call', dates, iterations: 3000, seed: 1 });
    times.push(now() - begin);
    kinds += options.length;
    for (const { draft, change } of options) {
      const said = new Set(change.visits.flatMap((visit) => (visit.breaksPromise ? [visit.visitId] : [])));
      const kept = new Set(draft.flat().flatMap((visit) => (visit.promise ? [visit.visitId] : [])));
      for (const visit of week.draft.flat())
        if (visit.promise && !kept.has(visit.visitId) && !said.has(visit.visitId)) unsaid++;
    }
  }
  times.sort((a, b) => a - b);
  console.log(
    JSON.stringify({
      ...{ roadCalls: count, technicians: 10, visits: visits.length },
      optionsEach: Number((kinds / count).toFixed(2)),
      medianMilliseconds: Math.round(times[count >> 1]),
      p95Milliseconds: Math.round(times[Math.ceil(0.95 * count) - 1]),
      promisesMovedUnsaid: unsaid,
    }),
  );
}

function smallWeeks(count) {
  let faults = 0;
  for (let seed = 1; seed <= count; seed++) {
    const snapshot = generateSnapshot({
      ...{ seed: 10_000 + seed, sites: 1 + (seed % 14), machinesPerSite: 1 + (seed % 7), items: (seed * 7) % 60 },
      ...{ technicians: 1 + (seed % 4), days: 1 + (seed % 8), promises: seed % 2 === 0, lunch: seed % 3 !== 0 },
      ...{ mustDos: seed % 5 === 0, reachKm: [0.001, 10, 35][seed % 3] },
      firstDate: ['2014-06-16', '2014-03-07', '2014-10-31'][seed % 3],
      ...(seed % 4 === 0 && { otherZone: 'America/Denver' }),
    });
    const plan = planWeek(snapshot, { snapshotHash: '', seed, stop: { iterations: 200 } });
    faults += checkPlan(snapshot, plan).length;
  }
  console.log(JSON.stringify({ generatedWeeks: count, checkerFaults: faults }));
}
