// Forecasts and cleaning on fleet-a: 48 sites, 359 machines, 24,440 readings, simulated from real daily weather, with the
// true lifetime hours of each day and a list of the readings that were corrupted. The data are not part of this
// repository: DECKROUND_SHARED names the folder that holds bench/fleet-a, else ../shared beside the root is looked at;
// where neither is there, these tests are skipped. All figures are of one origin, the day of the last reading, under
// one weather: the bounds are those that the house asks of itself, not of chance.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
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
  type UsageForecast,
  type UsageSnapshot,
} from '@deckround/usage';
import { beforeAll, describe, expect, test } from '@jest/globals';
import { parse } from 'csv-parse/sync';

const shared = process.env.DECKROUND_SHARED || fileURLToPath(new URL('../../../shared', import.meta.url));
const folder = join(shared, 'bench', 'fleet-a');
const isThere = existsSync(join(folder, 'readings.csv'));
if (!isThere)
  console.info(`fleet-a is not at ${folder}: skipped. Set DECKROUND_SHARED to the folder that holds bench/.`);

type Row = Record<string, string>;
function table(name: string): Row[] {
  const bytes = readFileSync(join(folder, name));
  return parse(name.endsWith('.gz') ? gunzipSync(bytes) : bytes, { columns: true }) as Row[];
}

function readFleet(): UsageSnapshot {
  const sites = new Map(table('sites.csv').map((site) => [site.site_id, site]));
  const readings = table('readings.csv').map((row, k) => ({
    id: String(k),
    machineId: row.machine_id!,
    readAt: row.read_at!,
    hours: Number(row.hours),
    source: row.source!,
  }));
  return {
    version: 1,
    asOf: readings
      .map((each) => each.readAt.slice(0, 10))
      .sort()
      .at(-1)!,
    horizonDays: 60,
    machines: table('machines.csv').map((row) => ({
      id: row.machine_id!,
      siteId: row.site_id!,
      machineClass: row.class!,
      latitude: Number(sites.get(row.site_id)!.latitude),
      longitude: Number(sites.get(row.site_id)!.longitude),
      inServiceOn: row.in_service_on || null,
    })),
    readings,
    meterChanges: table('meter_changes.csv').map((row) => ({
      machineId: row.machine_id!,
      changedAt: row.changed_at!,
      oldHours: Number(row.old_hours),
      newHours: Number(row.new_hours),
    })),
  };
}

(isThere ? describe : describe.skip)('fleet-a', () => {
  let fleet: UsageSnapshot;
  beforeAll(() => {
    fleet = readFleet();
  });

  test('nineteen of twenty corrupted readings are found, and good ones left alone', () => {
    const errors = table('errors.csv');
    const { setAside, proposedMeterChanges } = cleanReadings(fleet.readings, fleet.meterChanges, { asOf: fleet.asOf });
    const codes = new Map(setAside.map((each) => [each.readingId, each.code]));
    const untold = errors.filter((row) => row.error!.startsWith('untold'));
    const corrupted = new Set(
      errors.filter((row) => !untold.includes(row)).map((row) => `${row.machine_id} ${row.read_at}`),
    );
    const key = (each: { machineId: string; readAt: string }) => `${each.machineId} ${each.readAt}`;
    const found = fleet.readings.filter((each) => corrupted.has(key(each)) && codes.has(each.id));
    expect(corrupted.size).toBe(132);
    expect(found.length / corrupted.size).toBeGreaterThanOrEqual(0.95);
    // The same hours reported twice for the same minute lose nothing when one of the two is set aside: not counted.
    const lost = fleet.readings.filter(
      (each) => !corrupted.has(key(each)) && codes.has(each.id) && codes.get(each.id) !== 'duplicate',
    );
    expect(lost.length / fleet.readings.length).toBeLessThanOrEqual(0.001);
    const proposed = untold.filter((row) =>
      proposedMeterChanges.some(
        (change) =>
          change.machineId === row.machine_id && Math.abs(dayNumber(change.changedAt) - dayNumber(row.read_at!)) < 90,
      ),
    );
    expect(untold).toHaveLength(7);
    expect(proposed.length).toBeGreaterThanOrEqual(5);
  });

  describe('forecast as of its last reading', () => {
    let forecast: UsageForecast;
    const truth = new Map<string, number>();
    beforeAll(() => {
      forecast = forecastUsage(fitUsage(fleet));
      for (const row of table('truth.csv.gz')) truth.set(`${row.machine_id} ${row.date}`, Number(row.true_hours));
    });

    function outcomes(daysAhead: number) {
      const day = dayNumber(fleet.asOf) + daysAhead;
      return [...forecast.machines].flatMap(([id, machine]) => {
        const hours = truth.get(`${id} ${dateOfDay(day)}`);
        return hours === undefined || machine.usage.line.length === 0 ? [] : [{ machine, day, hours }];
      });
    }

    test.each([14, 30, 60])('%i days ahead the 50 %% and 80 %% intervals hold what they state', (daysAhead) => {
      const all = outcomes(daysAhead);
      const share = (low: number, high: number) =>
        all.filter(
          ({ machine, day, hours }) =>
            hours >= machine.lifetimeHours(day, low) && hours <= machine.lifetimeHours(day, high),
        ).length / all.length;
      expect(all).toHaveLength(359);
      expect(share(0.1, 0.9)).toBeGreaterThanOrEqual(0.76);
      expect(share(0.1, 0.9)).toBeLessThanOrEqual(0.84);
      expect(share(0.25, 0.75)).toBeGreaterThanOrEqual(0.45);
      expect(share(0.25, 0.75)).toBeLessThanOrEqual(0.55);
    });

    test('30 days ahead the loss is a quarter below that of the best rule of thumb', () => {
      const probabilities = [0.1, 0.25, 0.5, 0.75, 0.9];
      const all = outcomes(30);
      const loss = (quantile: (each: (typeof all)[number], p: number) => number) =>
        all.reduce(
          (sum, each) =>
            sum + probabilities.reduce((part, p) => part + pinballLoss(each.hours, quantile(each, p), p), 0),
          0,
        );
      const own = loss(({ machine, day }, p) => machine.lifetimeHours(day, p));
      const best = Math.min(...BASELINES.map((rule) => loss(({ machine, day }) => baselinesOf(machine, day)![rule])));
      expect(own / best).toBeLessThanOrEqual(0.75);
    });
  });
});
