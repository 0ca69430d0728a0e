import type { VisitHindrance } from '@deckround/contracts';
import { weekdayOf } from '@deckround/register';
import { dateColumn, dateText, wallClockOf } from '@deckround/register-store';
import type { Tx } from '@deckround/store';
import type { VisitRow } from './visit-view.js';

/**
 * Visits from today on that nobody can make where they stand, since people, access or bars have changed after they were
 * planned. They stay until the week is planned again or they are moved. Whether times still fit a day is not looked at.
 */
export async function cannotBeMade(tx: Tx, rows: readonly VisitRow[], now: Date) {
  const { timeZone } = await tx.shop.findFirstOrThrow({ select: { timeZone: true } });
  const today = wallClockOf(now, timeZone).slice(0, 10);
  const open = rows.filter((row) => row.state !== 'done' && dateText(row.visitDate) >= today);
  if (open.length === 0) return [];
  const dates = open.map((row) => dateText(row.visitDate)).sort();
  const span = { from: dateColumn(dates[0]!), to: dateColumn(dates.at(-1)!) };
  const during = { fromDate: { lte: span.to }, toDate: { gte: span.from } };
  const siteId = { in: [...new Set(open.map((row) => row.siteId))] };
  const technicians = await tx.technician.findMany({
    where: { id: { in: [...new Set(open.map((row) => row.technicianId))] } },
    include: { technicianShifts: true, technicianAbsences: { where: during } },
  });
  const sites = await tx.site.findMany({
    where: { id: siteId },
    include: { siteAccessWindows: true, siteBlackouts: { where: during } },
  });
  const events = await tx.siteEvent.findMany({ where: { siteId, eventDate: { gte: span.from, lte: span.to } } });
  const bars = await tx.visitBar.findMany({ where: { siteId } });
  const covers = (date: Date) => (range: { fromDate: Date; toDate: Date }) =>
    range.fromDate <= date && date <= range.toDate;

  const hindranceOf = ({ visitDate, ...row }: VisitRow): VisitHindrance | null => {
    const weekday = weekdayOf(dateText(visitDate));
    const technician = technicians.find((each) => each.id === row.technicianId);
    const isOff = !technician?.active || technician.technicianShifts.every((shift) => shift.weekday !== weekday);
    if (technician?.technicianAbsences.some(covers(visitDate))) return 'technician-away';
    if (isOff) return 'technician-off';
    const site = sites.find((each) => each.id === row.siteId)!;
    const minuteOf = (instant: Date) => {
      const [hour, minute] = wallClockOf(instant, site.timeZone).slice(11, 16).split(':').map(Number);
      return 60 * hour! + minute!;
    };
    const [from, to] = [minuteOf(row.startAt), minuteOf(row.endAt)];
    const isOpen = site.siteAccessWindows.some(
      (window) => window.weekday === weekday && window.openMinute <= from && to <= window.closeMinute,
    );
    const isEvent = events.some(
      (event) => event.siteId === site.id && event.eventDate.getTime() === visitDate.getTime() && event.fromMinute < to,
    );
    if (!isOpen || isEvent || site.siteBlackouts.some(covers(visitDate))) return 'site-closed';
    const isBarred = bars.some(
      (bar) =>
        bar.siteId === site.id &&
        (bar.technicianId === null || bar.technicianId === row.technicianId) &&
        (bar.barDate === null || bar.barDate.getTime() === visitDate.getTime()),
    );
    return isBarred ? 'barred' : null;
  };
  return open.flatMap((row) => {
    const why = hindranceOf(row);
    return why === null ? [] : [{ visitId: row.id, why }];
  });
}
