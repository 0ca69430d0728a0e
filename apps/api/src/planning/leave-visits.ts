import { BEGUN } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';
import { cancelVisit } from './cancel-visit.js';
import { lockVisit } from './lock-visit.js';

/** The one piece of work that is wanted no more. */
type Work = Pick<Prisma.VisitItemWhereInput, 'stopgapId' | 'roadCallId'>;

/**
 * Nobody drives for work that is wanted no more: it leaves the visits in which it is still to be done, and a visit of which
 * nothing is left is cancelled, so that whom it was promised is told.
 */
export async function leaveVisits(tx: Tx, work: Work, reason: string, now: Date): Promise<void> {
  const isOpen = { state: { in: ['proposed', 'confirmed'] } };
  const items = { ...work, state: 'planned' };
  const visits = await tx.visit.findMany({
    where: { ...isOpen, visitItems: { some: items } },
    select: { id: true },
    orderBy: { id: 'asc' },
  });
  for (const { id } of visits) {
    await lockVisit(tx, id);
    const { count } = await tx.visitItem.deleteMany({ where: { ...items, visitId: id, visit: isOpen } });
    if (count > 0) await tx.visit.update({ where: { id }, data: { version: { increment: 1 } } });
    const needless = await tx.visit.findFirst({ where: { id, ...isOpen, visitItems: { none: {} }, NOT: BEGUN } });
    if (needless !== null) await cancelVisit(tx, needless, now, reason);
  }
}
