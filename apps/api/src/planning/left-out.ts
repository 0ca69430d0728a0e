import type { LeftOutItem } from '@deckround/contracts';
import type { LeftOut, WeekPlan } from '@deckround/planning';
import { DomainError } from '@deckround/platform';
import {
  addDays,
  machineItemId,
  roadCallItemId,
  roadCallTitle,
  stopgapItemId,
  stopgapTitle,
} from '@deckround/register';
import type { Tx } from '@deckround/store';
import type { z } from 'zod';
import { readCursor, writeCursor } from '../http/paging.js';
import { daysOf } from './plans-of-days.js';
import { planOfWeek, standingWork } from './week-as-planned.js';

/** As many as a week tells of by itself: a crowded shop leaves thousands. */
const FIRST = 12;

/** What the plan left out, or was planned and has lost its visit since. */
type LeftNow = Omit<LeftOut, 'code'> & { readonly code: LeftOut['code'] | 'given-up' };

/** A plan, and the work that stands in the visits of its days now. */
interface PlannedRun {
  readonly id: string;
  readonly plan: unknown;
  readonly standing: ReadonlySet<string>;
}

/** What a plan left out as the week tells it: how much, at what price, and the first of it. */
export async function leftOutOfWeek(tx: Tx, run: PlannedRun | null) {
  const all = run === null ? [] : await dearestFirst(tx, run);
  const page = run === null ? { items: [], next: null } : await pageFrom(tx, run.id, all, 0, FIRST);
  return {
    leftOut: page.items,
    leftOutCount: all.length,
    leftOutCents: all.reduce((sum, each) => sum + each.cents, 0),
    leftOutNext: page.next,
  };
}

/**
 * A page of what a week's plan left out. A cursor goes on with the plan it was given for, also when the week has been
 * planned again meanwhile.
 */
export async function leftOutPage(tx: Tx, weekOf: string, cursorText: string | undefined, limit: number) {
  const cursor = readCursor(cursorText);
  const days = cursor ? await daysOf(tx, cursor.id) : await planOfWeek(tx, weekOf);
  const isOther = days === null || days.to < weekOf || days.from > addDays(weekOf, 6);
  if (cursor && (isOther || !/^\d{1,9}$/.test(cursor.key)))
    throw new DomainError('invalid-input', 'The cursor does not belong to this list: start again without it.');
  if (days === null) return { items: [], next: null };
  const { plan } = await tx.planRun.findUniqueOrThrow({ where: { id: days.runId }, select: { plan: true } });
  const run = { id: days.runId, plan, standing: await standingWork(tx, days) };
  return pageFrom(tx, run.id, await dearestFirst(tx, run), Number(cursor?.key ?? 0), limit);
}

async function pageFrom(tx: Tx, runId: string, all: readonly LeftNow[], from: number, limit: number) {
  const rows = all.slice(from, from + limit);
  const titles = await titlesOf(
    tx,
    rows.map((each) => each.itemId),
  );
  return {
    items: rows.map(
      (each): z.infer<typeof LeftOutItem> => ({
        ...each,
        ...(titles.get(each.itemId) ?? { machineId: null, title: each.itemId }),
      }),
    ),
    next: from + limit < all.length ? writeCursor({ key: String(from + limit), id: runId }) : null,
  };
}

/** What must be done comes first: it is no choice of price. */
async function dearestFirst(tx: Tx, { plan, standing }: PlannedRun): Promise<LeftNow[]> {
  const { leftOut = [], visits = [] } = (plan ?? {}) as Partial<WeekPlan>;
  const givenUp = visits.flatMap((visit) =>
    visit.items
      .filter(({ itemId }) => !standing.has(itemId))
      .map(
        ({ itemId, role, waitingCents }): LeftNow => ({
          itemId,
          mustDo: role === 'must-do',
          cents: Math.max(0, waitingCents),
          code: 'given-up',
          reason: 'Its visit was given up after the week was planned.',
        }),
      ),
  );
  const left = [...leftOut.filter(({ itemId }) => !standing.has(itemId)), ...givenUp];
  const closed = await closedOf(
    tx,
    left.map(({ itemId }) => itemId),
  );
  return left
    .filter(({ itemId }) => !closed.has(itemId))
    .toSorted((a, b) => Number(b.mustDo) - Number(a.mustDo) || b.cents - a.cents);
}

/** Calls and stopgaps closed at the desk: nothing of them is left out. */
async function closedOf(tx: Tx, itemIds: readonly string[]): Promise<Set<string>> {
  const ids = (itemId: (id: string) => string) => ({ in: idsAfter(itemIds, itemId('')) });
  const [calls, stopgaps] = [
    await tx.roadCall.findMany({ where: { id: ids(roadCallItemId), state: 'closed' }, select: { id: true } }),
    await tx.stopgap.findMany({ where: { id: ids(stopgapItemId), closedOn: { not: null } }, select: { id: true } }),
  ];
  return new Set([...calls.map(({ id }) => roadCallItemId(id)), ...stopgaps.map(({ id }) => stopgapItemId(id))]);
}

function idsAfter(itemIds: readonly string[], prefix: string): string[] {
  return itemIds.filter((id) => id.startsWith(prefix)).map((id) => id.slice(prefix.length));
}

/** What a left-out item is called: a call and a stopgap by their own words, service by the newest forecast. */
async function titlesOf(
  tx: Tx,
  itemIds: readonly string[],
): Promise<Map<string, { machineId: string; title: string }>> {
  const machineIds = [...new Set(itemIds.map((id) => id.split('/')[0]!))].filter((id) => /^[0-9a-f-]{36}$/.test(id));
  const [forecasts, calls, stopgaps] = [
    await tx.dueForecast.findMany({
      where: { machineId: { in: machineIds }, stopgapId: null },
      select: { machineId: true, code: true, slot: true, title: true },
    }),
    await tx.roadCall.findMany({ where: { id: { in: idsAfter(itemIds, roadCallItemId('')) } } }),
    await tx.stopgap.findMany({ where: { id: { in: idsAfter(itemIds, stopgapItemId('')) } } }),
  ];
  return new Map(
    [
      ...forecasts.map((row) => ({ id: machineItemId(row.machineId, row.code, row.slot), ...row })),
      ...calls.map((row) => ({ ...row, id: roadCallItemId(row.id), title: roadCallTitle(row.symptom) })),
      ...stopgaps.map((row) => ({ ...row, id: stopgapItemId(row.id), title: stopgapTitle(row.description) })),
    ].map(({ id, machineId, title }) => [id, { machineId, title }]),
  );
}
