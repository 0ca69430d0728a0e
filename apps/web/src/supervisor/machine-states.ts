import type { DueItem, Machine } from '../data/types.js';
import type { MachineState } from '../design/state-shape.js';
import { addDays } from '../words/local-date.js';

/** Half a chance of being past its tolerance is called overdue. */
const OVERDUE_FROM = 0.5;
const SATURDAY = 6;

/** The worst that is known of a machine. */
export function stateOf(machine: Machine, due: readonly DueItem[]): MachineState {
  if (machine.condition === 'down') return 'down';
  if (machine.condition === 'at-shop') return 'in-our-hands';
  if (due.some((item) => item.kind === 'stopgap')) return 'stopgap';
  if (due.some((item) => (item.probabilityOverdue[0] ?? 0) >= OVERDUE_FROM)) return 'overdue';
  return due.length > 0 ? 'service-soon' : 'ready';
}

/** It can mow: overdue service and stopgaps slow nobody down, a fault and the shop's hands do. */
export const canMow = (state: MachineState): boolean => state !== 'down' && state !== 'in-our-hands';

/** The Saturday of this week; on a Sunday, that of the next. */
export function saturdayFrom(date: string): string {
  return addDays(date, (SATURDAY - new Date(`${date}T00:00:00Z`).getUTCDay() + 7) % 7);
}
