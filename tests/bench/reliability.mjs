// Speed of re-fitting, coverage of the reported intervals, and the cost of the advice, on lives made by our own
// generator with known truth. `npm run bench:reliability`; figures stand in libs/reliability/README.md.
import {
  adviseAge,
  bestAge,
  costAboveBest,
  FLAT_PRIOR,
  fitExact,
  LifePosterior,
  profileQuantileInterval,
  profileShapeInterval,
  reportGroup,
  SCALE_SHARE,
  sampleOf,
  sampleOfColumns,
  WeibullLikelihood,
} from '@deckround/reliability';

const say = (line) => process.stdout.write(`${line}\n`);

/** Seeded uniform numbers (mulberry32). */
export function randomOf(seed) {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const life = (random, { shape, scale }) => scale * (-Math.log(1 - random())) ** (1 / shape);

/** Every part runs until it fails. */
function complete(random, truth, failures) {
  return sampleOf(Array.from({ length: failures }, () => ({ age: life(random, truth), outcome: 'failed' })));
}

/**
 * A shop: machines are taken on one after another at some age (what failed before was never seen), each slot is watched for
 * a while, failed parts are replaced and the new part is watched from new. Gathered until so many failures are on record.
 */
function shop(random, truth, failures) {
  const lives = [];
  let seen = 0;
  while (seen < failures) {
    const machine = { takenOn: truth.scale * 1.2 * random(), watched: truth.scale * (0.4 + 1.2 * random()) };
    let age = life(random, truth);
    // The part in place when the machine came: the first one of its slot to outlive that age.
    let fitted = 0;
    while (fitted + age < machine.takenOn) {
      fitted += age;
      age = life(random, truth);
    }
    const end = machine.takenOn + machine.watched;
    while (fitted < end && seen < failures) {
      const entry = Math.max(0, machine.takenOn - fitted);
      if (fitted + age <= end) {
        lives.push({ age, entry, outcome: 'failed' });
        seen += 1;
      } else lives.push({ age: end - fitted, entry, outcome: 'running' });
      fitted += age;
      age = life(random, truth);
    }
  }
  return sampleOf(lives);
}

function coverage(runs) {
  say(`Coverage of the 90 % intervals over ${runs} runs (conditional intervals; flat prior in ln scale and ln shape)`);
  const truths = [
    { shape: 1.2, scale: 900 },
    { shape: 2.5, scale: 600 },
  ];
  for (const [name, make] of [
    ['complete lives', complete],
    ['a shop (left truncation, right censoring)', shop],
  ]) {
    for (const truth of truths) {
      for (const failures of [8, 30, 200]) {
        const random = randomOf(1000 * failures + Math.round(10 * truth.shape));
        let [shape, scale, b10, done, plainShape, plainScale] = [0, 0, 0, 0, 0, 0];
        for (let run = 0; run < runs; run++) {
          const sample = make(random, truth, failures);
          const report = reportGroup(sample);
          if (!report.shape) continue;
          done += 1;
          const holds = ({ low, high }, value) => (low <= value && (high === null || value <= high) ? 1 : 0);
          shape += holds(report.shape, truth.shape);
          scale += holds(report.scale, truth.scale);
          plainShape += holds(profileShapeInterval(sample, report.fit, 0.9), truth.shape);
          plainScale += holds(profileQuantileInterval(sample, report.fit, SCALE_SHARE, 0.9), truth.scale);
          b10 += holds(report.b10, truth.scale * (-Math.log(0.9)) ** (1 / truth.shape));
        }
        const share = (count) => `${((100 * count) / done).toFixed(1)} %`;
        say(
          `  ${name}, shape ${truth.shape}, ${failures} failures: shape ${share(shape)}, scale ${share(scale)}, B10 ${share(b10)}; likelihood-ratio: shape ${share(plainShape)}, scale ${share(plainScale)}`,
        );
      }
    }
  }
}

function advice(runs) {
  say(
    `Cost of following the advised replacement age, above the true optimum, mean over ${runs} runs (planned 1, failed 5)`,
  );
  const costs = { planned: 1, failed: 5 };
  const prior = { shape: { median: 2, sdLog: 0.4 }, scale: { scale: 1000, worthFailures: 1 } };
  for (const truth of [
    { shape: 1.5, scale: 900 },
    { shape: 2.5, scale: 600 },
    { shape: 3.5, scale: 1500 },
  ]) {
    for (const failures of [3, 8, 30, 200]) {
      const random = randomOf(77 * failures + Math.round(10 * truth.shape));
      let [withPrior, alone, plugIn] = [0, 0, 0];
      for (let run = 0; run < runs; run++) {
        const sample = shop(random, truth, failures);
        const likelihood = new WeibullLikelihood(sample);
        withPrior += costAboveBest(truth, costs, adviseAge(LifePosterior.of(likelihood, prior), costs, null).age);
        alone += costAboveBest(truth, costs, adviseAge(LifePosterior.of(likelihood, FLAT_PRIOR), costs, null).age);
        const fit = fitExact(sample, likelihood);
        plugIn += costAboveBest(truth, costs, fit.ok ? bestAge(fit, costs).age : null);
      }
      const percent = (sum) => `${((100 * sum) / runs).toFixed(2)} %`;
      say(
        `  shape ${truth.shape}, ${failures} failures: ${percent(withPrior)} with the prior, ${percent(alone)} without, ${percent(plugIn)} from the fit alone`,
      );
    }
  }
}

function speed(groups, lives) {
  const random = randomOf(5);
  const samples = Array.from({ length: groups }, () => {
    const truth = { shape: 1.1 + 2 * random(), scale: 400 + 1200 * random() };
    const age = new Float64Array(lives);
    const entry = new Float64Array(lives);
    const kind = new Uint8Array(lives);
    for (let i = 0; i < lives; i++) {
      const end = life(random, truth);
      const watchedTo = truth.scale * (0.3 + random());
      kind[i] = end <= watchedTo ? 1 : 0;
      age[i] = Math.max(0.1, Math.round(10 * Math.min(end, watchedTo)) / 10);
      entry[i] = random() < 0.2 ? Math.min(age[i] - 0.1, Math.floor(age[i] * random())) : 0;
    }
    return sampleOfColumns({ age, entry, failedBy: age, kind, count: new Float64Array(lives).fill(1) });
  });
  const started = process.cpuUsage();
  const at = performance.now();
  let check = 0;
  for (const sample of samples) {
    const report = reportGroup(sample);
    check += report.scale.low;
  }
  const cpu = process.cpuUsage(started);
  say(
    `Re-fitting ${groups} groups × ${lives} lives with 90 % intervals of shape, scale and B10: ${((performance.now() - at) / 1000).toFixed(2)} s, processor ${((cpu.user + cpu.system) / 1e6).toFixed(2)} s (check ${Math.round(check)})`,
  );
}

const runs = Number(process.argv[2] ?? 1000);
speed(1000, 5000);
coverage(runs);
advice(Math.min(runs, 300));
