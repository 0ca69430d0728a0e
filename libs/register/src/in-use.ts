import type { Register } from './register.js';

/**
 * The register without the machines retired by a date, and without what hangs on them. Visits may still hold work of
 * theirs, which no forecast and no plan knows any more.
 */
export function inUse(register: Register, date: string): Register {
  const machines = register.machines.filter(({ retiredOn }) => !retiredOn || retiredOn > date);
  if (machines.length === register.machines.length) return register;
  const ids = new Set(machines.map((machine) => machine.id));
  const ofThem = <T extends { readonly machineId: string }>(rows: readonly T[]) =>
    rows.filter((row) => ids.has(row.machineId));
  return {
    ...register,
    machines,
    readings: ofThem(register.readings),
    meterChanges: ofThem(register.meterChanges),
    moves: ofThem(register.moves),
    completions: ofThem(register.completions),
    overrides: ofThem(register.overrides),
    findings: ofThem(register.findings),
    stopgaps: ofThem(register.stopgaps),
    roadCalls: ofThem(register.roadCalls),
  };
}
