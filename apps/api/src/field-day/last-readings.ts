import type { Prisma, Tx } from '@deckround/store';

type Row = Prisma.ReadingGetPayload<object>;

/** The newest accepted reading of each machine that has one. */
export async function lastReadings(tx: Tx, machineIds: readonly string[]): Promise<Map<string, Row>> {
  const rows = await tx.reading.findMany({
    where: { machineId: { in: [...machineIds] }, status: 'accepted' },
    distinct: ['machineId'],
    orderBy: [{ machineId: 'asc' }, { readAt: 'desc' }],
  });
  return new Map(rows.map((row) => [row.machineId, row]));
}
