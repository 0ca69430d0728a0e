import type { PlanningInstance } from './instance.js';

/**
 * Visits a site may get on one day. Handed over one by one, a technician holds one machine, so as many visits as
 * machines may be down; when all machines of a visit stand idle, one visit (its menu holds the machine limit).
 * Stricter than the rule itself, which only forbids overlapping.
 */
export function visitsPerDay(site: { downRule: string; maxMachinesDown: number }): number {
  return site.downRule === 'one-by-one' ? site.maxMachinesDown : 1;
}

/** Where all machines of a visit stand idle, not more than the site allows. */
export function respectsMachines(
  instance: PlanningInstance,
  visit: { site: number; items: readonly number[] },
): boolean {
  const { downRule, maxMachinesDown } = instance.snapshot.sites[visit.site]!;
  if (downRule === 'one-by-one') return true;
  return new Set(visit.items.map((item) => instance.items[item]!.machine)).size <= maxMachinesDown;
}
