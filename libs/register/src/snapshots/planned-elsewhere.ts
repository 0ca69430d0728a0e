import type { PlannedWork } from '@deckround/upkeep';
import { addDays } from '../local-date.js';
import type { Part, Register } from '../register.js';
import { machineItems, stopgapItemId } from './machine-items.js';
import { countedOn } from './parts-in-turn.js';
import type { PlanningSpan } from './planning-span.js';

/** Days to be planned, and the day from which on visits are still to come. */
type Days = Pick<PlanningSpan, 'asOf' | 'firstDate' | 'days'>;

/**
 * Work that other visits do than those to be planned. A week planned while this one still runs must not send anybody for
 * it again.
 */
export interface PlannedElsewhere {
  /** What stands in visits from today on, before the first of the days, and its last date there. Counts as done then. */
  readonly before: ReadonlyMap<string, string>;
  /**
   * What only visits after the last day do. What stands in visits of the days themselves too is theirs, and those later
   * visits do it once more.
   */
  readonly after: ReadonlySet<string>;
}

export function plannedElsewhere(register: Register, { asOf, firstDate, days }: Days): PlannedElsewhere {
  const lastDate = addDays(firstDate, days - 1);
  const before = new Map<string, string>();
  const after = new Set<string>();
  const visits = standingFrom(register, asOf);
  for (const { date, itemIds } of visits) {
    for (const itemId of itemIds) {
      if (date > lastDate) after.add(itemId);
      else if (date < firstDate && date > (before.get(itemId) ?? '')) before.set(itemId, date);
    }
  }
  for (const { date, itemIds } of visits) {
    if (date >= firstDate && date <= lastDate) for (const itemId of itemIds) after.delete(itemId);
  }
  return { before, after };
}

/** Service items done before the days to be planned, as the due forecast wants them: a plan asks for the time after. */
export function plannedWork(register: Register, span: Days): PlannedWork[] {
  const { before } = plannedElsewhere(register, span);
  return machineItems(register).flatMap(({ id, machine, item, slot }) => {
    const on = before.get(id);
    return on === undefined ? [] : [{ machineId: machine.id, code: item.code, slot, on }];
  });
}

/**
 * Parts as the visits before the days to be planned leave them: taken from the shelf, and where it holds too little from
 * what comes before those days, the earliest first. What is overdue is not counted on. What the visits lack even so is theirs to tell.
 */
export function partsLeft(register: Register, { asOf, firstDate }: Days, needed: PartsNeeded): Part[] {
  const used = new Map<string, number>();
  for (const { date, itemIds } of standingFrom(register, asOf)) {
    if (date >= firstDate) continue;
    for (const { partId, quantity } of itemIds.flatMap((itemId) => needed.get(itemId) ?? [])) {
      used.set(partId, (used.get(partId) ?? 0) + quantity);
    }
  }
  return countedOn(register.parts, asOf).map((part) => {
    const onHand = Math.max(0, part.onHand - (used.get(part.id) ?? 0));
    let short = Math.max(0, (used.get(part.id) ?? 0) - part.onHand);
    if (short === 0) return { ...part, onHand };
    const left = new Map(part.arrivals.map((arrival) => [arrival, arrival.quantity]));
    for (const arrival of part.arrivals.toSorted((a, b) => (a.date < b.date ? -1 : 1))) {
      const taken = arrival.date < firstDate ? Math.min(short, arrival.quantity) : 0;
      left.set(arrival, arrival.quantity - taken);
      short -= taken;
    }
    const arrivals = [...left].flatMap(([{ date }, quantity]) => (quantity > 0 ? [{ date, quantity }] : []));
    return { ...part, onHand, arrivals };
  });
}

/** Parts that a visit has to have on its day. */
export interface PartsOfVisit {
  readonly id: string;
  readonly date: string;
  readonly parts: readonly PartNeed[];
}

/** What visits after the days to be planned need, of those that customers were promised or that are held fast. */
export function promisedLater(register: Register, { firstDate, days }: Days, needed: PartsNeeded): PartsOfVisit[] {
  const lastDate = addDays(firstDate, days - 1);
  return register.promises
    .filter(({ date }) => date > lastDate)
    .map(({ visitId, date, itemIds }) => {
      const parts = itemIds.flatMap((itemId) => needed.get(itemId) ?? []);
      return { id: visitId, date, parts };
    });
}

type PartNeed = { readonly partId: string; readonly quantity: number };

/** What each piece of work needs, by item. */
export type PartsNeeded = ReadonlyMap<string, readonly PartNeed[]>;

export function partsNeeded(register: Register): PartsNeeded {
  const needed = new Map<string, readonly PartNeed[]>();
  for (const { id, parts } of machineItems(register)) needed.set(id, parts);
  for (const { id, partId, partQuantity } of register.stopgaps) {
    if (partId !== null) needed.set(stopgapItemId(id), [{ partId, quantity: partQuantity }]);
  }
  return needed;
}

/** Visits that stand on a day or after it. */
export function standingFrom({ promises, previous }: Register, asOf: string) {
  return [...promises, ...previous].filter((visit) => visit.date >= asOf);
}
