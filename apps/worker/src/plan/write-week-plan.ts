import { randomUUID } from 'node:crypto';
import type { PlannedVisit, PlanningSnapshot, WeekPlan } from '@deckround/planning';
import {
  type MachineItem,
  machineItems,
  type OpenStopgap,
  type Register,
  roadCallItemId,
  stopgapItemId,
} from '@deckround/register';
import { dateColumn } from '@deckround/register-store';
import { emitEvent, type Prisma, type Tx } from '@deckround/store';

/**
 * Writes a week from its first day that is not over: proposed visits are replaced, confirmed ones keep their promise and
 * take the new times and items, finished ones stay untouched, and those of a day under way but for the drive there where
 * a visit was added before. A promise that the plan could not keep is cancelled with its reason, so that the customer can
 * be told.
 */
export async function writeWeekPlan(
  tx: Tx,
  shopId: string,
  runId: string,
  register: Register,
  plan: WeekPlan,
  { asOf, isUnderWay }: Pick<PlanningSnapshot, 'asOf' | 'isUnderWay'>,
  now: Date,
): Promise<void> {
  const run = await tx.planRun.findUniqueOrThrow({ where: { id: runId } });
  const from = new Date(Math.max(run.weekOf.getTime(), dateColumn(asOf).getTime()));
  const to = new Date(run.weekOf.getTime() + (run.days - 1) * 86_400_000);
  const days = { gte: from, lte: to };
  const keptIds = plan.visits.flatMap((visit) => visit.promisedVisitId ?? []);
  const replaced = { state: 'proposed', pinned: false, visitDate: days, id: { notIn: keptIds } };
  await tx.roadCall.updateMany({
    where: { state: 'planned', visit: replaced },
    data: { state: 'open', visitId: null, version: { increment: 1 } },
  });
  await tx.visit.deleteMany({ where: replaced });
  const unkept = await tx.visit.findMany({
    where: {
      OR: [{ state: 'confirmed' }, { state: 'proposed', pinned: true }],
      visitDate: days,
      id: { notIn: keptIds },
    },
  });
  for (const { id, siteId, state } of unkept) {
    if (state === 'confirmed') await emitEvent(tx, shopId, 'visit.cancelled', { visitId: id, siteId }, now);
  }
  await tx.visit.updateMany({
    where: { id: { in: unkept.map((visit) => visit.id) } },
    data: {
      state: 'cancelled',
      pinned: false,
      reason: 'The promise could not be kept when the week was planned again: the customer has to be told.',
      version: { increment: 1 },
    },
  });
  const itemOf = itemLookUp(register);
  const fresh = plan.visits
    .filter((visit) => visit.promisedVisitId === null)
    .map((visit) => ({ id: randomUUID(), visit }));
  await tx.visit.createMany({ data: fresh.map(({ id, visit }) => ({ id, ...visitRow(shopId, runId, visit) })) });
  const isUntouched = (date: string) => isUnderWay === true && date === asOf;
  const calledOn = isUnderWay ? await calledOnToday(tx, plan, asOf) : new Map<string, Date>();
  const kept = plan.visits
    .filter((visit) => visit.promisedVisitId !== null && !isUntouched(visit.date))
    .map((visit) => ({ id: visit.promisedVisitId!, visit }));
  for (const { id, visit } of kept) {
    await tx.visit.update({ where: { id }, data: { ...visitRow(shopId, runId, visit), version: { increment: 1 } } });
    await tx.visitItem.deleteMany({ where: { visitId: id } });
  }
  await tx.visitItem.createMany({
    data: [...fresh, ...kept].flatMap(({ id, visit }) =>
      visit.items.map((item) => ({
        shopId,
        visitId: id,
        machineId: item.machineId,
        ...itemOf(item.itemId),
        role: item.role,
        minutes: item.minutes,
        sharedMinutes: item.sharedMinutes,
        timingCents: item.timingCents,
        waitingCents: item.waitingCents,
        reason: item.reason,
      })),
    ),
  });
  for (const { id, visit } of [...fresh, ...kept]) {
    const calls = visit.items.flatMap((item) => itemOf(item.itemId).roadCallId ?? []);
    if (calls.length === 0) continue;
    await tx.roadCall.updateMany({
      where: { id: { in: calls } },
      data: { state: 'planned', visitId: id, version: { increment: 1 } },
    });
  }
  const outdated = isUnderWay ? await outdatedRoutes(tx, from, to, [...calledOn.keys()]) : { routeDate: days };
  await tx.dayRoute.deleteMany({ where: outdated });
  const routes = plan.routes.filter((route) => !isUntouched(route.date) || calledOn.has(route.technicianId));
  await tx.dayRoute.createMany({
    data: routes.map((route) => ({
      shopId,
      planRunId: runId,
      technicianId: route.technicianId,
      routeDate: dateColumn(route.date),
      leaveAt: (isUntouched(route.date) && calledOn.get(route.technicianId)) || new Date(route.leaveAt),
      returnAt: new Date(route.returnAt),
      lunchFrom: route.lunch && new Date(route.lunch.from),
      lunchTo: route.lunch && new Date(route.lunch.to),
      driveMinutes: route.driveMinutes,
      driveMetres: route.driveMetres,
      workMinutes: route.workMinutes,
      waitMinutes: route.waitMinutes,
      overtimeMinutes: route.overtimeMinutes,
      load: route.load,
    })),
  });
  await tx.planRun.update({
    where: { id: runId },
    data: { plan, totalCents: plan.cost.total, iterations: plan.iterations, version: { increment: 1 } },
  });
}

