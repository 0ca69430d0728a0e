import type { Tx } from '@deckround/store';
import { DateTime } from 'luxon';
import { wallClockOf } from './local-time.js';

/**
 * The present of a shop. An invented one lives in its own season: its calendar stands whole days apart from the world's
 * and goes on with it. What a shop's people see and decide goes by this; sign-ins, keys and deliveries by the world's.
 */
export async function shopNow(tx: Tx, now: Date): Promise<Date> {
  return nowAt(await tx.shop.findFirstOrThrow({ select: { clockShiftDays: true, timeZone: true } }), now);
}

/** The present of a shop at hand: its clocks show what the world's do there, be it summer time in one and not the other. */
export function nowAt(shop: { readonly clockShiftDays: number; readonly timeZone: string }, now: Date): Date {
  return DateTime.fromJSDate(now, { zone: shop.timeZone }).plus({ days: shop.clockShiftDays }).toJSDate();
}

/** The date on the calendar of the shop. */
export async function todayOf(tx: Tx, now: Date): Promise<string> {
  const { timeZone } = await tx.shop.findFirstOrThrow({ select: { timeZone: true } });
  return wallClockOf(await shopNow(tx, now), timeZone).slice(0, 10);
}
