import type { Alert } from '@deckround/contracts';
import { clause, priceMoves } from '@deckround/planning';
import { DomainError } from '@deckround/platform';
import { addDays, machineItems, type Register } from '@deckround/register';
import { dateColumn, dateText, visitItemKey, wallClockOf } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';
import type { z } from 'zod';
import { type LoadedWeek, loadStandingWeek } from './load-standing-week.js';

type View = z.infer<typeof Alert>;
type VisitWithSite = Prisma.VisitGetPayload<{ include: { site: true; visitItems: { include: { machine: true } } } }>;
type OpenStopgap = Prisma.StopgapGetPayload<{ include: { machine: { include: { site: true } }; part: true } }>;

/** A stopgap is worth a warning this many days before its limit. */
const NEAR_DAYS = 5;

/** What needs a decision: parts that come too late for the visit or stopgap waiting for them, and limits drawing near. */
export async function alertsOf(tx: Tx, register: Register, now: Date): Promise<View[]> {
  const today = wallClockOf(now, register.shop.timeZone).slice(0, 10);
  const visits = await tx.visit.findMany({
    where: { state: { in: ['proposed', 'confirmed'] }, visitDate: { gte: dateColumn(today) } },
    include: { site: true, visitItems: { include: { machine: true } } },
    orderBy: [{ startAt: 'asc' }, { id: 'asc' }],
  });
  const weeks = new Map<string, LoadedWeek | null>();
  return [
    ...(await movesAsked(tx, weeks, now)),
    ...(await lateForVisits(tx, register, weeks, visits, today, now)),
    ...(await stopgapLimits(tx, visits, today)),
  ];
}

/** Wishes of sites that nobody has answered, each with the cheapest place on a day that suits. */
async function movesAsked(tx: Tx, weeks: Map<string, LoadedWeek | null>, now: Date): Promise<View[]> {
  const rows = await tx.visitAnswer.findMany({
    where: { state: 'open' },
    include: { visit: { include: { site: true, visitItems: { include: { machine: true } } } } },
    orderBy: [{ saidAt: 'asc' }, { id: 'asc' }],
  });
  const alerts: View[] = [];
  for (const { visit, ...row } of rows) {
    if (!visit) continue;
    const days = row.days.map(dateText);
    const date = dateText(visit.visitDate);
    const suits = (each: string) => each !== date && (days.length === 0 || days.includes(each));
    // Its own promise may go: the site wishes it.
    const move = await otherPlace(tx, weeks, visit, suits, [visit.id], now);
    const wish = days.length === 0 ? 'another day' : days.join(', ');
    alerts.push({
      kind: 'move-asked',
      siteId: visit.siteId,
      siteName: visit.site.name,
      machineId: null,
      machineCode: null,
      visitId: visit.id,
      stopgapId: null,
      answerId: row.id,
      sentence: `${visit.site.name} asks to move the visit on ${date} to ${wish}: ${row.reason}`,
      choice: move
        ? `Move the visit to ${move.date}, or say why it has to stay.`
        : 'No day that suits is free in the planned week: say so, or plan the week again.',
      clauses: {
        sentence: clause(days.length === 0 ? 'asks-to-move' : 'asks-to-move-to', {
          site: visit.site.name,
          visitDate: date,
          wishDates: days.join(' '),
          reason: row.reason,
        }),
        choice: move ? clause('move-or-say-why', { toDate: move.date }) : clause('no-day-suits'),
      },
      move,
    });
  }
  return alerts;
}

/** Parts are given out in order of visits; whoever finds too few on the shelf that day is warned. */
async function lateForVisits(
  tx: Tx,
  register: Register,
  weeks: Map<string, LoadedWeek | null>,
  visits: readonly VisitWithSite[],
  today: string,
  now: Date,
): Promise<View[]> {
  const itemOf = new Map(machineItems(register).map((item) => [item.id, item]));
  const parts = new Map(register.parts.map((part) => [part.id, part]));
  const stopgaps = new Map(register.stopgaps.map((stopgap) => [stopgap.id, stopgap]));
  const used = new Map<string, number>();
  const alerts: View[] = [];
  for (const visit of visits) {
    const date = dateText(visit.visitDate);
    for (const item of visit.visitItems) {
      const stopgap = item.stopgapId === null ? undefined : stopgaps.get(item.stopgapId);
      const needed = stopgap?.partId
        ? [{ partId: stopgap.partId, quantity: stopgap.partQuantity }]
        : (itemOf.get(visitItemKey(item))?.parts ?? []);
      for (const { partId, quantity } of needed) {
        const part = parts.get(partId);
        if (!part) continue;
        const taken = (used.get(partId) ?? 0) + quantity;
        used.set(partId, taken);
        const there = part.arrivals.reduce((sum, each) => sum + (each.date <= date ? each.quantity : 0), part.onHand);
        if (taken <= there) continue;
        const comes = arrivalOf(part, taken, today);
        const late = comes > date;
        if (!late) continue;
        const move = await otherPlace(tx, weeks, visit, (each) => each >= comes, [], now);
        alerts.push({
          kind: 'part-late-for-visit',
          siteId: visit.siteId,
          siteName: visit.site.name,
          machineId: item.machineId,
          machineCode: item.machine.code,
          visitId: visit.id,
          stopgapId: item.stopgapId,
          answerId: null,
          sentence: `${part.description} for ${item.title} on ${item.machine.code} comes on ${comes}, after the visit on ${date}.`,
          choice: move
            ? `Move the visit to ${move.date}, when the part is there.`
            : `Make the visit without this work, and come again from ${comes}.`,
          clauses: {
            sentence: clause('part-after-visit', {
              part: part.description,
              ...workOf(item),
              machine: item.machine.code,
              comesDate: comes,
              visitDate: date,
            }),
            choice: move
              ? clause('move-to-part', { toDate: move.date })
              : clause('visit-without', { comesDate: comes }),
          },
          move,
        });
      }
    }
  }
  return alerts;
}

