import type { MachineForUsage, UsageSnapshot } from '@deckround/usage';
import type { Register, Site } from '../register.js';

export function usageSnapshot(register: Register, asOf: string, horizonDays: number): UsageSnapshot {
  const sites = new Map(register.sites.map((site) => [site.id, site]));
  return {
    version: 1,
    asOf,
    horizonDays,
    machines: register.machines.map((machine) => ({
      ...formerSites(register, sites, machine.id, asOf),
      id: machine.id,
      siteId: machine.siteId,
      machineClass: machine.machineClass,
      latitude: sites.get(machine.siteId)?.latitude ?? null,
      longitude: sites.get(machine.siteId)?.longitude ?? null,
      inServiceOn: machine.inServiceOn,
      meterRolloverHours: machine.meterRolloverHours ?? null,
    })),
    readings: [...register.readings],
    meterChanges: [...register.meterChanges],
    ...(register.weather.length > 0 && { weather: [...register.weather] }),
  };
}

function formerSites(
  { moves }: Register,
  sites: ReadonlyMap<string, Site>,
  machineId: string,
  asOf: string,
): Pick<MachineForUsage, 'formerSites'> {
  const own = moves
    .filter((move) => move.machineId === machineId && move.until <= asOf)
    .sort((a, b) => (a.until < b.until ? -1 : 1));
  if (own.length === 0) return {};
  return {
    formerSites: own.map(({ fromSiteId, until }) => ({
      siteId: fromSiteId,
      latitude: sites.get(fromSiteId)?.latitude ?? null,
      longitude: sites.get(fromSiteId)?.longitude ?? null,
      until,
    })),
  };
}
