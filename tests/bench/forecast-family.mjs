// Forecasts and cleaning over a family of simulated registers: several climates, sizes, ways of reading, at several origins.
// Coverage counts a meter's half tenth; machines whose 80 % interval is narrower than 0.2 h say only that they stand still.
import { fitUsage, forecastUsage, pinballLoss } from '@deckround/usage';
import { benchOptions } from './bench-options.mjs';
import { family } from './simulated-registers/family.mjs';
import { inventRegister } from './simulated-registers/register.mjs';

const {
  rounds,
  seed,
  rows: isTold,
} = benchOptions(
  `bench:forecast-family [-- --rounds 3 --seed 1 --rows]
--rows also prints one JSON line per register, origin and distance.`,
  { rounds: 3, seed: 1, rows: false },
);
const AHEAD = [14, 30, 60];
const HALF_A_TENTH = 0.05;
const STANDS_STILL = 0.2;
const PROBABILITIES = [0.1, 0.25, 0.5, 0.75, 0.9];

/** One row per register, origin and distance. */
const rows = [];
const found = [];
for (const { options, origins } of family({ rounds, seed })) {
  const register = inventRegister(options);
  for (const { kind, asOf, readUntil } of origins) {
    const snapshot = register.snapshotAt(asOf, { readUntil: readUntil ?? asOf });
    const model = fitUsage(snapshot);
    const forecast = forecastUsage(model);
    for (const ahead of AHEAD) rows.push({ ...options, kind, asOf, ahead, ...judged(forecast, register, ahead) });
    if (asOf === origins.at(-1).asOf) found.push({ ...options, ...cleaned(model.cleaned, snapshot, register) });
  }
}

function judged(forecast, register, ahead) {
  let count = 0;
  let in50 = 0;
  let in80 = 0;
  let in95 = 0;
  let below = 0;
  let above = 0;
  let loss = 0;
  for (const [id, each] of forecast.machines) {
    if (each.usage.line.length === 0) continue;
    const day = each.originDay + ahead;
    const q = (p) => each.lifetimeHours(day, p);
    if (q(0.9) - q(0.1) < STANDS_STILL) continue;
    const { knownHours, line } = each.usage;
    // on the scale of the readings: what ran since the last one believed
    const hours = knownHours + register.truth(id, day) - register.trueWhenRead(line.at(-1).readingId);
    count++;
    const isIn = (low, high) => hours >= q(low) - HALF_A_TENTH && hours <= q(high) + HALF_A_TENTH;
    if (isIn(0.25, 0.75)) in50++;
    if (isIn(0.1, 0.9)) in80++;
    else if (hours < q(0.1)) below++;
    else above++;
    if (isIn(0.025, 0.975)) in95++;
    loss += PROBABILITIES.reduce((sum, p) => sum + pinballLoss(hours, q(p), p), 0) / PROBABILITIES.length;
  }
  return { count, in50, in80, in95, below, above, loss };
}

function cleaned({ setAside, proposedMeterChanges }, snapshot, register) {
  const aside = new Map(setAside.map((each) => [each.readingId, each.code]));
  const wrong = snapshot.readings.filter((each) => register.wrong.has(each.id));
  const lost = setAside.filter((each) => !register.wrong.has(each.readingId) && each.code !== 'duplicate');
  const proposed = new Set(proposedMeterChanges.map((each) => `${each.machineId} ${each.changedAt}`));
  const { shown, confirmed } = shownChanges(snapshot, register.untold);
  const isProposed = (change) => proposed.has(`${change.machineId} ${change.shownOn}`);
  return {
    readings: snapshot.readings.length,
    wrong: wrong.length,
    found: wrong.filter((each) => aside.has(each.id)).length,
    lost: lost.length,
    untold: shown.length,
    proposed: shown.filter(isProposed).length,
    confirmed: confirmed.length,
    confirmedProposed: confirmed.filter(isProposed).length,
    needless: proposedMeterChanges.length,
  };
}

/** Untold changes with a reading before and one after; and those that a second reading after confirms. */
function shownChanges({ readings }, untold) {
  const shown = untold.flatMap((change) => {
    const own = readings.filter((each) => each.machineId === change.machineId);
    const after = own.filter((each) => each.readAt.slice(0, 10) >= change.changedAt);
    if (after.length === 0 || after.length === own.length) return [];
    return [{ ...change, shownOn: after[0].readAt.slice(0, 10), after: after.length }];
  });
  return { shown, confirmed: shown.filter(({ after }) => after > 1) };
}

const sum = (list, key) => list.reduce((total, each) => total + each[key], 0);
const percent = (part, whole) => (whole > 0 ? `${((100 * part) / whole).toFixed(1)} %` : '–').padStart(8);
function table(title, keyOf) {
  console.log(
    `\n${title.padEnd(22)} ahead  fleets  machines     50 %     80 %     95 %    below    above  pinball h  80 % in 70..90 %`,
  );
  const keys = [...new Set(rows.map(keyOf))];
  for (const key of keys) {
    for (const ahead of AHEAD) {
      // each register and origin counts as much as another, whatever its size
      const own = rows.filter((each) => keyOf(each) === key && each.ahead === ahead && each.count >= 10);
      const mean = (field) =>
        percent(
          own.reduce((total, each) => total + each[field] / each.count, 0),
          own.length,
        );
      const inBand = own.filter(({ in80, count }) => in80 / count >= 0.7 && in80 / count <= 0.9).length;
      console.log(
        [
          key.padEnd(22),
          String(ahead).padStart(5),
          String(own.length).padStart(7),
          String(sum(own, 'count')).padStart(9),
          ...['in50', 'in80', 'in95', 'below', 'above'].map(mean),
          (sum(own, 'loss') / sum(own, 'count')).toFixed(2).padStart(10),
          percent(inBand, own.length),
        ].join(' '),
      );
    }
  }
}
table('all', () => 'all');
table('origin', (each) => each.kind);
table('climate', (each) => each.climate);
table('temper', (each) => each.temper);
table('machines', (each) => `${each.machines}`);
if (isTold) for (const each of rows) console.log(JSON.stringify(each));

console.log(
  '\nread           readings  wrong  found            good set aside  untold proposed, confirmed ones  proposals',
);
for (const group of [...new Set(found.map((each) => each.habit)), null]) {
  const own = found.filter((each) => group === null || each.habit === group);
  console.log(
    [
      (group ?? 'all').padEnd(12),
      String(sum(own, 'readings')).padStart(10),
      String(sum(own, 'wrong')).padStart(6),
      percent(sum(own, 'found'), sum(own, 'wrong')),
      ` ${own.filter((each) => each.found >= 0.95 * each.wrong).length} of ${own.length} ≥ 95 %`,
      `${((100 * sum(own, 'lost')) / sum(own, 'readings')).toFixed(3)} %`.padStart(12),
      `${sum(own, 'proposed')} of ${sum(own, 'untold')}, ${sum(own, 'confirmedProposed')} of ${sum(own, 'confirmed')}`.padStart(
        26,
      ),
      String(sum(own, 'needless')).padStart(12),
    ].join(' '),
  );
}
