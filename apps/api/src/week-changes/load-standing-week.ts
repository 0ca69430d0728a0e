import { createHash } from 'node:crypto';
import {
  type PlanningItem,
  type PlanningSnapshot,
  type StandingVisit,
  type StandingWeek,
  standingWeek,
} from '@deckround/planning';
import { DomainError } from '@deckround/platform';
import {
  fallsDueAgain,
  hindranceOf,
  inUse,
  machineItemId,
  type Register,
  roadCallItem,
  roadCallItemId,
  type StartedDay,
  standingSnapshot,
  stopgapItemId,
} from '@deckround/register';
import {
  BEGUN,
  dateColumn,
  dateText,
  loadRegister,
  placedVisit,
  visitItemKey,
  wallClockOf,
} from '@deckround/register-store';
import type { Tx } from '@deckround/store';
import { planAround, plansOf } from '../planning/plans-of-days.js';
import { VISIT_INCLUDE, type VisitRow } from '../planning/visit-view.js';
import { plannedSnapshot } from './planned-snapshot.js';

/** A planned week as it stands in the database now, and the rows behind it. */
export interface LoadedWeek {
  runId: string;
  week: StandingWeek;
  /** The days of the plan that no newer plan has taken over: only they are looked at. */
  days: string[];
  /** Visits begun today or done, which no change touches. */
  begun: VisitRow[];
  visits: Map<string, VisitRow>;
  /** Changes with any visit of the week. */
  stamp: string;
}

/**
 * The week around a date as it is planned now. What has begun or is over is taken out; people, access, parts and calls
 * are as they are now.
 *
 * @throws DomainError plan-not-ready when no plan covers the date
 */
export async function loadStandingWeek(tx: Tx, date: string, now: Date): Promise<LoadedWeek> {
  const plan = await planAround(tx, date);
  if (plan === null) throw new DomainError('plan-not-ready', `No plan covers ${date}: plan its week first.`);
  const { runId, days } = plan;
  const planned = await plannedSnapshot(tx, runId);
  const lastDate = days.at(-1)!;
  const register = inUse(await loadRegister(tx, false), lastDate);
  const zoneOf = new Map(register.sites.map((site) => [site.id, site.timeZone]));
  const rows = await tx.visit.findMany({
    where: {
      visitDate: { in: days.map(dateColumn) },
      state: { not: 'cancelled' },
    },
    include: VISIT_INCLUDE,
    orderBy: [{ startAt: 'asc' }, { id: 'asc' }],
  });
  const isOver = wallClockOf(now, planned.zone).slice(0, 10) > lastDate;
  const isAway = (row: VisitRow) => hindranceOf(register, placedVisit(row)) === 'technician-away';
  // Whoever is away has begun nothing: the visit can still go to somebody else.
  const recorded = new Set(
    (await tx.visit.findMany({ where: { id: { in: rows.map(({ id }) => id) }, ...BEGUN }, select: { id: true } })).map(
      ({ id }) => id,
    ),
  );
  const hasBegun = (row: VisitRow) =>
    row.state === 'done' || recorded.has(row.id) || (!isOver && row.startAt <= now && !isAway(row));
  const begun = rows.filter(hasBegun);
  const standing = rows.filter((row) => !hasBegun(row));
  // What a finished visit skipped is due as before, and may stand in another by now.
  const closed = new Set(
    begun.flatMap((row) => row.visitItems.filter(({ state }) => state !== 'skipped').map(visitItemKey)),
  );
  const follows = new Map(planned.items.map((item) => [item.id, item.follows]));
  for (const each of await tx.completion.findMany({
    where: { doneOn: { gte: dateColumn(planned.asOf) } },
    include: { slot: true },
  })) {
    const itemId = machineItemId(each.machineId, each.itemCode, each.slot?.name ?? null);
    // What the plan counted as done before it closes nothing.
    if (dateText(each.doneOn) > (follows.get(itemId) ?? '')) closed.add(itemId);
  }
  // Calls and stopgaps that the desk has closed stand in no visit: the plan knows of them still.
  const open = new Set([
    ...register.roadCalls.map(({ id }) => roadCallItemId(id)),
    ...register.stopgaps.map(({ id }) => stopgapItemId(id)),
  ]);
  for (const { id } of planned.items) if (!fallsDueAgain(id) && !open.has(id)) closed.add(id);
  const span = { asOf: wallClockOf(now, planned.zone).slice(0, 10), firstDate: planned.firstDate, days: planned.days };
  const calls = register.roadCalls.map((call) => roadCallItem(call, span)).filter((item) => !closed.has(item.id));
  const known = new Set([...planned.items, ...calls].map((item) => item.id));
  const standsAt = new Map(register.machines.map((machine) => [machine.id, machine.siteId]));
  const workOf = (row: VisitRow) => row.visitItems.filter((item) => standsAt.get(item.machineId) === row.siteId);
  const found = standing.flatMap((row) =>
    workOf(row).flatMap((item) => (known.has(visitItemKey(item)) ? [] : [foundItem(item, planned)])),
  );
  const snapshot = standingSnapshot(register, planned, {
    days,
    wallClock: (zone) => wallClockOf(now, zone).slice(0, 16),
    started: await startedDays(tx, begun, register.technicians, now),
    closedItemIds: closed,
    added: [...calls, ...found],
  });
  const week = standingWeek(
    snapshot,
    standing.map((row) => standingVisit(row, workOf(row), zoneOf.get(row.siteId)!)),
  );
  return {
    runId,
    week,
    days,
    begun,
    visits: new Map(rows.map((row) => [row.id, row])),
    stamp: stampOf(runId, rows, begun, register),
  };
}

