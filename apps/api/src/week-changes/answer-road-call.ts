import { createHash } from 'node:crypto';
import { symptomOf } from '@deckround/catalogue';
import { type RoadCallChoice, RoadCallKind } from '@deckround/contracts';
import {
  bestRoadCallOptions,
  evaluateStanding,
  type NamedDraft,
  type NamedVisit,
  roadCallChange,
  roadCallOptions,
  type StandingWeek,
} from '@deckround/planning';
import { DomainError } from '@deckround/platform';
import { roadCallItemId } from '@deckround/register';
import type { Prisma, Tx } from '@deckround/store';
import { z } from 'zod';
import type { Actor } from '../access/actor.js';
import { partName } from '../register/part-name.js';
import { differenceView } from './difference-view.js';
import { type LoadedWeek, loadStandingWeek } from './load-standing-week.js';
import { roadCallSentence } from './road-call-sentence.js';
import { requireStamp } from './stamp.js';
import { type WeekForCall, weeksForCall } from './weeks-for-call.js';
import { writeWeekChange } from './write-week-change.js';

/** Iterations of the small search: the same question gets the same answer. */
const ITERATIONS = 3000;

/** One entry per technician-day that differs. */
const KeptDays = z.array(
  z.object({
    technicianId: z.string(),
    date: z.string(),
    visits: z.array(z.object({ visitId: z.string().nullable(), siteId: z.string(), itemIds: z.array(z.string()) })),
  }),
);
type KeptDays = z.infer<typeof KeptDays>;

/** What was offered last, kept with the call. */
const KeptOptions = z.object({
  /** Of all weeks looked at. */
  stamp: z.string(),
  options: z.array(
    z.object({
      kind: RoadCallKind,
      /** The week it lies in: a day of it, and how that week stood. */
      week: z.object({ date: z.string(), stamp: z.string() }),
      days: KeptDays,
    }),
  ),
});
type KeptOptions = z.infer<typeof KeptOptions>;

type RoadCallRow = Prisma.RoadCallGetPayload<{ include: { machine: true } }>;

/** The ways to fit an open call into the planned days, kept with the call so that one can be chosen. */
export async function giveOptions(tx: Tx, id: string, daysAhead: number, now: Date) {
  const call = await openCall(tx, id);
  const itemId = roadCallItemId(id);
  const weeks = await weeksForCall(tx, daysAhead, now);
  for (const { loaded } of weeks) requireItem(loaded, itemId);
  const found = weeks.flatMap((week) =>
    roadCallOptions(week.loaded.week, { itemId, dates: week.dates, iterations: ITERATIONS, seed: 1 }).map((option) => ({
      ...option,
      week,
    })),
  );
  const shop = await tx.shop.findFirstOrThrow();
  const money = new Intl.NumberFormat('en-US', { style: 'currency', currency: shop.currency });
  const kept: KeptOptions = { stamp: stampOfAll(weeks), options: [] };
  const views = [];
  for (const { kind, draft, change, week } of bestRoadCallOptions(found)) {
    const standing = week.loaded.week;
    const { technicians, sites } = standing.instance.snapshot;
    const technician = (technicianId: string) => technicians.find((each) => each.id === technicianId)?.name ?? '';
    const at = placeOf(standing, draft, itemId);
    kept.options.push({
      kind,
      week: { date: week.date, stamp: week.loaded.stamp },
      days: keptDays(standing, draft),
    });
    views.push({
      kind,
      sentence: roadCallSentence(kind, at, change, {
        technician,
        site: (siteId) => sites.find((each) => each.id === siteId)?.name ?? '',
        time: (instant) => spokenTime(instant),
        money: (cents) => money.format(cents / 100),
      }),
      ...at,
      technicianName: technician(at.technicianId),
      difference: await differenceView(tx, change),
    });
  }
  await tx.roadCall.update({ where: { id }, data: { options: kept } });
  const symptom = symptomOf(call.symptomCode ?? '');
  const dates = weeks.flatMap((week) => week.dates);
  return {
    roadCallId: id,
    stamp: kept.stamp,
    lookedAt: dates.length > 0 ? { from: dates[0]!, until: dates.at(-1)! } : null,
    options: views,
    likelyParts: await likelyParts(tx, call, symptom?.likelyItems ?? []),
    cautions: symptom?.cautions ?? [],
  };
}

/**
 * Carries out an option that was given before, unless its week has changed since.
 *
 * @throws DomainError conflict
 */
export async function chooseOption(
  tx: Tx,
  actor: Actor,
  id: string,
  { kind, stamp }: z.infer<typeof RoadCallChoice>,
  now: Date,
) {
  const call = await openCall(tx, id);
  const kept = KeptOptions.safeParse(call.options).data;
  const option = kept?.stamp === stamp ? kept.options.find((each) => each.kind === kind) : undefined;
  if (!option) throw gone();
  const loaded = await loadStandingWeek(tx, option.week.date, now);
  requireItem(loaded, roadCallItemId(id));
  requireStamp(loaded, option.week.stamp);
  const draft = draftOf(loaded.week, option.days);
  if (!draft) throw gone();
  const change = roadCallChange(loaded.week, draft, roadCallItemId(id));
  const at = placeOf(loaded.week, draft, roadCallItemId(id));
  const made = await writeWeekChange(tx, actor, loaded, { kind: 'road-call', draft, change }, now);
  const row = await tx.roadCall.update({
    where: { id },
    data: { state: 'planned', visitId: at.visitId ?? made[0]!, version: { increment: 1 } },
  });
  return { ...row, calledAt: row.calledAt.toISOString(), answers: row.answers as object };
}

