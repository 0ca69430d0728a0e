import { dateText } from '@deckround/register-store';
import type { Prisma } from '@deckround/store';
import { instantOrNull } from '../register/values.js';

export const VISIT_INCLUDE = { visitItems: true } as const;
export type VisitRow = Prisma.VisitGetPayload<{ include: typeof VISIT_INCLUDE }>;

export function toVisitView({ visitItems, ...row }: VisitRow) {
  return {
    ...row,
    date: dateText(row.visitDate),
    arriveAt: row.arriveAt.toISOString(),
    startAt: row.startAt.toISOString(),
    endAt: row.endAt.toISOString(),
    promisedFrom: instantOrNull(row.promisedFrom),
    promisedTo: instantOrNull(row.promisedTo),
    finishedAt: instantOrNull(row.finishedAt),
    items: visitItems.toSorted((a, b) =>
      a.machineId === b.machineId ? (a.code < b.code ? -1 : 1) : a.machineId < b.machineId ? -1 : 1,
    ),
  };
}
