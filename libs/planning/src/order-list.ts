import type { PlanningPart } from './snapshot.js';

/** What a part is for: the work and where. */
export interface PartUse {
  code: string;
  slot: string | null;
  title: string;
  siteName: string;
}

/** Work that takes a part on a day. */
export interface PartNeed {
  partId: string;
  quantity: number;
  date: string;
  /** planned: a visit is arranged for that day; forecast: falls due about then. */
  certainty: 'planned' | 'forecast';
  use: PartUse;
}

export interface OrderLine {
  partId: string;
  /** To order so that nothing in the list of needs lacks it. */
  quantity: number;
  /** Last day to order for the first work that would lack it. */
  orderBy: string;
  firstNeededOn: string;
  /** It cannot be there in time any more: the first work that lacks it has to wait or be done otherwise. */
  isLate: boolean;
  /** Whether a planned visit lacks it, or only what is forecast. */
  certainty: 'planned' | 'forecast';
  /** Each kind of work at a place once. */
  uses: PartUse[];
}

/**
 * What to order by when: per part, the running balance of stock and arrivals against needs by date; whatever goes below
 * zero has to be ordered `leadDays` before its day. Planned work comes before forecast work of the same day. What should
 * have come before today is not counted on.
 *
 * @param today local date; an order placed then arrives `leadDays` later
 * @returns parts that run short, the most urgent first
 */
export function orderList(parts: readonly PlanningPart[], needs: readonly PartNeed[], today: string): OrderLine[] {
  const byPart = new Map<string, PartNeed[]>();
  for (const need of needs) byPart.set(need.partId, [...(byPart.get(need.partId) ?? []), need]);
  const lines = parts.flatMap((part) => {
    const line = orderLine(part, byPart.get(part.id) ?? [], today);
    return line ? [line] : [];
  });
  return lines.sort((a, b) => (a.orderBy < b.orderBy ? -1 : a.orderBy > b.orderBy ? 1 : 0));
}

function orderLine(part: PlanningPart, needs: readonly PartNeed[], today: string): OrderLine | null {
  const inOrder = [...needs].sort((a, b) =>
    a.date === b.date
      ? Number(b.certainty === 'planned') - Number(a.certainty === 'planned')
      : a.date < b.date
        ? -1
        : 1,
  );
  const arrived = (date: string) =>
    part.arrivals
      .filter((arrival) => arrival.date >= today && arrival.date <= date)
      .reduce((sum, arrival) => sum + arrival.quantity, part.onHand);
  let used = 0;
  let ordered = 0;
  let first: PartNeed | null = null;
  const short: PartNeed[] = [];
  for (const need of inOrder) {
    used = rounded(used + need.quantity);
    const lacking = rounded(used - arrived(need.date) - ordered);
    if (lacking <= 0) continue;
    ordered = rounded(ordered + lacking);
    first ??= need;
    short.push(need);
  }
  if (first === null) return null;
  const orderBy = shifted(first.date, -part.leadDays);
  return {
    partId: part.id,
    quantity: Math.ceil(ordered),
    orderBy,
    firstNeededOn: first.date,
    isLate: orderBy < today,
    certainty: short.some((need) => need.certainty === 'planned') ? 'planned' : 'forecast',
    uses: [...new Map(short.map(({ use }) => [`${use.title} at ${use.siteName}`, use])).values()],
  };
}

function shifted(date: string, days: number): string {
  return new Date(Date.parse(`${date}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
}

function rounded(quantity: number): number {
  return Math.round(quantity * 1e6) / 1e6;
}
