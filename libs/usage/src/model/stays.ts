import { dayNumber } from '../calendar.js';
import type { LifetimeReading } from '../cleaning/clean-readings.js';
import type { MachineForUsage } from '../snapshot.js';

/** A machine's time at one site: what it ran there tells of that site, and not of the next. */
export interface Stay {
  readonly machine: MachineForUsage;
  readonly line: readonly LifetimeReading[];
}

/**
 * Every machine's stays in order of time. A stay begins with the last reading of the one before, so that no hours are
 * lost; the hours in between count where the machine went.
 *
 * @returns the stays, and for each machine the index of its present one
 */
export function staysOf(
  machines: readonly MachineForUsage[],
  lines: readonly (readonly LifetimeReading[])[],
): { stays: Stay[]; present: Int32Array } {
  const stays: Stay[] = [];
  const present = Int32Array.from(machines, (machine, m) => {
    const line = lines[m]!;
    let from = 0;
    for (const { until, ...place } of machine.formerSites ?? []) {
      const end = dayNumber(until) + 1;
      let last = from;
      while (last < line.length && line[last]!.moment < end) last++;
      stays.push({ machine: { ...machine, ...place }, line: line.slice(from, last) });
      from = Math.max(from, last - 1);
    }
    return stays.push({ machine, line: from === 0 ? line : line.slice(from) }) - 1;
  });
  return { stays, present };
}
