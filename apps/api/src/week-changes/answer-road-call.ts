import { symptomOf } from '@deckround/catalogue';
import type { RoadCallChoice } from '@deckround/contracts';
import {
  evaluateStanding,
  type NamedDraft,
  type NamedVisit,
  type RoadCallKind,
  roadCallChange,
  roadCallOptions,
  type StandingWeek,
} from '@deckround/planning';
import { DomainError } from '@deckround/platform';
import { roadCallItemId } from '@deckround/register';
import { wallClockOf } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';
import type { z } from 'zod';
import type { Actor } from '../access/actor.js';
import { partName } from '../register/part-name.js';
import { differenceView } from './difference-view.js';
import { type LoadedWeek, loadStandingWeek, plannedDayFrom } from './load-standing-week.js';
import { roadCallSentence } from './road-call-sentence.js';
import { requireStamp } from './stamp.js';
import { writeWeekChange } from './write-week-change.js';

/** Iterations of the small search: the same question gets the same answer. */
const ITERATIONS = 3000;

interface KeptOption {
  kind: RoadCallKind;
  days: {
    technicianId: string;
    date: string;
    visits: { visitId: string | null; siteId: string; itemIds: string[] }[];
  }[];
}

type RoadCallRow = Prisma.RoadCallGetPayload<{ include: { machine: true } }>;

/** The ways to fit an open call into the week, kept with the call so that one can be chosen. */
export async function giveOptions(tx: Tx, id: string, daysAhead: number, now: Date) {
  const { call, loaded } = await loadCall(tx, id, now);
  const { week } = loaded;
  const { instance } = week;
  const options = roadCallOptions(week, { itemId: roadCallItemId(id), daysAhead, iterations: ITERATIONS, seed: 1 });
  const { technicians, sites } = instance.snapshot;
  const technician = (technicianId: string) => technicians.find((each) => each.id === technicianId)?.name ?? '';
  const shop = await tx.shop.findFirstOrThrow();
  const money = new Intl.NumberFormat('en-US', { style: 'currency', currency: shop.currency });
  const kept: KeptOption[] = [];
  const views = [];
  for (const { kind, draft, change } of options) {
    const at = placeOf(week, draft, roadCallItemId(id));
    kept.push({ kind, days: keptDays(week, draft) });
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
  await tx.roadCall.update({
    where: { id },
    data: { options: { stamp: loaded.stamp, options: kept } as unknown as Prisma.InputJsonObject },
  });
  const symptom = symptomOf(call.symptomCode ?? '');
  return {
    roadCallId: id,
    stamp: loaded.stamp,
    options: views,
    likelyParts: await likelyParts(tx, call, symptom?.likelyItems ?? []),
    cautions: symptom?.cautions ?? [],
  };
}

/**
 * Carries out an option that was given before, unless the week has changed since.
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
  const { call, loaded } = await loadCall(tx, id, now);
  requireStamp(loaded, stamp);
  const kept = call.options as unknown as { stamp: string; options: KeptOption[] } | null;
  const option = kept?.stamp === stamp ? kept.options.find((each) => each.kind === kind) : undefined;
  const draft = option && draftOf(loaded.week, option);
  if (!draft) throw new DomainError('conflict', 'That option is not there any more: ask for the options again.');
  const change = roadCallChange(loaded.week, draft, roadCallItemId(id));
  const at = placeOf(loaded.week, draft, roadCallItemId(id));
  const made = await writeWeekChange(tx, actor, loaded, { kind: 'road-call', draft, change }, now);
  const row = await tx.roadCall.update({
    where: { id },
    data: { state: 'planned', visitId: at.visitId ?? made[0]!, version: { increment: 1 } },
  });
  return { ...row, calledAt: row.calledAt.toISOString(), answers: row.answers as object };
}

async function loadCall(tx: Tx, id: string, now: Date): Promise<{ call: RoadCallRow; loaded: LoadedWeek }> {
  const call = await tx.roadCall.findFirst({ where: { id }, include: { machine: true } });
  if (!call) throw new DomainError('not-found', 'There is no such road call.');
  if (call.state !== 'open') throw new DomainError('conflict', `The call is ${call.state} already.`);
  const { timeZone } = await tx.shop.findFirstOrThrow();
  const day = await plannedDayFrom(tx, wallClockOf(now, timeZone).slice(0, 10));
  const loaded = await loadStandingWeek(tx, day, now);
  const isKnown = loaded.week.instance.snapshot.items.some((item) => item.id === roadCallItemId(id));
  if (!isKnown) {
    throw new DomainError('conflict', 'Its machine has been retired or a visit with the call has begun already.');
  }
  return { call, loaded };
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

function keptDays({ instance, draft: before }: StandingWeek, draft: NamedDraft): KeptOption['days'] {
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

/** The kept option over the week as loaded now; undefined when it cannot be driven any more. */
function draftOf({ instance, draft }: StandingWeek, { days }: KeptOption): NamedDraft | undefined {
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
