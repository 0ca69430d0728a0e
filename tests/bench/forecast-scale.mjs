// Time and memory of due forecasts by the number of machines: 100 readings each, every item of the starter catalogue,
// 60 days of usage. One process per size, so that memory is that size's own.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { DEFAULT_SHOP, starterClasses, upkeepSnapshot } from '@deckround/register';
import { forecastDue } from '@deckround/upkeep';
import { benchOptions, numbersFrom } from './bench-options.mjs';

const { sizes, one } = benchOptions(
  'bench:forecast-scale [-- --sizes 1000,2000,5000,10000]',
  { sizes: '1000,2000,5000,10000', one: 0 },
  (values) => ({ ...values, sizes: numbersFrom(1, 'sizes', values.sizes) }),
);
if (one === 0) {
  console.log('machines  items     processor s  s per 1,000  peak MB');
  for (const size of sizes) {
    const { stdout, stderr, status } = spawnSync(process.execPath, [
      fileURLToPath(import.meta.url),
      '--one',
      String(size),
    ]);
    if (status !== 0) throw new Error(stderr.toString());
    process.stdout.write(stdout);
  }
} else {
  measure(one);
}

function measure(count) {
  const snapshot = upkeepSnapshot(invented(count), { asOf: '2014-06-13', costFrom: '2014-06-16', costDays: 14 });
  const begin = process.cpuUsage();
  const forecasts = forecastDue(snapshot);
  const { user, system } = process.cpuUsage(begin);
  const seconds = (user + system) / 1e6;
  const peak = process.resourceUsage().maxRSS / 1024;
  console.log(
    [
      String(count).padStart(8),
      String(forecasts.length).padStart(9),
      seconds.toFixed(1).padStart(12),
      ((seconds / count) * 1000).toFixed(2).padStart(12),
      peak.toFixed(0).padStart(8),
    ].join(' '),
  );
}

/** Two seasons of readings about once a week, seed fixed; plumbing, not proof. */
function invented(count) {
  let state = 20140613;
  const random = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
  const sites = Array.from({ length: Math.ceil(count / 8) }, (_, s) => ({
    ...{ id: `S${s}`, customerId: 'C', name: `Site ${s}`, latitude: 41 + (s % 100) / 100, longitude: -94 },
    ...{ timeZone: 'America/Chicago', access: [], blackouts: [], setupMinutes: 10, visitFeeCents: 0 },
    ...{ maxMachinesDown: 1, downRule: 'one-by-one', preferredTechnicianId: null, preferenceCents: 0, notes: '' },
  }));
  const machines = [];
  const readings = [];
  const completions = [];
  const first = Date.UTC(2012, 5, 20);
  for (let m = 0; m < count; m++) {
    const id = `M${m}`;
    machines.push({
      ...{ id, siteId: `S${m >> 3}`, machineClass: 'zero-turn', maker: '', model: '', serial: id },
      ...{ inServiceOn: '2011-04-01', spindles: 3, severity: 'normal', notes: '' },
    });
    const pace = 1 + 2 * random();
    let hours = 200 + 400 * random();
    for (let k = 0; k < 100; k++) {
      const day = k * 7.2;
      const season = Math.max(0, 0.35 - Math.cos((2 * Math.PI * (day + 170)) / 365.25));
      hours += pace * season * 7.2 * (0.4 + random());
      const date = new Date(first + day * 86_400_000).toISOString().slice(0, 10);
      const shown = Math.round(hours * 10) / 10;
      readings.push({
        id: `${id}-${k}`,
        machineId: id,
        readAt: `${date}T15:00:00`,
        hours: shown,
        source: 'technician',
      });
      if (k === 70)
        for (const code of ['sharpen-blades', 'grease-spindles', 'change-engine-oil'])
          completions.push({
            machineId: id,
            code,
            slot: null,
            doneOn: date,
            meterHours: shown,
            outcome: 'done',
            part: null,
          });
    }
  }
  return {
    shop: { ...DEFAULT_SHOP },
    ...{ customers: [], sites, machines, readings, completions, meterChanges: [], moves: [], weather: [] },
    ...{ technicians: [], parts: [], classes: starterClasses(), overrides: [], findings: [], stopgaps: [] },
    ...{ roadCalls: [], bars: [], events: [], promises: [], previous: [] },
  };
}
