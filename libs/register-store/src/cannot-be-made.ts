import { addDays, type Hindrance, hindranceOf, type PlacedVisit } from '@deckround/register';
import type { Prisma, Tx } from '@deckround/store';
import { loadCalendars } from './load-register.js';
import { dateColumn, dateText, wallClockOf } from './local-time.js';

/** A row of `visit`. */
type Row = Prisma.VisitGetPayload<object>;

/**
 * Visits from today on that nobody can make where they stand, since people, access or bars have changed after they were
 * planned. They stay until the week is planned again or they are moved. One that has begun is only in question when its
 * technician is away.
 */
export async function cannotBeMade(
  tx: Tx,
  rows: readonly Row[],
  now: Date,
): Promise<{ visitId: string; why: Hindrance }[]> {
  const { timeZone } = await tx.shop.findFirstOrThrow({ select: { timeZone: true } });
  const today = wallClockOf(now, timeZone).slice(0, 10);
  const open = rows.filter((row) => row.state !== 'done' && dateText(row.visitDate) >= today);
  if (open.length === 0) return [];
  const calendars = await loadCalendars(
    tx,
    open.map((row) => row.siteId),
  );
  return open.flatMap((row) => {
    const why = hindranceOf(calendars, placedVisit(row));
    return why === null || (row.startAt <= now && why !== 'technician-away') ? [] : [{ visitId: row.id, why }];
  });
}

/** How many visits before a date are among them. */
export async function countUnmadeBefore(tx: Tx, date: string, now: Date): Promise<number> {
  // A day more than the shop's own: a visit of today has another date elsewhere.
  const from = dateColumn(addDays(dateText(now), -1));
  const rows = await tx.visit.findMany({
    where: { state: { in: ['proposed', 'confirmed'] }, visitDate: { gte: from, lt: dateColumn(date) } },
  });
  return (await cannotBeMade(tx, rows, now)).length;
}

/** Where and when a visit stands. */
export function placedVisit({ siteId, technicianId, visitDate, startAt, endAt }: Row): PlacedVisit {
  const time = (instant: Date, zone: string) => wallClockOf(instant, zone).slice(11, 16);
  return {
    ...{ siteId, technicianId, date: dateText(visitDate) },
    clock: (zone) => ({ from: time(startAt, zone), to: time(endAt, zone) }),
  };
}
