import type { PlanningSnapshot, WeekPlan } from '@deckround/planning';
import { dateColumn } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';

/** A day on which work had begun when its week was planned again: what stood on it stays, but may get company. */
export interface DayUnderWay {
  date: string;
  /** Visits that stay, whatever the plan says of them: those of everybody who works on the day. */
  visits: Prisma.VisitWhereInput;
  /** Technicians who get a visit more. */
  calledOn: string[];
}

export function dayUnderWay({ asOf, isUnderWay, technicians }: PlanningSnapshot, plan: WeekPlan): DayUnderWay | null {
  if (!isUnderWay) return null;
  const working = technicians.filter(({ shifts }) => shifts.some(({ date }) => date === asOf)).map(({ id }) => id);
  const added = plan.visits.filter((visit) => visit.date === asOf && visit.promisedVisitId === null);
  return {
    date: asOf,
    visits: { visitDate: dateColumn(asOf), technicianId: { in: working } },
    calledOn: [...new Set(added.map((visit) => visit.technicianId))],
  };
}

/**
 * Visits of those called on may be reached from another place now.
 *
 * @returns when they left, by technician, if they had work before
 */
export async function reachAnew(tx: Tx, { date, calledOn }: DayUnderWay, plan: WeekPlan): Promise<Map<string, Date>> {
  for (const { promisedVisitId: id, ...visit } of plan.visits) {
    if (id === null || visit.date !== date || !calledOn.includes(visit.technicianId)) continue;
    await tx.visit.updateMany({
      where: { id, state: { in: ['proposed', 'confirmed'] } },
      data: { driveMinutes: visit.driveMinutes, arriveAt: new Date(visit.arriveAt), version: { increment: 1 } },
    });
  }
  const routes = await tx.dayRoute.findMany({
    where: { routeDate: dateColumn(date), technicianId: { in: calledOn } },
    select: { technicianId: true, leaveAt: true },
  });
  return new Map(routes.map(({ technicianId, leaveAt }) => [technicianId, leaveAt]));
}

/** Routes of the day that stay: of those with visits, finished ones too, who get no visit more. */
export async function standingRoutes(tx: Tx, { date, calledOn }: DayUnderWay): Promise<Prisma.DayRouteWhereInput> {
  const visits = await tx.visit.findMany({
    where: { visitDate: dateColumn(date), state: { not: 'cancelled' }, technicianId: { notIn: calledOn } },
    select: { technicianId: true },
  });
  return { routeDate: dateColumn(date), technicianId: { in: visits.map((visit) => visit.technicianId) } };
}
