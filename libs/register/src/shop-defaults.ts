import { CLASSES, itemsOfClass } from '@deckround/catalogue';
import type { ShopClass, ShopSettings } from './register.js';

/**
 * Starting settings, to be tuned from recorded drives: detour 1.4 to 10 km, 1.3 to 50 km, 1.2 beyond; 25 mph in town,
 * 45 mph outside. Own starting values near published detour factors (1.2 between cities: Ballou, Rahardja, Sakai 2002,
 * from memory). 0.42 $/km for the van: common practice, no source.
 */
export const DEFAULT_SHOP: ShopSettings = {
  name: 'Mower repair shop',
  timeZone: 'America/Chicago',
  currency: 'USD',
  travel: {
    kind: 'geodesic',
    detourShort: 1.4,
    detourMedium: 1.3,
    detourLong: 1.2,
    townKmh: 40.2,
    openKmh: 72.4,
    centsPerKm: 42,
  },
  laterTripShare: 0.7,
};

/**
 * What a day past tolerance is worth avoiding: a hundredth of what a failure costs. It stands for the customer's
 * patience, which no hazard knows. Common practice, no source; every shop edits it per item.
 */
export function lateCentsPerDay(failureCents: number): number {
  return Math.round(failureCents / 100);
}

/**
 * What a day without the machine, or with a faulty one, costs the customer until a road call is answered; cents.
 * Common practice, no source; every call can carry its own.
 */
export const WAITING_CENTS_PER_DAY = { down: 15_000, usable: 3_000 } as const;

/** The starter catalogue as the plan of a shop that has not edited it yet. */
export function starterClasses(): ShopClass[] {
  return CLASSES.map(({ code, name, preparations }) => ({
    code,
    name,
    preparations,
    items: itemsOfClass(code).map((item) => ({
      ...item,
      id: item.code,
      mustDo: false,
      latePenaltyCentsPerDay: lateCentsPerDay(item.failureCents),
    })),
  }));
}
