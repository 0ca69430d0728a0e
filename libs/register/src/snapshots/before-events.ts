import type { PlanningItem } from '@deckround/planning';
import { addDays } from '../local-date.js';
import type { Register, SiteEvent } from '../register.js';
import type { PlanningSpan } from './planning-span.js';

/** The next event that an item stands in the way of, and the last day to do it before. */
export interface EventAhead {
  readonly event: SiteEvent;
  readonly latestDate: string;
}

/**
 * What stands in the way of mowing at an event has to be done before it: calls, stopgaps, and items that are as likely
 * as not past their tolerance by then.
 */
export function eventsAhead(register: Register, span: PlanningSpan): (item: PlanningItem) => EventAhead | null {
  const lastDate = addDays(span.firstDate, span.days - 1);
  const siteOf = new Map(register.machines.map((machine) => [machine.id, machine.siteId]));
  const next = new Map<string, SiteEvent>();
  for (const event of register.events) {
    if (event.date < span.asOf || event.date < span.firstDate || event.date > lastDate) continue;
    const other = next.get(event.siteId);
    if (!other || event.date < other.date) next.set(event.siteId, event);
  }
  return (item) => {
    const event = next.get(siteOf.get(item.machineId)!);
    if (!event) return null;
    const isNeeded = item.mustDo || item.code === 'road-call' || (item.dueP50 !== null && item.dueP50 <= event.date);
    return isNeeded ? { event, latestDate: event.fromMinute > 0 ? event.date : addDays(event.date, -1) } : null;
  };
}

/** An item as the event ahead wants it. What cannot be ready, since its part comes later, stays as it was and says so. */
export function beforeEvent(item: PlanningItem, ahead: EventAhead | null): PlanningItem {
  if (ahead === null) return item;
  const { event, latestDate } = ahead;
  if (item.releaseDate !== null && item.releaseDate > latestDate) {
    return { ...item, because: `${item.because} It cannot be ready for ${event.name}: its part comes later.` };
  }
  const because = `${item.because} To be ready for ${event.name} on ${event.date}.`;
  // The limit of a stopgap may come before the event.
  if (item.latestDate && item.latestDate < latestDate) return { ...item, mustDo: true, because };
  return { ...item, mustDo: true, latestDate, ...(item.betterLate && { betterLate: false }), because };
}
