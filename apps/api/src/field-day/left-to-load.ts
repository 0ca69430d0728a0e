import { wallClockOf } from '@deckround/register-store';

interface Load {
  readonly partId: string | null;
  readonly name: string;
  readonly quantity: number;
  readonly unit: string;
}

interface Work {
  readonly role: string;
  readonly parts: readonly Load[];
}

interface PlacedVisit {
  readonly date: string;
  readonly finishedAt: string | null;
  readonly site: { readonly timeZone: string };
}

/** Whether a visit was over before the day for which it was planned: nobody drives there that day. */
export function isDoneAhead({ date, finishedAt, site }: PlacedVisit): boolean {
  return finishedAt !== null && wallClockOf(new Date(finishedAt), site.timeZone).slice(0, 10) < date;
}

/** A day's load without what the work of visits done ahead needed. Work found on the spot was never in it. */
export function leftToLoad<Line extends Load & { readonly missing: number }>(
  load: readonly Line[],
  doneAhead: readonly Work[],
): Line[] {
  const parts = doneAhead.flatMap((item) => (item.role === 'found' ? [] : item.parts));
  return load.flatMap((line) => {
    const needed = parts.filter((part) => keyOf(part) === keyOf(line)).reduce((sum, each) => sum + each.quantity, 0);
    if (needed === 0) return [line];
    const quantity = rounded(line.quantity - needed);
    return quantity > 0 ? [{ ...line, quantity, missing: rounded(Math.max(0, line.missing - needed)) }] : [];
  });
}

function keyOf({ partId, name, unit }: Load): string {
  return partId ?? `${name}|${unit}`;
}

/** Quantities such as 0.1 l add up without tails. */
function rounded(quantity: number): number {
  return Math.round(quantity * 1e6) / 1e6;
}
