import type { Prisma, Tx } from '@deckround/store';
import { revisitReadings } from './set-aside.js';

export interface TakenReading {
  readonly machineId: string;
  readonly readAt: Date;
  /** Hours of the meter as a decimal string. */
  readonly hours: string;
  readonly source: 'manager' | 'technician' | 'supervisor' | 'telematics' | 'label';
}

/** A device's clock may run a little ahead. */
export const CLOCK_SKEW_MS = 5 * 60_000;

/**
 * The one way in for readings: each is kept once, and all of their machines are looked at again, so that a doubtful one
 * is set aside with its reason.
 *
 * @returns how many are new, and the rows of all as they stand now, in order of time
 */
export async function takeReadings(
  tx: Tx,
  shopId: string,
  readings: readonly TakenReading[],
  now: Date,
): Promise<{ added: number; rows: Prisma.ReadingGetPayload<object>[] }> {
  const { count } = await tx.reading.createMany({
    data: readings.map((reading) => ({ shopId, ...reading })),
    skipDuplicates: true,
  });
  await revisitReadings(tx, [...new Set(readings.map((each) => each.machineId))], now);
  const rows = await tx.reading.findMany({
    where: { OR: readings.map(({ machineId, readAt, source, hours }) => ({ machineId, readAt, source, hours })) },
    orderBy: [{ readAt: 'asc' }, { id: 'asc' }],
  });
  return { added: count, rows };
}
