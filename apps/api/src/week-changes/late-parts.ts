import type { Alert } from '@deckround/contracts';
import { type Clause, clause } from '@deckround/planning';
import { addDays, countedOn, machineItems, type Part, type Register } from '@deckround/register';
import { dateText, visitItemKey } from '@deckround/register-store';
import type { Prisma } from '@deckround/store';
import type { z } from 'zod';
import { otherPlace, type PlannedWeeks } from './other-place.js';

type View = z.infer<typeof Alert>;
export type VisitWithSite = Prisma.VisitGetPayload<{ include: { site: true; visitItems: true } }>;

/** Parts are given out in order of visits; whoever finds too few on the shelf that day is warned. */
export async function lateParts(
  register: Register,
  weeks: PlannedWeeks,
  visits: readonly VisitWithSite[],
  today: string,
): Promise<View[]> {
  const itemOf = new Map(machineItems(register).map((item) => [item.id, item]));
  const parts = new Map(countedOn(register.parts, today).map((part) => [part.id, part]));
  const stopgaps = new Map(register.stopgaps.map((stopgap) => [stopgap.id, stopgap]));
  const codes = new Map(register.machines.map((machine) => [machine.id, machine.code]));
  const used = new Map<string, number>();
  const alerts: View[] = [];
  for (const visit of visits) {
    const date = dateText(visit.visitDate);
    for (const item of visit.visitItems) {
      const stopgap = item.stopgapId === null ? undefined : stopgaps.get(item.stopgapId);
      const needed = stopgap?.partId
        ? [{ partId: stopgap.partId, quantity: stopgap.partQuantity }]
        : (itemOf.get(visitItemKey(item))?.parts ?? []);
      for (const { partId, quantity } of needed) {
        const part = parts.get(partId);
        if (!part) continue;
        const taken = (used.get(partId) ?? 0) + quantity;
        used.set(partId, taken);
        const coming = comesOn(part, taken, stopgap?.partExpectedOn ?? null, today);
        // What nobody has ordered yet, and need not today, is the order list's to say.
        if ((coming.onOrder ?? coming.date) <= date) continue;
        const machineCode = codes.get(item.machineId)!;
        const told = { part: part.description, ...workOf(item), machine: machineCode, visitDate: date };
        const work = `${part.description} for ${item.title} on ${machineCode}`;
        const move = coming.date <= date ? null : await otherPlace(weeks, visit, (each) => each >= coming.date, []);
        alerts.push({
          kind: 'part-late-for-visit',
          siteId: visit.siteId,
          siteName: visit.site.name,
          machineId: item.machineId,
          machineCode,
          visitId: visit.id,
          stopgapId: item.stopgapId,
          orderId: null,
          documentId: null,
          answerId: null,
          ...worded(work, told, coming, { date, leadDays: part.leadDays, toDate: move?.date ?? null }),
          move,
        });
      }
    }
  }
  return alerts;
}

interface Coming {
  /** First day on which so many are there: on the shelf, on order, or ordered today. */
  readonly date: string;
  /** When they come without an order of today; null = they do not. */
  readonly onOrder: string | null;
}

/** What the planner counts on: the register's stock and orders; the day told where it has neither. */
function comesOn(part: Part, quantity: number, toldOn: string | null, today: string): Coming {
  const isKnown = part.onHand >= quantity || part.arrivals.length > 0;
  if (!isKnown && toldOn !== null && toldOn >= today) return { date: toldOn, onOrder: toldOn };
  const onOrder = arrivalOf(part, quantity, today);
  const ordered = addDays(today, part.leadDays);
  return { date: onOrder !== null && onOrder < ordered ? onOrder : ordered, onOrder };
}

/** First day on which so many have arrived; null where too few are on order. */
function arrivalOf(part: Part, quantity: number, today: string): string | null {
  let have = part.onHand;
  if (have >= quantity) return today;
  const arrivals = [...part.arrivals].sort((a, b) => (a.date < b.date ? -1 : 1));
  for (const arrival of arrivals) {
    have += arrival.quantity;
    if (have >= quantity) return arrival.date;
  }
  return null;
}

/** What comes too late, and what to do: order today where that makes it, else another day, else without this work. */
function worded(
  work: string,
  told: Clause['values'],
  { date: comes, onOrder }: Coming,
  visit: { date: string; leadDays: number; toDate: string | null },
): Pick<View, 'sentence' | 'choice' | 'clauses'> {
  const { date, toDate } = visit;
  if (onOrder !== null && comes <= date) {
    const by = addDays(date, -visit.leadDays);
    return {
      sentence: `${work} comes on ${onOrder}, after the visit on ${date}.`,
      choice: `Order it by ${by}: ordered today, it comes on ${comes}, in time for the visit.`,
      clauses: {
        sentence: clause('part-after-visit', { ...told, comesDate: onOrder }),
        choice: clause('order-by', { byDate: by, comesDate: comes }),
      },
    };
  }
  const isToOrder = comes !== onOrder;
  return {
    sentence: `${work}${isToOrder ? ', ordered today,' : ''} comes on ${comes}, after the visit on ${date}.`,
    choice: toDate
      ? `Move the visit to ${toDate}, when the part is there.`
      : `Make the visit without this work, and come again from ${comes}.`,
    clauses: {
      sentence: clause(isToOrder ? 'ordered-after-visit' : 'part-after-visit', { ...told, comesDate: comes }),
      choice: toDate ? clause('move-to-part', { toDate }) : clause('visit-without', { comesDate: comes }),
    },
  };
}

/** What the work is called, by the parts that other languages name it from. */
function workOf({ code, slot, title }: { code: string; slot: string | null; title: string }) {
  return { workCode: code, workSlot: slot ?? '', workTitle: title };
}
