import { type NamedDraft, type PlanChange, type PlannedVisit, reportRoute } from '@deckround/planning';
import { DomainError } from '@deckround/platform';
import { dateColumn, dateText, visitItemKey } from '@deckround/register-store';
import { emitEvent, type Tx } from '@deckround/store';
import type { Actor } from '../access/actor.js';
import type { VisitRow } from '../planning/visit-view.js';
import type { LoadedWeek } from './load-standing-week.js';

export interface WeekChange {
  kind: 'move' | 'road-call';
  draft: NamedDraft;
  change: PlanChange;
  /** The visit that the change puts somewhere, and whether it is held fast there. */
  pin?: { visitId: string; pinned: boolean };
}

/**
 * Writes a changed week: visits take their new times, technicians and items, new ones are made, dropped ones cancelled,
 * day routes and load lists follow, and the change is kept with its price. The caller's transaction makes it one.
 *
 * @returns ids of the visits made
 */
export async function writeWeekChange(
  tx: Tx,
  actor: Actor,
  loaded: LoadedWeek,
  { kind, draft, change, pin }: WeekChange,
  now: Date,
): Promise<string[]> {
  const { shopId } = actor;
  const { instance } = loaded.week;
  const broken = new Set(change.visits.flatMap((visit) => (visit.breaksPromise ? [visit.visitId] : [])));
  const items = new Map(
    [...loaded.visits.values()].flatMap((visit) => visit.visitItems.map((item) => [visitItemKey(item), item] as const)),
  );
  const made: string[] = [];
  const reports = new Map<number, ReturnType<typeof reportRoute>>();
  for (const [v, visits] of draft.entries()) {
    if (visits === loaded.week.draft[v]) continue;
    const report = reportRoute(instance, draft, v);
    reports.set(v, report);
    for (const [k, planned] of (report?.visits ?? []).entries()) {
      const { visitId } = visits[k]!;
      const before = visitId === null ? null : loaded.visits.get(visitId)!;
      const pinned = pin && pin.visitId === visitId ? pin.pinned : (before?.pinned ?? false);
      const id = await writeVisit(tx, shopId, loaded.runId, planned, before, {
        pinned,
        isBroken: visitId !== null && broken.has(visitId),
      });
      if (before !== null && isMoved(before, planned)) {
        const told = { visitId: id, siteId: planned.siteId, startAt: planned.startAt, breaksPromise: broken.has(id) };
        await emitEvent(tx, shopId, 'visit.moved', told, now);
      }
      if (before === null) made.push(id);
      await writeItems(tx, shopId, id, planned, items, instance.snapshot.items);
    }
  }
  for (const { visitId, what, workTo } of change.visits) {
    if (what !== 'dropped') continue;
    const dropped = loaded.visits.get(visitId!)!;
    if (dropped.state === 'confirmed') {
      const told = { visitId, siteId: dropped.siteId, workTo: await visitsOfWork(tx, dropped) };
      await emitEvent(tx, shopId, 'visit.cancelled', told, now);
    }
    await tx.visit.update({
      where: { id: visitId! },
      data: {
        ...{ state: 'cancelled', pinned: false, promisedFrom: null, promisedTo: null },
        reason:
          workTo.length > 0
            ? 'Another visit took its work when the week was changed.'
            : 'It was given up when the week was changed.',
        version: { increment: 1 },
      },
    });
  }
  for (const [v, report] of reports) await writeDayRoute(tx, shopId, loaded, v, report);
  await leaveDays(tx, shopId, loaded, draft);
  await tx.weekChange.create({
    data: {
      shopId,
      planRunId: loaded.runId,
      kind,
      madeAt: now,
      madeBy: actor.kind === 'person' ? actor.id : null,
      cents: change.cents.total,
      change: change as object,
    },
  });
  return made;
}

/** Other visits that do work of a visit by now. */
async function visitsOfWork(tx: Tx, { id, visitItems }: VisitRow): Promise<string[]> {
  const rows = await tx.visitItem.findMany({
    where: { id: { in: visitItems.map((item) => item.id) }, visitId: { not: id } },
    distinct: ['visitId'],
    select: { visitId: true },
  });
  return rows.map(({ visitId }) => visitId);
}

/** Another time or technician for a visit that the customer was promised. */
function isMoved(before: VisitRow, planned: PlannedVisit): boolean {
  return (
    before.state === 'confirmed' &&
    (before.technicianId !== planned.technicianId || before.startAt.getTime() !== new Date(planned.startAt).getTime())
  );
}

async function writeVisit(
  tx: Tx,
  shopId: string,
  planRunId: string,
  planned: PlannedVisit,
  before: VisitRow | null,
  { pinned, isBroken }: { pinned: boolean; isBroken: boolean },
): Promise<string> {
  const data = {
    technicianId: planned.technicianId,
    visitDate: dateColumn(planned.date),
    driveMinutes: planned.driveMinutes,
    arriveAt: new Date(planned.arriveAt),
    startAt: new Date(planned.startAt),
    endAt: new Date(planned.endAt),
    setupMinutes: planned.setupMinutes,
    preparationMinutes: planned.preparationMinutes,
    marginalCents: planned.marginalCents,
    reason: isBroken ? `Its promise was given up: the customer has to be told. ${planned.reason}` : planned.reason,
    pinned,
  };
  if (before === null) {
    const row = await tx.visit.create({ data: { shopId, planRunId, siteId: planned.siteId, ...data } });
    return row.id;
  }
  await tx.visit.update({
    where: { id: before.id },
    data: {
      ...data,
      ...(isBroken && { state: 'proposed', promisedFrom: null, promisedTo: null }),
      version: { increment: 1 },
    },
  });
  return before.id;
}

