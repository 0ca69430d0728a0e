import { describe, expect, it } from '@jest/globals';
import { dayNumber } from '../calendar.js';
import { simulatedFleet } from '../simulated-fleet.js';
import type { MachineForUsage, UsageSnapshot } from '../snapshot.js';
import { fitUsage } from './fit-usage.js';
import { forecastUsage } from './forecast-usage.js';

const fleet = simulatedFleet({ seed: 11, machines: 36, latitude: 42, from: '2012-01-01', asOf: '2014-07-01' });

/** The fleet with m0 slowed down to a fifth, as on a quiet site, until it moves to a site where the others run at full pace. */
function withMove(told: boolean): UsageSnapshot {
  const { snapshot } = fleet;
  const movedOn = dayNumber('2014-06-20');
  const start = snapshot.readings.find((each) => each.machineId === 'm0')!.hours;
  const readings = snapshot.readings.flatMap((each) => {
    if (each.machineId !== 'm0') return [each];
    if (dayNumber(each.readAt) > movedOn) return [];
    return [{ ...each, hours: Math.round((start + (each.hours - start) / 5) * 10) / 10 }];
  });
  const machines = snapshot.machines.map((machine): MachineForUsage => {
    if (machine.id !== 'm0') return machine;
    const former = { siteId: 'quiet', latitude: 42, longitude: 10, until: '2014-06-20' };
    return { ...machine, siteId: 's2', ...(told && { formerSites: [former] }) };
  });
  return { ...snapshot, machines, readings };
}

describe('a machine that has moved to another site', () => {
  const paceOf = (snapshot: UsageSnapshot) => forecastUsage(fitUsage(snapshot)).machines.get('m0')!.hoursPerWeek;

  it('is expected to run as machines do where it stands now', () => {
    const others = [12, 14, 16].map((m) => forecastUsage(fitUsage(fleet.snapshot)).machines.get(`m${m}`)!.hoursPerWeek);
    const there = others.reduce((a, b) => a + b, 0) / others.length;
    const told = paceOf(withMove(true));
    const untold = paceOf(withMove(false));
    expect(Math.abs(told - there)).toBeLessThan(0.5 * Math.abs(untold - there));
  });

  it('keeps its lifetime hours', () => {
    const known = (snapshot: UsageSnapshot) => fitUsage(snapshot).machines.get('m0')!.knownHours;
    expect(known(withMove(true))).toBe(known(withMove(false)));
  });

  it('never throws on moves in odd order, before the first reading or after the last', () => {
    const odd = ['2011-01-01', '2013-05-05', '2013-05-05', '2012-01-01', '2030-01-01'].map((until, n) => ({
      ...{ siteId: `o${n}`, latitude: null, longitude: null, until },
    }));
    const { snapshot } = fleet;
    const machines = snapshot.machines.map((machine) => ({ ...machine, formerSites: odd }));
    for (const forecast of forecastUsage(fitUsage({ ...snapshot, machines })).machines.values())
      expect(forecast.quantiles().p50.every(Number.isFinite)).toBe(true);
  });
});
