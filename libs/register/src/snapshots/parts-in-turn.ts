import { addDays } from '../local-date.js';
import type { Part } from '../register.js';

/** Work that waits for parts. */
export interface PartsWanted {
  readonly id: string;
  readonly parts: readonly { readonly partId: string; readonly quantity: number }[];
  /** Day that somebody was told for them; null = nobody was. */
  readonly toldOn: string | null;
  /** Day on which it is done in any case; null = it can wait for its parts. */
  readonly fixedOn: string | null;
}

export interface Release {
  /** First day on which enough of every part is there; null = now. */
  readonly date: string | null;
  /** Only an order of today makes it. */
  readonly isToOrder: boolean;
}

/** Parts with those of their orders that can still be counted on: what should have come before `today` cannot. */
export function countedOn(parts: readonly Part[], today: string): Part[] {
  return parts.map((part) => ({ ...part, arrivals: part.arrivals.filter(({ date }) => date >= today) }));
}

/**
 * When the parts of each piece of work are there, each part given out once in the order of the work: from the shelf, on
 * order, or ordered today. What waits for an order of today leaves the shelf to others.
 *
 * @param wanted the most urgent first
 */
export function releaseDates(
  wanted: readonly PartsWanted[],
  parts: readonly Part[],
  today: string,
): Map<string, Release> {
  const supplies = new Map(countedOn(parts, today).map((part) => [part.id, new Supply(part, today)]));
  return new Map(
    wanted.map(({ id, parts: needed, toldOn, fixedOn }) => {
      const told: Release = { date: toldOn, isToOrder: false };
      const releases = needed.map(
        ({ partId, quantity }) => supplies.get(partId)?.take(quantity, toldOn, fixedOn) ?? told,
      );
      const latest = (a: Release, b: Release) => ((b.date ?? '') > (a.date ?? '') ? b : a);
      return [id, needed.length === 0 ? told : releases.reduce(latest)];
    }),
  );
}

/** One part: what is on the shelf and what is on order, as far as it has not been given out. */
class Supply {
  /** By date; what is on the shelf has none. */
  private readonly lots: { readonly date: string; left: number }[];
  /** When an order of today comes. */
  private readonly ordered: string;

  constructor(
    private readonly part: Part,
    private readonly today: string,
  ) {
    const arrivals = part.arrivals.map(({ date, quantity }) => ({ date, left: quantity }));
    this.lots = [{ date: '', left: part.onHand }, ...arrivals.sort((a, b) => (a.date < b.date ? -1 : 1))];
    this.ordered = addDays(today, part.leadDays);
  }

  /** When the last of so many is there. */
  take(quantity: number, toldOn: string | null, fixedOn: string | null): Release {
    if (fixedOn !== null) {
      // The latest that is in time, so that what is there sooner is left to others.
      const inTime = this.takeFrom(this.lots.filter(({ date }) => date <= fixedOn).toReversed(), quantity);
      if (inTime !== null) return inTime;
    }
    const isKnown = this.part.onHand >= quantity || this.part.arrivals.length > 0;
    if (!isKnown && toldOn !== null && toldOn >= this.today) return { date: toldOn, isToOrder: false };
    const sooner = this.lots.filter(({ date }) => date < this.ordered);
    return this.takeFrom(sooner, quantity) ?? { date: this.ordered, isToOrder: true };
  }

  /** Takes so many from the lots in turn, or nothing where they hold too little: null. */
  private takeFrom(lots: Supply['lots'], quantity: number): Release | null {
    if (rounded(lots.reduce((sum, { left }) => sum + left, 0)) < quantity) return null;
    let missing = quantity;
    let latest = '';
    for (const lot of lots) {
      const taken = Math.min(lot.left, missing);
      if (taken <= 0) continue;
      lot.left = rounded(lot.left - taken);
      missing = rounded(missing - taken);
      if (lot.date > latest) latest = lot.date;
    }
    return { date: latest === '' ? null : latest, isToOrder: false };
  }
}

/** Quantities such as 0.1 l add up without tails. */
function rounded(quantity: number): number {
  return Math.round(quantity * 1e6) / 1e6;
}
