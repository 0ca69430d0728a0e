import type { Alert } from '@deckround/contracts';
import { priceMoves } from '@deckround/planning';
import { DomainError } from '@deckround/platform';
import { dateText } from '@deckround/register-store';
import type { Tx } from '@deckround/store';
import type { z } from 'zod';
import { type LoadedWeek, loadStandingWeek } from './load-standing-week.js';

/** Planned weeks, each read once, by any of their days; null where no plan covers the day. */
export class PlannedWeeks {
  private readonly weeks = new Map<string, LoadedWeek | null>();

  constructor(
    private readonly tx: Tx,
    private readonly now: Date,
  ) {}

  async around(date: string): Promise<LoadedWeek | null> {
    const known = this.weeks.get(date);
    if (known !== undefined) return known;
    const loaded = await this.load(date);
    this.weeks.set(date, loaded);
    return loaded;
  }

  private async load(date: string): Promise<LoadedWeek | null> {
    try {
      return await loadStandingWeek(this.tx, date, this.now);
    } catch (error) {
      if (error instanceof DomainError && error.code === 'plan-not-ready') return null;
      throw error;
    }
  }
}

/** The cheapest place on a day that will do, with no promise broken but those that may be; null when there is none. */
export async function otherPlace(
  weeks: PlannedWeeks,
  visit: { readonly id: string; readonly visitDate: Date },
  willDo: (date: string) => boolean,
  mayBreak: readonly string[],
): Promise<z.infer<typeof Alert>['move']> {
  const loaded = await weeks.around(dateText(visit.visitDate));
  const places = loaded ? (priceMoves(loaded.week, visit.id)?.places ?? []) : [];
  const others = places.filter((place) => willDo(place.date) && place.breaks.every((id) => mayBreak.includes(id)));
  const best = others.sort((a, b) => a.cents - b.cents)[0];
  if (!best || !loaded) return null;
  const { technicianId, order, cents } = best;
  return { technicianId, date: best.date, order, cents, stamp: loaded.stamp };
}
