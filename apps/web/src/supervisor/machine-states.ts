import { chanceOverdue, OVERDUE_FROM } from '@deckround/upkeep/chance-overdue';
import type { DueItem, Machine } from '../data/types.js';
import type { MachineState } from '../design/state-shape.js';
import { addDays } from '../words/local-date.js';

const SATURDAY = 6;

/** The worst that is known of a machine today. */
export function stateOf(machine: Machine, due: readonly DueItem[], today: string): MachineState {
  if (machine.condition === 'down') return 'down';
  if (machine.condition === 'at-shop') return 'in-our-hands';
  if (due.some((item) => item.kind === 'stopgap')) return 'stopgap';
  if (due.some((item) => chanceOverdue(item, today) >= OVERDUE_FROM)) return 'overdue';
  return due.length > 0 ? 'service-soon' : 'ready';
}

/** The day on which the first of its stopgaps is as likely as not at its limit; null = none, or nobody can tell. */
export function stopgapEnd(due: readonly DueItem[]): string | null {
  const ends = due.flatMap((item) => (item.kind === 'stopgap' && item.p50 !== null ? [item.p50] : []));
  return ends.sort()[0] ?? null;
}

/** The day beside the word of a state, of what makes it so: since when it is overdue, until when its stopgap holds. */
export function dayOfState(state: MachineState, due: readonly DueItem[], today: string): string | null {
  if (state === 'stopgap') return stopgapEnd(due);
  if (state !== 'overdue' && state !== 'service-soon') return null;
  const told = state === 'service-soon' ? due : due.filter((item) => chanceOverdue(item, today) >= OVERDUE_FROM);
  return told.flatMap(({ p50 }) => p50 ?? []).sort()[0] ?? null;
}

/**
 * It can mow until a day: overdue service slows nobody down; a fault, the shop's hands and a stopgap that ends by then do.
 */
export function canMowUntil(day: string, state: MachineState, due: readonly DueItem[]): boolean {
  const end = stopgapEnd(due);
  return state !== 'down' && state !== 'in-our-hands' && (end === null || end > day);
}

/** The Saturday of this week; on a Sunday, that of the next. */
export function saturdayFrom(date: string): string {
  return addDays(date, (SATURDAY - new Date(`${date}T00:00:00Z`).getUTCDay() + 7) % 7);
}