/**
 * Who gets a visit more on a day under way, with the time of leaving that stands already. Visits that follow are reached
 * from another place then.
 */
async function calledOnToday(tx: Tx, plan: WeekPlan, today: string): Promise<Map<string, Date>> {
  const todays = plan.visits.filter((visit) => visit.date === today);
  const ids = new Set(todays.filter((visit) => visit.promisedVisitId === null).map((visit) => visit.technicianId));
  for (const visit of todays) {
    if (visit.promisedVisitId === null || !ids.has(visit.technicianId)) continue;
    await tx.visit.updateMany({
      where: { id: visit.promisedVisitId, state: { in: ['proposed', 'confirmed'] } },
      data: { driveMinutes: visit.driveMinutes, arriveAt: new Date(visit.arriveAt), version: { increment: 1 } },
    });
  }
  const leaving = new Map(
    plan.routes
      .filter((route) => route.date === today && ids.has(route.technicianId))
      .map((route) => [route.technicianId, new Date(route.leaveAt)]),
  );
  const standing = await tx.dayRoute.findMany({
    where: { routeDate: dateColumn(today), technicianId: { in: [...ids] } },
  });
  for (const { technicianId, leaveAt } of standing) {
    if (leaveAt < leaving.get(technicianId)!) leaving.set(technicianId, leaveAt);
  }
  return leaving;
}

/** Of a day under way, which may hold finished visits, those of people who get a visit more or have none left. */
async function outdatedRoutes(
  tx: Tx,
  today: Date,
  to: Date,
  calledOn: readonly string[],
): Promise<Prisma.DayRouteWhereInput> {
  const busy = await tx.visit.findMany({
    where: { visitDate: today, state: { not: 'cancelled' } },
    select: { technicianId: true },
  });
  const technicianId = {
    notIn: busy.map((visit) => visit.technicianId).filter((each) => !calledOn.includes(each)),
  };
  return { OR: [{ routeDate: { gt: today, lte: to } }, { routeDate: today, technicianId }] };
}

function visitRow(shopId: string, runId: string, visit: PlannedVisit) {
  return {
    shopId,
    planRunId: runId,
    siteId: visit.siteId,
    technicianId: visit.technicianId,
    visitDate: dateColumn(visit.date),
    driveMinutes: visit.driveMinutes,
    arriveAt: new Date(visit.arriveAt),
    startAt: new Date(visit.startAt),
    endAt: new Date(visit.endAt),
    setupMinutes: visit.setupMinutes,
    preparationMinutes: visit.preparationMinutes,
    marginalCents: visit.marginalCents,
    reason: visit.reason,
  };
}

function itemLookUp(register: Register) {
  const items = new Map<string, MachineItem>(machineItems(register).map((each) => [each.id, each]));
  const stopgaps = new Map<string, OpenStopgap>(register.stopgaps.map((each) => [stopgapItemId(each.id), each]));
  const calls = new Map(register.roadCalls.map((each) => [roadCallItemId(each.id), each]));
  return (itemId: string) => {
    const none = { serviceItemId: null, stopgapId: null, roadCallId: null, slot: null };
    const stopgap = stopgaps.get(itemId);
    if (stopgap) return { ...none, stopgapId: stopgap.id, code: stopgap.code, title: stopgap.title };
    const call = calls.get(itemId);
    if (call) return { ...none, roadCallId: call.id, code: 'road-call', title: call.title };
    const each = items.get(itemId)!;
    return { ...none, serviceItemId: each.item.id, slot: each.slot, code: each.item.code, title: each.title };
  };
}