/** Items keep their rows, also when they go to another visit: a technician's phone may hold on to them. */
async function writeItems(
  tx: Tx,
  shopId: string,
  visitId: string,
  planned: PlannedVisit,
  rows: ReadonlyMap<string, VisitRow['visitItems'][number]>,
  sources: readonly { id: string; code: string; title: string }[],
): Promise<void> {
  for (const { itemId, machineId, role, minutes, sharedMinutes, timingCents, waitingCents, reason } of planned.items) {
    const data = { visitId, role, minutes, sharedMinutes, timingCents, waitingCents, reason };
    const row = rows.get(itemId);
    if (row) {
      await tx.visitItem.update({ where: { id: row.id }, data });
      continue;
    }
    const call = /^road-call\/(.+)$/.exec(itemId)?.[1];
    if (call === undefined)
      throw new DomainError('conflict', 'The plan has changed meanwhile: look at the week again, then repeat.');
    const { code, title } = sources.find((each) => each.id === itemId)!;
    await tx.visitItem.create({ data: { shopId, machineId, roadCallId: call, code, title, ...data } });
  }
}

/** Days on which visits that could not stand there stood until now. */
async function leaveDays(tx: Tx, shopId: string, loaded: LoadedWeek, draft: NamedDraft): Promise<void> {
  const { instance, homeless } = loaded.week;
  const placed = new Set(draft.flat().map((visit) => visit.visitId));
  for (const { visitId } of homeless) {
    if (!placed.has(visitId)) continue;
    const { technicianId, visitDate } = loaded.visits.get(visitId!)!;
    const v = instance.technicianDays.findIndex(
      (day) => day.date === dateText(visitDate) && instance.snapshot.technicians[day.technician]!.id === technicianId,
    );
    if (v < 0) await dropIfEmpty(tx, technicianId, visitDate);
    else if (draft[v] === loaded.week.draft[v])
      await writeDayRoute(tx, shopId, loaded, v, reportRoute(instance, draft, v));
  }
}

/** A day of which visits are left that nobody can make keeps its route: else they would be on no screen. */
async function dropIfEmpty(tx: Tx, technicianId: string, routeDate: Date): Promise<void> {
  const left = await tx.visit.count({ where: { technicianId, visitDate: routeDate, state: { not: 'cancelled' } } });
  if (left === 0) await tx.dayRoute.deleteMany({ where: { technicianId, routeDate } });
}

/** The technician's day as a whole, what has begun included. */
async function writeDayRoute(
  tx: Tx,
  shopId: string,
  { runId, week, begun }: LoadedWeek,
  v: number,
  report: ReturnType<typeof reportRoute>,
): Promise<void> {
  const day = week.instance.technicianDays[v]!;
  const technicianId = week.instance.snapshot.technicians[day.technician]!.id;
  const routeDate = dateColumn(day.date);
  const where = { technicianId, routeDate };
  const standing = await tx.dayRoute.findFirst({ where });
  const before = begun.filter(
    (visit) => visit.technicianId === technicianId && visit.visitDate.getTime() === routeDate.getTime(),
  );
  if (report === null && before.length === 0) return dropIfEmpty(tx, technicianId, routeDate);
  await tx.dayRoute.deleteMany({ where });
  const route = report?.route;
  const minutesOf = (visit: VisitRow) => Math.round((visit.endAt.getTime() - visit.startAt.getTime()) / 60_000);
  const driven = before.reduce((sum, visit) => sum + visit.driveMinutes, 0);
  const worked = before.reduce((sum, visit) => sum + minutesOf(visit), 0);
  const leaveAt = before.length > 0 && standing ? standing.leaveAt : new Date(route!.leaveAt);
  const returnAt = route ? new Date(route.returnAt) : standing!.returnAt;
  const lunch = route?.lunch
    ? { lunchFrom: new Date(route.lunch.from), lunchTo: new Date(route.lunch.to) }
    : before.length > 0
      ? { lunchFrom: standing?.lunchFrom ?? null, lunchTo: standing?.lunchTo ?? null }
      : { lunchFrom: null, lunchTo: null };
  const driveMinutes = (route?.driveMinutes ?? 0) + driven;
  const workMinutes = (route?.workMinutes ?? 0) + worked;
  const lunchMinutes =
    lunch.lunchFrom && lunch.lunchTo ? (lunch.lunchTo.getTime() - lunch.lunchFrom.getTime()) / 60_000 : 0;
  const away = (returnAt.getTime() - leaveAt.getTime()) / 60_000;
  await tx.dayRoute.create({
    data: {
      ...{ shopId, planRunId: runId, technicianId, routeDate, leaveAt, returnAt, ...lunch },
      ...{ driveMinutes, workMinutes },
      driveMetres: route?.driveMetres ?? standing?.driveMetres ?? 0,
      waitMinutes: Math.max(0, Math.round(away - driveMinutes - workMinutes - lunchMinutes)),
      overtimeMinutes: route?.overtimeMinutes ?? 0,
      load: mergedLoad(before.length > 0 ? (standing?.load as Load) : [], route?.load ?? []),
    },
  });
}

type Load = { partId: string | null; name: string; unit: string }[];

/** What was loaded in the morning, and what has come on top. */
function mergedLoad(loaded: Load, needed: Load): Load {
  const keyOf = (line: Load[number]) => `${line.partId}|${line.name}|${line.unit}`;
  const known = new Set(loaded.map(keyOf));
  return [...loaded, ...needed.filter((line) => !known.has(keyOf(line)))];
}