/** What the work is called, by the parts that other languages name it from. */
function workOf({ code, slot, title }: { code: string; slot: string | null; title: string }) {
  return { workCode: code, workSlot: slot ?? '', workTitle: title };
}

/** First day on which so many have arrived: on order, or ordered today. */
function arrivalOf(part: Register['parts'][number], quantity: number, today: string): string {
  let have = part.onHand;
  const arrivals = [...part.arrivals].sort((a, b) => (a.date < b.date ? -1 : 1));
  for (const arrival of arrivals) {
    have += arrival.quantity;
    if (have >= quantity) return arrival.date;
  }
  return addDays(today, part.leadDays);
}

/** The cheapest place on a day that will do, with no promise broken but those that may be; null when there is none. */
async function otherPlace(
  tx: Tx,
  weeks: Map<string, LoadedWeek | null>,
  visit: VisitWithSite,
  willDo: (date: string) => boolean,
  mayBreak: readonly string[],
  now: Date,
): Promise<View['move']> {
  const date = dateText(visit.visitDate);
  if (!weeks.has(date)) weeks.set(date, await weekOrNull(tx, date, now));
  const loaded = weeks.get(date);
  const places = loaded ? (priceMoves(loaded.week, visit.id)?.places ?? []) : [];
  const others = places.filter((place) => willDo(place.date) && place.breaks.every((id) => mayBreak.includes(id)));
  const best = others.sort((a, b) => a.cents - b.cents)[0];
  if (!best || !loaded) return null;
  const { technicianId, order, cents } = best;
  return { technicianId, date: best.date, order, cents, stamp: loaded.stamp };
}

async function weekOrNull(tx: Tx, date: string, now: Date): Promise<LoadedWeek | null> {
  try {
    return await loadStandingWeek(tx, date, now);
  } catch (error) {
    if (error instanceof DomainError && error.code === 'plan-not-ready') return null;
    throw error;
  }
}

async function stopgapLimits(tx: Tx, visits: readonly VisitWithSite[], today: string): Promise<View[]> {
  const rows = await tx.stopgap.findMany({
    where: { closedOn: null },
    include: { machine: { include: { site: true } }, part: true },
    orderBy: [{ madeOn: 'asc' }, { id: 'asc' }],
  });
  const due = new Map(
    (await tx.dueForecast.findMany({ where: { stopgapId: { not: null } } })).map((row) => [row.stopgapId, row]),
  );
  const alerts: View[] = [];
  for (const row of rows) {
    const limit = limitOf(row, due.get(row.id)?.p10 ?? null);
    if (limit === null) continue;
    const visit = visits.find((each) => each.visitItems.some((item) => item.stopgapId === row.id));
    const visitDate = visit ? dateText(visit.visitDate) : null;
    const comes = row.partExpectedOn ? dateText(row.partExpectedOn) : null;
    const head = {
      siteId: row.machine.siteId,
      siteName: row.machine.site.name,
      machineId: row.machineId,
      machineCode: row.machine.code,
      visitId: visit?.id ?? null,
      stopgapId: row.id,
      answerId: null,
      move: null,
    };
    const told = { machine: row.machine.code, what: row.description, limitDate: limit };
    const what = `The stopgap on ${row.machine.code} (${row.description})`;
    if (comes !== null && comes > limit) {
      alerts.push({
        ...head,
        kind: 'part-late-for-stopgap',
        sentence: `${what} holds until about ${limit}, but ${row.part?.description ?? 'its part'} comes on ${comes}.`,
        choice: `Renew the stopgap before ${limit}, or have the machine stand from ${limit} until ${comes}.`,
        clauses: {
          sentence: row.part
            ? clause('stopgap-before-part', { ...told, part: row.part.description, comesDate: comes })
            : clause('stopgap-before-its-part', { ...told, comesDate: comes }),
          choice: clause('renew-or-stand', { limitDate: limit, comesDate: comes }),
        },
      });
    } else if (limit < today) {
      alerts.push({
        ...head,
        kind: 'stopgap-limit-past',
        sentence: `${what} was good until about ${limit}, and the lasting repair has not been recorded.`,
        choice: 'Have the machine stand until it is mended, or record the repair if it was done.',
        clauses: { sentence: clause('stopgap-past', told), choice: clause('stand-or-record') },
      });
    } else if (limit <= addDays(today, NEAR_DAYS) && (visitDate === null || visitDate > limit)) {
      alerts.push({
        ...head,
        kind: 'stopgap-limit-near',
        sentence: `${what} holds until about ${limit}, and no visit is arranged before that.`,
        choice: 'Plan the week again: the lasting repair must be done before the limit.',
        clauses: { sentence: clause('stopgap-near', told), choice: clause('plan-again') },
      });
    }
  }
  return alerts;
}

/** The earlier of the date told and the early end of when the hours run out. */
function limitOf(row: OpenStopgap, p10: Date | null): string | null {
  const limits = [row.limitOn, row.limitHours === null ? null : p10].flatMap((each) => (each ? [dateText(each)] : []));
  return limits.sort()[0] ?? null;
}
