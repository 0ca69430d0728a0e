import { randomUUID } from 'node:crypto';
import type { DayRoute, PlannedVisit, PlanningSnapshot, WeekPlan } from '@deckround/planning';
import {
  type MachineItem,
  machineItems,
  type OpenStopgap,
  type Register,
  roadCallItemId,
  stopgapItemId,
} from '@deckround/register';
import { BEGUN, dateColumn, reopenCalls, visitItemKey } from '@deckround/register-store';
import { emitEvent, insertVisitItems, type Prisma, type Tx } from '@deckround/store';
import { dayUnderWay, reachAnew, standingRoutes } from './day-under-way.js';
import { giveWay } from './give-way.js';
import { daysAsked } from './snapshot-of-days.js';

/**
 * Writes a week from its first day that is not over: proposed visits are replaced, confirmed ones keep their promise and
 * take the new times and items, finished ones stay untouched, and so do those of a day under way (`day-under-way`). What
 * was promised or held fast and has no place in the plan is cancelled with its reason, so that the customer can be told;
 * a visit that was begun stands even then, with what was done there.
 */
export async function writeWeekPlan(
  tx: Tx,
  shopId: string,
  runId: string,
  register: Register,
  plan: WeekPlan,
  snapshot: PlanningSnapshot,
  now: Date,
): Promise<void> {
  const run = await tx.planRun.findUniqueOrThrow({
    where: { id: runId },
    select: { weekOf: true, days: true, replansTo: true },
  });
  const from = new Date(Math.max(run.weekOf.getTime(), dateColumn(snapshot.asOf).getTime()));
  const to = new Date(run.weekOf.getTime() + (run.days - 1) * 86_400_000);
  const days = { gte: from, lte: to };
  const underWay = dayUnderWay(snapshot, plan);
  const unkeptOnes = {
    visitDate: days,
    id: { notIn: plan.visits.flatMap((visit) => visit.promisedVisitId ?? []) },
    ...(underWay && { NOT: underWay.visits }),
  };
  await leaveBegun(tx, unkeptOnes);
  const notBegun = { AND: [unkeptOnes, { NOT: BEGUN }] };
  const replaced = { ...notBegun, state: 'proposed', pinned: false };
  await reopenCalls(tx, replaced);
  await tx.roadCall.updateMany({ where: { visit: replaced }, data: { visitId: null } });
  await tx.visit.deleteMany({ where: replaced });
  const unkept = await tx.visit.findMany({
    where: { ...notBegun, OR: [{ state: 'confirmed' }, { state: 'proposed', pinned: true }] },
    include: { visitItems: true },
  });
  const fresh = plan.visits
    .filter((visit) => visit.promisedVisitId === null)
    .map((visit) => ({ id: randomUUID(), visit }));
  const open = new Set(snapshot.items.map((item) => item.id));
  const visitOf = visitsOfWork(plan, fresh);
  await reopenCalls(tx, { id: { in: unkept.map(({ id }) => id) } });
  for (const { id, siteId, state, visitItems } of unkept) {
    const isPromised = state === 'confirmed';
    if (isPromised) {
      const workTo = [...new Set(visitItems.flatMap((item) => visitOf.get(visitItemKey(item)) ?? []))];
      await emitEvent(tx, shopId, 'visit.cancelled', { visitId: id, siteId, workTo }, now);
    }
    const hasWork = visitItems.some((item) => open.has(visitItemKey(item)));
    await tx.visit.update({
      where: { id },
      data: { state: 'cancelled', pinned: false, reason: whyUnkept(isPromised, hasWork), version: { increment: 1 } },
    });
  }
  await giveWay(tx, newWork(register, visitOf, days), daysAsked(run));
  const itemOf = itemLookUp(register);
  await tx.visit.createMany({ data: fresh.map(({ id, visit }) => ({ id, ...visitRow(shopId, runId, visit) })) });
  const kept = plan.visits
    .filter((visit) => visit.promisedVisitId !== null && visit.date !== underWay?.date)
    .map((visit) => ({ id: visit.promisedVisitId!, visit }));
  for (const { id, visit } of kept) {
    await tx.visit.update({ where: { id }, data: { ...visitRow(shopId, runId, visit), version: { increment: 1 } } });
    await tx.visitItem.deleteMany({ where: { visitId: id, state: 'planned' } });
  }
  await insertVisitItems(
    tx,
    shopId,
    [...fresh, ...kept].flatMap(({ id, visit }) =>
      visit.items.map((item) => ({
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
  );
  for (const { id, visit } of [...fresh, ...kept]) {
    const calls = visit.items.flatMap((item) => itemOf(item.itemId).roadCallId ?? []);
    if (calls.length === 0) continue;
    await tx.roadCall.updateMany({
      where: { id: { in: calls } },
      data: { state: 'planned', visitId: id, version: { increment: 1 } },
    });
  }
  const leftAt = underWay ? await reachAnew(tx, underWay, plan) : new Map<string, Date>();
  await tx.dayRoute.deleteMany({
    where: { routeDate: days, ...(underWay && { NOT: await standingRoutes(tx, underWay) }) },
  });
  const isStanding = (route: DayRoute) =>
    route.date === underWay?.date && !underWay.calledOn.includes(route.technicianId);
  await tx.dayRoute.createMany({
    data: plan.routes
      .filter((route) => !isStanding(route))
      .map((route) => ({
        shopId,
        planRunId: runId,
        technicianId: route.technicianId,
        routeDate: dateColumn(route.date),
        leaveAt: (route.date === underWay?.date && leftAt.get(route.technicianId)) || new Date(route.leaveAt),
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
  await tx.planRun.updateMany({
    where: { id: runId },
    data: { plan, totalCents: plan.cost.total, iterations: plan.iterations, version: { increment: 1 } },
  });
}

/** The visit that does each piece of work in the plan. */
function visitsOfWork(plan: WeekPlan, fresh: readonly { id: string; visit: PlannedVisit }[]): Map<string, string> {
  const idOf = new Map(fresh.map(({ id, visit }) => [visit, id]));
  return new Map(
    plan.visits.flatMap((visit) =>
      visit.items.map(({ itemId }) => [itemId, visit.promisedVisitId ?? idOf.get(visit)!] as const),
    ),
  );
}

/** What the plan does and nothing did on these days before. */
function newWork(
  { promises, previous }: Register,
  visitOf: ReadonlyMap<string, string>,
  days: { gte: Date; lte: Date },
) {
  const isOn = ({ date }: { readonly date: string }) => dateColumn(date) >= days.gte && dateColumn(date) <= days.lte;
  const before = new Set([...promises, ...previous].filter(isOn).flatMap(({ itemIds }) => itemIds));
  return new Set([...visitOf.keys()].filter((itemId) => !before.has(itemId)));
}

/** Begun visits that have no place in the plan: what is left of their work is planned anew, or stays due. */
async function leaveBegun(tx: Tx, visits: Prisma.VisitWhereInput): Promise<void> {
  const begun = await tx.visit.findMany({
    where: {
      AND: [visits, BEGUN, { state: { in: ['proposed', 'confirmed'] }, visitItems: { some: { state: 'planned' } } }],
    },
    select: { id: true },
  });
  const ids = begun.map(({ id }) => id);
  await reopenCalls(tx, { id: { in: ids } });
  await tx.visitItem.deleteMany({ where: { visitId: { in: ids }, state: 'planned' } });
  await tx.visit.updateMany({
    where: { id: { in: ids } },
    data: { reason: 'It was begun. What was left of its work was planned anew.', version: { increment: 1 } },
  });
}

/** Why a visit that was promised or held fast is no more. */
function whyUnkept(isPromised: boolean, hasWork: boolean): string {
  if (!hasWork) return 'Nothing of its work was left to do when the week was planned again.';
  return isPromised
    ? 'Its promise could not be kept when the week was planned again.'
    : 'It could not stay where it was held fast when the week was planned again.';
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
