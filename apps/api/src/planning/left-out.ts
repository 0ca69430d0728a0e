import type { LeftOutItem } from '@deckround/contracts';
import type { LeftOut, WeekPlan } from '@deckround/planning';
import { DomainError } from '@deckround/platform';
import { dateColumn } from '@deckround/register-store';
import type { Tx } from '@deckround/store';
import type { z } from 'zod';
import { readCursor, writeCursor } from '../http/paging.js';

/** As many as a week tells of by itself: a crowded shop leaves thousands. */
const FIRST = 12;

interface PlannedRun {
  readonly id: string;
  readonly plan: unknown;
}

/** What a plan left out as the week tells it: how much, at what price, and the first of it. */
export async function leftOutOfWeek(tx: Tx, run: PlannedRun | null) {
  const all = run === null ? [] : dearestFirst(run);
  const page = run === null ? { items: [], next: null } : await pageFrom(tx, run, 0, FIRST);
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
  const run = await tx.planRun.findFirst({
    where: { status: 'done', weekOf: dateColumn(weekOf), ...(cursor && { id: cursor.id }) },
    orderBy: { finishedAt: 'desc' },
    select: { id: true, plan: true },
  });
  if (cursor && (run === null || !/^\d{1,9}$/.test(cursor.key)))
    throw new DomainError('invalid-input', 'The cursor does not belong to this list: start again without it.');
  return run === null ? { items: [], next: null } : pageFrom(tx, run, Number(cursor?.key ?? 0), limit);
}

async function pageFrom(tx: Tx, run: PlannedRun, from: number, limit: number) {
  const all = dearestFirst(run);
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
    next: from + limit < all.length ? writeCursor({ key: String(from + limit), id: run.id }) : null,
  };
}

/** What must be done comes first: it is no choice of price. */
function dearestFirst(run: PlannedRun): LeftOut[] {
  const { leftOut = [] } = (run.plan ?? {}) as Partial<WeekPlan>;
  return leftOut.toSorted((a, b) => Number(b.mustDo) - Number(a.mustDo) || b.cents - a.cents);
}

/** What a left-out item is called, from the newest forecast. */
async function titlesOf(
  tx: Tx,
  itemIds: readonly string[],
): Promise<Map<string, { machineId: string; title: string }>> {
  const machineIds = [...new Set(itemIds.map((id) => id.split('/')[0]!))].filter((id) => /^[0-9a-f-]{36}$/.test(id));
  const rows = await tx.dueForecast.findMany({
    where: { OR: [{ machineId: { in: machineIds } }, { stopgapId: { not: null } }] },
    select: { machineId: true, code: true, slot: true, stopgapId: true, title: true },
  });
  return new Map(
    rows.map((row) => [
      row.stopgapId === null
        ? [row.machineId, row.code, row.slot].filter((part) => part !== null).join('/')
        : `stopgap/${row.stopgapId}`,
      { machineId: row.machineId, title: row.title },
    ]),
  );
}
