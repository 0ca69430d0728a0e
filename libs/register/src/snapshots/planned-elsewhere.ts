import { addDays } from '../local-date.js';
import type { Part, Register } from '../register.js';
import { machineItems, stopgapItemId } from './machine-items.js';
import type { PlanningSpan } from './planning-snapshot.js';

/**
 * Work that stands in a visit on another day, from today on, than those to be planned; and that day. It is done there: a
 * week planned while this one still runs must not send anybody for it again. What is promised for the days to be planned,
 * or stands on a day under way among them, is theirs, wherever else it may stand.
 */
export function plannedElsewhere(
  register: Register,
  { asOf, firstDate, days, soonest }: PlanningSpan,
): Map<string, string> {
  const lastDate = addDays(firstDate, days - 1);
  const isPlannedNow = (date: string) => date >= firstDate && date <= lastDate;
  const elsewhere = new Map<string, string>();
  for (const { date, itemIds } of [...register.promises, ...register.previous]) {
    if (date < asOf || isPlannedNow(date)) continue;
    for (const itemId of itemIds) {
      const known = elsewhere.get(itemId);
      if (known === undefined || date < known) elsewhere.set(itemId, date);
    }
  }
  const underWay = soonest === undefined ? [] : register.previous.filter((visit) => visit.date === asOf);
  for (const { date, itemIds } of [...register.promises, ...underWay]) {
    if (isPlannedNow(date)) for (const itemId of itemIds) elsewhere.delete(itemId);
  }
  return elsewhere;
}

/** Parts as the visits before the days to be planned leave them. */
export function partsLeft(
  register: Register,
  elsewhere: ReadonlyMap<string, string>,
  { firstDate }: PlanningSpan,
): Part[] {
  const used = new Map<string, number>();
  const use = (itemId: string, parts: readonly { partId: string; quantity: number }[]) => {
    const date = elsewhere.get(itemId);
    if (date === undefined || date >= firstDate) return;
    for (const { partId, quantity } of parts) used.set(partId, (used.get(partId) ?? 0) + quantity);
  };
  for (const { id, parts } of machineItems(register)) use(id, parts);
  for (const { id, partId, partQuantity } of register.stopgaps) {
    if (partId !== null) use(stopgapItemId(id), [{ partId, quantity: partQuantity }]);
  }
  return register.parts.map((part) => ({ ...part, onHand: Math.max(0, part.onHand - (used.get(part.id) ?? 0)) }));
}
