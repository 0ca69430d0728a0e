import { addDays } from '@deckround/register';
import { BEGUN, dateColumn, reopenCalls, visitItemKey } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';
import type { AskedDays } from './snapshot-of-days.js';

/**
 * Takes the work of a plan out of what is proposed on later days that runs after it plan anew, so that it stands nowhere
 * twice, whether or not they come to it. Call before the plan's own visits are written: a new visit takes over what hung on
 * one that went.
 *
 * @param work the planner's names of what the plan has taken on
 */
export async function giveWay(tx: Tx, work: ReadonlySet<string>, asked: AskedDays): Promise<void> {
  if (asked.replansTo === null) return;
  const days = { gte: dateColumn(addDays(asked.firstDate, asked.days)), lte: dateColumn(asked.replansTo) };
  const proposed: Prisma.VisitWhereInput = { visitDate: days, state: 'proposed', pinned: false, NOT: BEGUN };
  const items = await tx.visitItem.findMany({ where: { state: 'planned', visit: proposed } });
  const taken = items.filter((item) => work.has(visitItemKey(item)));
  if (taken.length === 0) return;
  await tx.visitItem.deleteMany({ where: { id: { in: taken.map(({ id }) => id) } } });
  const touched = { id: { in: [...new Set(taken.map(({ visitId }) => visitId))] } };
  const emptied = { ...touched, visitItems: { none: {} } };
  await reopenCalls(tx, emptied);
  await tx.visit.deleteMany({ where: emptied });
  await tx.visit.updateMany({ where: touched, data: { version: { increment: 1 } } });
  const routes = await tx.dayRoute.findMany({ where: { routeDate: days } });
  const visits = await tx.visit.findMany({ where: { visitDate: days, state: { not: 'cancelled' } } });
  const driven = new Set(visits.map(({ technicianId, visitDate }) => `${technicianId} ${visitDate.getTime()}`));
  const idle = routes.filter(({ technicianId, routeDate }) => !driven.has(`${technicianId} ${routeDate.getTime()}`));
  await tx.dayRoute.deleteMany({ where: { id: { in: idle.map(({ id }) => id) } } });
}
