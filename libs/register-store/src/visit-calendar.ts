import type { Calendar, CalendarEntry } from '@deckround/calendar';
import type { Prisma, Tx } from '@deckround/store';

const DAY_MS = 86_400_000;
/** How long after its day a visit stays in a calendar; a cancelled one goes sooner. */
const KEPT_MS = 90 * DAY_MS;
const CANCELLED_KEPT_MS = 14 * DAY_MS;

type Row = Prisma.CalendarEntryGetPayload<{ include: { site: true } }>;

/** Entries of visits that are gone, and too long ago for any calendar, are dropped, across shops. @returns how many */
export async function dropOldEntries(tx: Tx, now: Date): Promise<number> {
  const before = new Date(now.getTime() - KEPT_MS);
  const { count } = await tx.calendarEntry.deleteMany({ where: { visitId: null, startAt: { lt: before } } });
  return count;
}

/** The visits of a technician, under the names of their sites; what went to somebody else is there as cancelled. */
export async function technicianCalendar(tx: Tx, technicianId: string, now: Date): Promise<Calendar> {
  const technician = await tx.technician.findUniqueOrThrow({ where: { id: technicianId } });
  const rows = await entriesWhere(tx, { technicianId }, now);
  return {
    name: technician.name,
    timeZone: technician.timeZone,
    entries: await withWork(tx, rows, (row) => row.site.name),
  };
}

/** The visits of a site, under the shop's name. */
export async function siteCalendar(tx: Tx, siteId: string, now: Date): Promise<Calendar> {
  const site = await tx.site.findUniqueOrThrow({ where: { id: siteId }, include: { shop: true } });
  const rows = await entriesWhere(tx, { siteId, isCurrent: true }, now);
  return {
    name: site.name,
    timeZone: site.timeZone,
    entries: await withWork(tx, rows, () => site.shop.name),
  };
}

/** One visit, for its site; null when it is gone. */
export async function visitCalendar(tx: Tx, visitId: string): Promise<Calendar | null> {
  const row = await tx.calendarEntry.findFirst({ where: { visitId }, include: { site: { include: { shop: true } } } });
  if (!row) return null;
  const { name, timeZone, shop } = row.site;
  return { name, timeZone, entries: await withWork(tx, [row], () => shop.name) };
}

function entriesWhere(tx: Tx, whose: Prisma.CalendarEntryWhereInput, now: Date): Promise<Row[]> {
  const since = (ms: number) => ({ gte: new Date(now.getTime() - ms) });
  return tx.calendarEntry.findMany({
    where: {
      ...whose,
      OR: [
        { status: { not: 'cancelled' }, startAt: since(KEPT_MS) },
        { status: 'cancelled', startAt: since(CANCELLED_KEPT_MS) },
      ],
    },
    include: { site: true },
    orderBy: [{ startAt: 'asc' }, { uid: 'asc' }],
  });
}

/** What is to be done, machine by machine. Gate notes and other words for the shop alone stay out. */
async function withWork(tx: Tx, rows: readonly Row[], titleOf: (row: Row) => string): Promise<CalendarEntry[]> {
  const items = await tx.visitItem.findMany({
    where: { visitId: { in: rows.flatMap((row) => row.visitId ?? []) } },
    include: { machine: true },
    orderBy: [{ machine: { code: 'asc' } }, { title: 'asc' }, { id: 'asc' }],
  });
  const workOf = new Map<string, Map<string, string[]>>();
  for (const { visitId, machine, title } of items) {
    const machines = workOf.get(visitId) ?? new Map<string, string[]>();
    workOf.set(visitId, machines.set(machine.code, [...(machines.get(machine.code) ?? []), title]));
  }
  return rows.map((row) => {
    const machines = workOf.get(row.visitId ?? '') ?? new Map<string, string[]>();
    return {
      uid: row.uid,
      sequence: row.sequence,
      changedAt: row.changedAt,
      start: row.startAt,
      end: row.endAt,
      status: row.status as CalendarEntry['status'],
      summary: [titleOf(row), ...(machines.size > 0 ? [[...machines.keys()].join(', ')] : [])].join(': '),
      description: [...machines].map(([code, titles]) => `${code}: ${titles.join(', ')}`).join('\n'),
      place: { name: row.site.name, latitude: row.site.latitude, longitude: row.site.longitude },
    };
  });
}
