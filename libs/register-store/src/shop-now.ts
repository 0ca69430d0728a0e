import type { Tx } from '@deckround/store';

const DAY_MS = 86_400_000;

/**
 * The present of a shop. An invented one lives in its own season: its calendar stands whole days apart from the world's
 * and goes on with it. What a shop's people see and decide goes by this; sign-ins, keys and deliveries by the world's.
 */
export async function shopNow(tx: Tx, now: Date): Promise<Date> {
  const { clockShiftDays } = await tx.shop.findFirstOrThrow({ select: { clockShiftDays: true } });
  return shiftedBy(now, clockShiftDays);
}

export function shiftedBy(now: Date, days: number): Date {
  return new Date(now.getTime() + days * DAY_MS);
}
