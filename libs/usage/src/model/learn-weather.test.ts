import { describe, expect, it } from '@jest/globals';
import { dateOfDay, dayNumber } from '../calendar.js';
import { pinballLoss } from '../scores/pinball.js';
import { mulberry32 } from '../simulated-fleet.js';
import type { Reading, UsageSnapshot, WeatherDay } from '../snapshot.js';
import { fitUsage } from './fit-usage.js';
import { forecastUsage } from './forecast-usage.js';

const START = dayNumber('2011-01-01');
const END = dayNumber('2014-12-31');

/** Made-up weather: a warm summer, spells that last for weeks, rain every third day or so. */
function invented(seed: number): WeatherDay[] {
  const random = mulberry32(seed);
  let spell = 0;
  let wet = 0;
  return Array.from({ length: END - START + 1 }, (_, d) => {
    spell = 0.95 * spell + 1.2 * (random() - 0.5) * 2;
    wet = 0.93 * wet + 0.4 * (random() - 0.5) * 2;
    const usual = 12 - 14 * Math.cos((2 * Math.PI * d) / 365.25);
    const rains = random() < 0.33 + 0.2 * Math.tanh(wet);
    const mean = usual + spell;
    return {
      siteId: null,
      date: dateOfDay(START + d),
      lowC: mean - 5,
      highC: mean + 5,
      rainMm: rains ? 3 + 12 * random() : 0,
    };
  });
}

/** A fleet whose grass answers to the last month's rain, and which stays in on rainy days; or one that does not care. */
function fleetUnder(weather: readonly WeatherDay[], seed: number, cares: boolean) {
  const random = mulberry32(seed);
  const machines = Array.from({ length: 40 }, (_, m) => ({
    id: `m${m}`,
    siteId: `s${m % 8}`,
    machineClass: 'zero-turn',
    latitude: 42,
    longitude: -93,
    inServiceOn: null,
  }));
  const readings: Reading[] = [];
  const answers = weather.map(({ rainMm }, d) => {
    const month = weather.slice(Math.max(0, d - 29), d + 1).reduce((sum, each) => sum + each.rainMm, 0);
    return cares ? Math.exp(0.9 * (Math.log1p(month) - Math.log1p(85))) * (rainMm >= 2 ? 0.3 : 1.3) : 1;
  });
  const paths = machines.map((machine) => {
    const pace = 1.5 + 2 * random();
    let hours = 300 * random();
    let next = START + Math.floor(random() * 10);
    return weather.map(({ date }, d) => {
      const season = Math.max(0, 0.4 - Math.cos((2 * Math.PI * (d - 15)) / 365.25));
      hours += pace * season * answers[d]! * (0.5 + random());
      const day = START + d;
      if (day >= next) {
        next = day + 6 + Math.floor(random() * 9);
        const shown = Math.round(hours * 10) / 10;
        readings.push({
          id: `${machine.id}-${day}`,
          machineId: machine.id,
          readAt: `${date}T17:00:00`,
          hours: shown,
          source: 'x',
        });
      }
      return hours;
    });
  });
  const truth = (m: number, day: number) => paths[m]![day - START]!;
  return { machines, readings, truth };
}

function lossAt(asOf: string, snapshot: UsageSnapshot, truth: (m: number, day: number) => number): number {
  const weather = snapshot.weather?.filter((each) => each.date <= asOf);
  const readings = snapshot.readings.filter((each) => each.readAt.slice(0, 10) <= asOf);
  const model = fitUsage({ ...snapshot, asOf, readings, ...(weather && { weather }) });
  const origin = dayNumber(asOf);
  let loss = 0;
  for (const [id, forecast] of forecastUsage(model).machines) {
    for (const p of [0.1, 0.25, 0.5, 0.75, 0.9])
      loss += pinballLoss(p, forecast.lifetimeHours(origin + 14, p), truth(+id.slice(1), origin + 14));
  }
  return loss;
}

const ORIGINS = ['2013-05-20', '2013-07-15', '2014-06-16', '2014-08-11'];

describe('weather as an explanation of hours', () => {
  const weather = invented(7);

  it('makes forecasts better where mowing follows it', () => {
    const { machines, readings, truth } = fleetUnder(weather, 3, true);
    const snapshot: UsageSnapshot = {
      version: 1,
      asOf: '2014-12-31',
      horizonDays: 30,
      machines,
      readings,
      meterChanges: [],
    };
    const total = (with_: boolean) =>
      ORIGINS.reduce((sum, asOf) => sum + lossAt(asOf, with_ ? { ...snapshot, weather } : snapshot, truth), 0);
    expect(total(true)).toBeLessThan(0.9 * total(false));
    const { weather: learned } = fitUsage({ ...snapshot, weather }).machines.get('m0')!.clock;
    // wet months make it grow, rain on the day keeps it in
    expect(learned!.coefficients[1]).toBeGreaterThan(0.1);
    expect(learned!.coefficients[2]).toBeLessThan(-0.1);
  });

  it('hardly moves forecasts where mowing does not care', () => {
    const { machines, readings } = fleetUnder(weather, 4, false);
    const snapshot: UsageSnapshot = {
      version: 1,
      asOf: '2014-08-11',
      horizonDays: 30,
      machines,
      readings: readings.filter((each) => each.readAt < '2014-08-12'),
      meterChanges: [],
    };
    const past = weather.filter((each) => each.date <= '2014-08-11');
    const { clock } = fitUsage({ ...snapshot, weather: past }).machines.get('m0')!;
    for (const beta of clock.weather!.coefficients) expect(Math.abs(beta)).toBeLessThan(0.05);
  });

  it('is set aside where too few days of it are known', () => {
    const { machines, readings } = fleetUnder(weather, 4, true);
    const snapshot: UsageSnapshot = {
      version: 1,
      asOf: '2014-12-31',
      horizonDays: 30,
      machines,
      readings,
      meterChanges: [],
    };
    const short = fitUsage({ ...snapshot, weather: weather.slice(0, 100) });
    expect(short.machines.get('m0')!.clock.weather).toBeNull();
  });
});
