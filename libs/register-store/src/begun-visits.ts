import type { Prisma } from '@deckround/store';

/**
 * Visits on which something has been recorded: work, findings, stopgaps, parts, times. Whatever is planned anew, they stand,
 * since what was done there is charged with them.
 */
export const BEGUN: Prisma.VisitWhereInput = {
  OR: [
    { visitItems: { some: { state: 'done' } } },
    { completions: { some: {} } },
    { findings: { some: {} } },
    { stopgaps: { some: {} } },
    { partUses: { some: {} } },
    { workTimes: { some: {} } },
  ],
};
