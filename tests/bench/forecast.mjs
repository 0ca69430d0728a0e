// Forecasts held against the true hours of a simulated register, next to three baselines in the same run.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import {
  BASELINES,
  baselinesOf,
  cleanReadings,
  dateOfDay,
  dayNumber,
  fitUsage,
  forecastUsage,
  pinballLoss,
} from '@deckround/usage';
import { parse } from 'csv-parse/sync';
import { benchOptions } from './bench-options.mjs';

const args = benchOptions(
  `bench:forecast -- --register DIR --truth truth.csv[.gz] [--as-of YYYY-MM-DD]
Truth: machine_id,date,true_hours (lifetime hours at the end of the day).`,
  { register: undefined, truth: undefined, 'as-of': undefined },
  (values) => {
    if (!values.register || !values.truth) throw new Error('Name a register and its truth.');
    return values;
  },
);
const table = (path) => {
  const bytes = readFileSync(path);
  return parse(path.endsWith('.gz') ? gunzipSync(bytes) : bytes, { columns: true });
};
const optional = (name) => (existsSync(join(args.register, name)) ? table(join(args.register, name)) : []);

const sites = new Map(optional('sites.csv').map((site) => [site.site_id, site]));
const degrees = (text) => (text === undefined || text === '' ? null : Number(text));
const machines = table(join(args.register, 'machines.csv')).map((row) => ({
  id: row.machine_id,
  siteId: row.site_id,
  machineClass: row.class,
  latitude: degrees(sites.get(row.site_id)?.latitude),
  longitude: degrees(sites.get(row.site_id)?.longitude),
  inServiceOn: row.in_service_on || null,
}));
const all = table(join(args.register, 'readings.csv')).map((row, k) => ({
  id: String(k),
  machineId: row.machine_id,
  readAt: row.read_at,
  hours: Number(row.hours),
  source: row.source,
}));
const asOf =
  args['as-of'] ??
  all
    .map((each) => each.readAt.slice(0, 10))
    .sort()
    .at(-1);
const readings = all.filter((each) => each.readAt.slice(0, 10) <= asOf);
const meterChanges = optional('meter_changes.csv')
  .filter((row) => row.changed_at <= asOf)
  .map((row) => ({
    machineId: row.machine_id,
    changedAt: row.changed_at,
    oldHours: Number(row.old_hours),
    newHours: Number(row.new_hours),
  }));
const moves = optional('machine_moves.csv').filter((row) => row.until <= asOf);
for (const machine of machines) {
  const own = moves.filter((row) => row.machine_id === machine.id).sort((a, b) => (a.until < b.until ? -1 : 1));
  if (own.length === 0) continue;
  machine.formerSites = own.map((row) => ({
    siteId: row.from_site_id,
    latitude: degrees(sites.get(row.from_site_id)?.latitude),
    longitude: degrees(sites.get(row.from_site_id)?.longitude),
    until: row.until,
  }));
}
const weather = optional('weather.csv')
  .filter((row) => row.date <= asOf)
  .map((row) => ({
    siteId: row.site_id || null,
    date: row.date,
    lowC: Number(row.low_c),
    highC: Number(row.high_c),
    rainMm: Number(row.rain_mm),
  }));
const truth = new Map();
for (const row of table(args.truth)) {
  if (!truth.has(row.machine_id)) truth.set(row.machine_id, new Map());
  truth.get(row.machine_id).set(row.date, Number(row.true_hours));
}

const started = performance.now();
const model = fitUsage({
  ...{ version: 1, asOf, horizonDays: 90, machines, readings, meterChanges },
  ...(weather.length > 0 && { weather }),
});
const forecast = forecastUsage(model);
for (const each of forecast.machines.values()) each.quantiles();
const seconds = (performance.now() - started) / 1000;
console.log(
  `as of ${asOf}: ${machines.length} machines, ${readings.length} readings, ${(machines.length / seconds).toFixed(0)} machines per second`,
);

const errors = optional('errors.csv').filter((row) => row.read_at.slice(0, 10) <= asOf);
if (errors.length > 0) {
  const { setAside, proposedMeterChanges } = cleanReadings(readings, meterChanges, { asOf });
  const aside = new Map(setAside.map((each) => [each.readingId, each.code]));
  const wrong = new Map(errors.map((row) => [`${row.machine_id} ${row.read_at}`, row.error]));
  const tally = new Map();
  let lost = 0;
  let repeated = 0;
  for (const each of readings) {
    const error = wrong.get(`${each.machineId} ${each.readAt}`);
    const code = aside.get(each.id);
    if (error) {
      const row = tally.get(error) ?? tally.set(error, { found: 0, all: 0 }).get(error);
      row.all++;
      if (code) row.found++;
    } else if (code === 'duplicate') repeated++;
    else if (code) lost++;
  }
  for (const [error, { found, all: count }] of tally) console.log(`${error}: ${found} of ${count} found`);
  const untold = errors.filter((row) => row.error.startsWith('untold'));
  const proposed = untold.filter((row) =>
    proposedMeterChanges.some(
      (change) =>
        change.machineId === row.machine_id && Math.abs(dayNumber(change.changedAt) - dayNumber(row.read_at)) < 90,
    ),
  );
  console.log(
    `untold meter changes: ${proposed.length} of ${untold.length} proposed, ${proposedMeterChanges.length} proposals in all`,
  );
  console.log(`good readings set aside: ${lost} of ${readings.length}; exact repeats set aside besides: ${repeated}`);
}

const PROBABILITIES = [0.1, 0.25, 0.5, 0.75, 0.9];
const P95 = [0.025, 0.975];
const origin = dayNumber(asOf);
console.log('days ahead  machines  cover 50 %  80 %  95 %  pinball h  last two  whole life  last year  against best');
for (const ahead of [7, 14, 30, 60, 90]) {
  let judged = 0;
  const inside = [0, 0, 0];
  const loss = [0, 0, 0, 0];
  for (const [id, each] of forecast.machines) {
    const day = origin + ahead;
    const hours = truth.get(id)?.get(dateOfDay(day));
    if (hours === undefined || each.usage.line.length === 0) continue;
    judged++;
    const q = PROBABILITIES.map((p) => each.lifetimeHours(day, p));
    const [low, high] = P95.map((p) => each.lifetimeHours(day, p));
    if (hours >= q[1] && hours <= q[3]) inside[0]++;
    if (hours >= q[0] && hours <= q[4]) inside[1]++;
    if (hours >= low && hours <= high) inside[2]++;
    const rules = baselinesOf(each, day);
    const points = BASELINES.map((name) => rules[name]);
    PROBABILITIES.forEach((p, k) => {
      loss[0] += pinballLoss(hours, q[k], p) / PROBABILITIES.length;
      points.forEach((point, b) => {
        loss[b + 1] += pinballLoss(hours, point, p) / PROBABILITIES.length;
      });
    });
  }
  const [own, ...baselines] = loss.map((sum) => sum / judged);
  const share = (n) => `${((100 * n) / judged).toFixed(1)} %`.padStart(7);
  const gain = `${(100 * (1 - own / Math.min(...baselines))).toFixed(1)} % below`;
  console.log(
    [
      String(ahead).padStart(10),
      String(judged).padStart(9),
      ...inside.map(share),
      own.toFixed(2),
      ...baselines.map((b) => b.toFixed(2)),
      gain,
    ].join('  '),
  );
}
