import type { UsageSnapshot } from '@deckround/usage';
import type { Register } from '../register.js';

export function usageSnapshot(register: Register, asOf: string, horizonDays: number): UsageSnapshot {
  const sites = new Map(register.sites.map((site) => [site.id, site]));
  return {
    version: 1,
    asOf,
    horizonDays,
    machines: register.machines.map((machine) => ({
      id: machine.id,
      siteId: machine.siteId,
      machineClass: machine.machineClass,
      latitude: sites.get(machine.siteId)?.latitude ?? null,
      longitude: sites.get(machine.siteId)?.longitude ?? null,
      inServiceOn: machine.inServiceOn,
    })),
    readings: [...register.readings],
    meterChanges: [...register.meterChanges],
  };
}
