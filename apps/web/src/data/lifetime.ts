import type * as wire from '@deckround/contracts';
import type { z } from 'zod';

export type MeterChange = z.infer<typeof wire.MeterChange>;

/** Lifetime hours of a meter reading: what earlier meters had counted is added. */
export function lifetimeOf(readAt: string, hours: number, changes: readonly MeterChange[]): number {
  const day = readAt.slice(0, 10);
  return changes
    .filter((change) => change.changedOn <= day)
    .reduce((sum, change) => sum + Number(change.oldHours) - Number(change.newHours), hours);
}