function gone(): DomainError {
  return new DomainError('conflict', 'That option is not there any more: ask for the options again.');
}

async function openCall(tx: Tx, id: string): Promise<RoadCallRow> {
  const call = await tx.roadCall.findFirst({ where: { id }, include: { machine: true } });
  if (!call) throw new DomainError('not-found', 'There is no such road call.');
  if (call.state !== 'open') throw new DomainError('conflict', `The call is ${call.state} already.`);
  return call;
}

function requireItem({ week }: LoadedWeek, itemId: string): void {
  if (week.instance.snapshot.items.some((item) => item.id === itemId)) return;
  throw new DomainError('conflict', 'Its machine has been retired or a visit with the call has begun already.');
}

function stampOfAll(weeks: readonly WeekForCall[]): string {
  const stamps = weeks.map(({ loaded }) => loaded.stamp);
  return createHash('sha256').update(JSON.stringify(stamps)).digest('hex').slice(0, 32);
}

function placeOf({ instance }: StandingWeek, draft: NamedDraft, itemId: string) {
  const index = instance.snapshot.items.findIndex((item) => item.id === itemId);
  const v = draft.findIndex((visits) => visits.some((visit) => visit.items.includes(index)));
  const k = draft[v]!.findIndex((visit) => visit.items.includes(index));
  const day = instance.technicianDays[v]!;
  const visit = draft[v]![k]!;
  const { start, end } = evaluateStanding(instance, v, draft[v]!)![k]!;
  const { zone } = instance.snapshot.sites[visit.site]!;
  return {
    visitId: visit.visitId,
    technicianId: instance.snapshot.technicians[day.technician]!.id,
    date: day.date,
    startAt: instance.clock.instant(start, zone),
    endAt: instance.clock.instant(end, zone),
  };
}

function keptDays({ instance, draft: before }: StandingWeek, draft: NamedDraft): KeptDays {
  const { snapshot, technicianDays } = instance;
  return draft.flatMap((visits, v) =>
    visits === before[v]
      ? []
      : [
          {
            technicianId: snapshot.technicians[technicianDays[v]!.technician]!.id,
            date: technicianDays[v]!.date,
            visits: visits.map((visit) => ({
              visitId: visit.visitId,
              siteId: snapshot.sites[visit.site]!.id,
              itemIds: visit.items.map((item) => snapshot.items[item]!.id),
            })),
          },
        ],
  );
}

/** The kept days over the week as loaded now; undefined when they cannot be driven any more. */
function draftOf({ instance, draft }: StandingWeek, days: KeptDays): NamedDraft | undefined {
  const { snapshot, technicianDays } = instance;
  const standing = new Map(draft.flat().map((visit) => [visit.visitId, visit]));
  let after: NamedDraft = draft;
  for (const day of days) {
    const v = technicianDays.findIndex(
      (each) => each.date === day.date && snapshot.technicians[each.technician]!.id === day.technicianId,
    );
    if (v < 0) return undefined;
    const visits = day.visits.map(({ visitId, siteId, itemIds }): NamedVisit => {
      const before = visitId === null ? undefined : standing.get(visitId);
      const own = before?.promise ?? null;
      const { technician, day: date } = technicianDays[v]!;
      return {
        visitId,
        site: snapshot.sites.findIndex((site) => site.id === siteId),
        items: itemIds.map((itemId) => snapshot.items.findIndex((item) => item.id === itemId)).sort((a, b) => a - b),
        promise: own && own.technician === technician && own.day === date ? own : null,
      };
    });
    if (visits.some((visit) => visit.site < 0 || visit.items[0]! < 0)) return undefined;
    const kept = evaluateStanding(instance, v, visits) !== null;
    after = after.with(v, kept ? visits : visits.map((visit) => ({ ...visit, promise: null })));
    if (evaluateStanding(instance, v, after[v]!) === null) return undefined;
  }
  return after;
}

/** Parts of the likely repairs on this machine's class, the most likely first. */
async function likelyParts(tx: Tx, call: RoadCallRow, codes: readonly string[]) {
  const items = await tx.serviceItem.findMany({
    where: { code: { in: [...codes] }, plan: { classId: call.machine.classId } },
    include: { serviceItemParts: { include: { part: { include: { stocks: true } } } } },
  });
  return codes.flatMap((code) =>
    items
      .filter((item) => item.code === code)
      .flatMap((item) =>
        item.serviceItemParts.map(({ part, quantity, perSpindle }) => ({
          partId: part.id,
          name: partName(part),
          quantity: Number(quantity) * (perSpindle ? Math.max(1, call.machine.spindles) : 1),
          onHand: part.stocks.reduce((sum, row) => sum + Number(row.onHand), 0),
          because: item.title,
        })),
      ),
  );
}

const WEEKDAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];

/** `Tuesday 10:40`, on the wall clock that the instant carries. */
function spokenTime(instant: string): string {
  const weekday = new Date(`${instant.slice(0, 10)}T12:00:00Z`).getUTCDay();
  return `${WEEKDAYS[weekday]} ${instant.slice(11, 16)}`;
}
