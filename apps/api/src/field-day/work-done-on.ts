import { dateText } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';

type Visit = Prisma.VisitGetPayload<{ include: { visitItems: true } }>;

/** The days on which work of visits was done, by visit item; not those of which only the visit knows. */
export async function workDoneOn(tx: Tx, visits: readonly Visit[]): Promise<Map<string, string>> {
  const visitId = { in: visits.map(({ id }) => id) };
  const done = await tx.completion.findMany({ where: { visitId }, include: { slot: true } });
  const closed = await tx.stopgap.findMany({ where: { visitItems: { some: { visitId } } } });
  const answered = await tx.roadCall.findMany({ where: { visitItems: { some: { visitId } } } });
  const keyOf = (...names: (string | null)[]) => names.join('|');
  const days = new Map([
    ...done.map(
      (row) => [keyOf(row.visitId, row.machineId, row.itemCode, row.slot?.name ?? null), row.doneOn] as const,
    ),
    ...[...closed, ...answered].map((row) => [row.id, row.closedOn] as const),
  ]);
  return new Map(
    visits.flatMap((visit) =>
      visit.visitItems.flatMap((item) => {
        const { id, machineId, code, slot, stopgapId, roadCallId, state } = item;
        const day = days.get(stopgapId ?? roadCallId ?? keyOf(visit.id, machineId, code, slot));
        return state === 'done' && day ? [[id, dateText(day)] as const] : [];
      }),
    ),
  );
}
