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
  /** Nobody does it there on its day: it was done before, or its machine stands at another site by now. */
  readonly isSpared: boolean;
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

/**
 * A day's load without what spared work needed: of that no more than the rest of the day's work needs, since a list that
 * was made after it holds nothing for it any more. Work found on the spot was never in it.
 */
export function leftToLoad<Line extends Load & { readonly missing: number }>(
  load: readonly Line[],
  work: readonly Work[],
): Line[] {
  const planned = work.filter(({ role }) => role !== 'found');
  const needed = (line: Line, isSpared: boolean) =>
    planned
      .filter((item) => item.isSpared === isSpared)
      .flatMap(({ parts }) => parts.filter((part) => keyOf(part) === keyOf(line)))
      .reduce((sum, { quantity }) => sum + quantity, 0);
  return load.flatMap((line) => {
    const spared = rounded(line.quantity - needed(line, false));
    if (needed(line, true) === 0 || spared <= 0) return [line];
    const quantity = rounded(line.quantity - spared);
    return quantity > 0 ? [{ ...line, quantity, missing: rounded(Math.max(0, line.missing - spared)) }] : [];
  });
}

function keyOf({ partId, name, unit }: Load): string {
  return partId ?? `${name}|${unit}`;
}

/** Quantities such as 0.1 l add up without tails. */
function rounded(quantity: number): number {
  return Math.round(quantity * 1e6) / 1e6;
}