/** The first day from a date on that a plan covers, if it comes by the latest date given. */
export async function plannedDayFrom(tx: Tx, date: string, latest: string): Promise<string | null> {
  const days = (await plansOf(tx, date, latest)).map(({ from }) => (from > date ? from : date));
  return days.sort()[0] ?? null;
}

/** @param work what is left to do of it where it stands */
function standingVisit(row: VisitRow, work: VisitRow['visitItems'], zone: string): StandingVisit {
  const clock = (instant: Date) => wallClockOf(instant, zone).slice(11, 16);
  const slot = { from: clock(row.promisedFrom ?? row.startAt), to: clock(row.promisedTo ?? row.startAt) };
  return {
    visitId: row.id,
    siteId: row.siteId,
    technicianId: row.technicianId,
    date: dateText(row.visitDate),
    itemIds: work.map(visitItemKey),
    heldAt: row.pinned ? clock(row.startAt) : null,
    announced: row.state === 'confirmed' ? { ...slot, moveCents: row.moveCents } : null,
  };
}

/** Work added to a visit that the plan did not know: it stays with its visit and costs nothing to be on time. */
function foundItem(item: VisitRow['visitItems'][number], planned: PlanningSnapshot): PlanningItem {
  return {
    id: visitItemKey(item),
    machineId: item.machineId,
    code: item.code,
    title: item.title,
    minutes: item.minutes,
    skill: null,
    parts: [],
    consumables: [],
    preparations: [],
    releaseDate: null,
    mustDo: true,
    timingCostCents: new Array<number>(planned.days).fill(0),
    deferralCents: 0,
    dueP10: null,
    dueP50: null,
    dueP90: null,
    because: item.reason,
  };
}

/** Where everybody is now: at the last visit begun today. */
async function startedDays(
  tx: Tx,
  begun: readonly VisitRow[],
  technicians: readonly { id: string; timeZone: string }[],
  now: Date,
): Promise<StartedDay[]> {
  const days: StartedDay[] = [];
  for (const { id, timeZone } of technicians) {
    const today = wallClockOf(now, timeZone).slice(0, 10);
    const last = begun.findLast((row) => row.technicianId === id && dateText(row.visitDate) === today);
    if (!last) continue;
    const ends = last.finishedAt ?? last.endAt;
    const route = await tx.dayRoute.findFirst({ where: { technicianId: id, routeDate: dateColumn(today) } });
    days.push({
      technicianId: id,
      siteId: last.siteId,
      freeAt: wallClockOf(ends > now ? ends : now, timeZone).slice(11, 16),
      lunchTaken: route?.lunchFrom !== null && route?.lunchFrom !== undefined && route.lunchFrom <= now,
    });
  }
  return days;
}

/** Changes with the visits, and with whatever else of the shop a price goes by. */
function stampOf(
  runId: string,
  rows: readonly VisitRow[],
  begun: readonly VisitRow[],
  { shop, sites, technicians, machines, classes, parts, stopgaps, bars, events }: Register,
): string {
  const facts = rows.map((row) => [row.id, row.version, row.state]);
  const terms = { shop, sites, technicians, machines, classes, parts, stopgaps, bars, events };
  return createHash('sha256')
    .update(JSON.stringify([runId, facts, begun.map((row) => row.id), terms]))
    .digest('hex')
    .slice(0, 32);
}
