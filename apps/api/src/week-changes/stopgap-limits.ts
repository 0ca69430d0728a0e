import type { Alert } from '@deckround/contracts';
import { clause } from '@deckround/planning';
import { addDays, type Register, releaseDates, stopgapItemId, stopgapLimit } from '@deckround/register';
import { dateText } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';
import type { z } from 'zod';
import type { VisitWithSite } from './late-parts.js';
import { otherPlace, type PlannedWeeks } from './other-place.js';
import { plannedSnapshot } from './planned-snapshot.js';

type View = z.infer<typeof Alert>;
type Said = Pick<View, 'kind' | 'sentence' | 'choice' | 'clauses'> & Partial<Pick<View, 'move'>>;
type OpenStopgap = Prisma.StopgapGetPayload<{ include: { machine: { include: { site: true } }; part: true } }>;

/** A stopgap, the day until which it holds, and when its part is there; null = now, or nobody knows of a part. */
interface Held {
  readonly row: OpenStopgap;
  readonly limit: string;
  readonly comes: string | null;
  /** Only an order of today makes it come then. */
  readonly isToOrder: boolean;
}

/** A stopgap is worth a warning this many days before its limit. */
const NEAR_DAYS = 5;

/** Stopgaps that end before their parts come or before the repair is made, and those that have ended. */
export async function stopgapLimits(
  tx: Tx,
  register: Register,
  weeks: PlannedWeeks,
  visits: readonly VisitWithSite[],
  today: string,
): Promise<View[]> {
  const alerts: View[] = [];
  for (const held of await heldStopgaps(tx, register, today)) {
    const { row } = held;
    const visit = visits.find((each) => each.visitItems.some((item) => item.stopgapId === row.id)) ?? null;
    const said = await saidOf(tx, held, visit, weeks, today);
    if (said === null) continue;
    alerts.push({
      siteId: row.machine.siteId,
      siteName: row.machine.site.name,
      machineId: row.machineId,
      machineCode: row.machine.code,
      visitId: visit?.id ?? null,
      stopgapId: row.id,
      orderId: null,
      documentId: null,
      answerId: null,
      move: null,
      ...said,
    });
  }
  return alerts;
}

/** Those that have a limit; their parts given out as a plan gives them, to the nearest limit first. */
async function heldStopgaps(tx: Tx, register: Register, today: string): Promise<Held[]> {
  const rows = await tx.stopgap.findMany({
    where: { closedOn: null },
    include: { machine: { include: { site: true } }, part: true },
    orderBy: [{ madeOn: 'asc' }, { id: 'asc' }],
  });
  const due = new Map(
    (await tx.dueForecast.findMany({ where: { stopgapId: { not: null } } })).map((row) => [row.stopgapId, row]),
  );
  const limited = rows.flatMap((row) => {
    const p10 = due.get(row.id)?.p10 ?? null;
    const limitOn = row.limitOn && dateText(row.limitOn);
    const limitHours = row.limitHours === null ? null : Number(row.limitHours);
    const limit = stopgapLimit({ limitOn, limitHours }, p10 && dateText(p10));
    return limit === null ? [] : [{ row, limit }];
  });
  const releases = releaseDates(
    limited
      .toSorted((a, b) => (a.limit === b.limit ? 0 : a.limit < b.limit ? -1 : 1))
      .map(({ row }) => ({
        id: row.id,
        parts: row.partId === null ? [] : [{ partId: row.partId, quantity: Number(row.partQuantity) }],
        toldOn: row.partExpectedOn && dateText(row.partExpectedOn),
        fixedOn: null,
      })),
    register.parts,
    today,
  );
  return limited.map(({ row, limit }) => {
    const { date, isToOrder } = releases.get(row.id)!;
    return { row, limit, comes: date, isToOrder };
  });
}

async function saidOf(
  tx: Tx,
  held: Held,
  visit: VisitWithSite | null,
  weeks: PlannedWeeks,
  today: string,
): Promise<Said | null> {
  const { limit, comes } = held;
  if (limit < today) return past(held);
  if (comes !== null && comes > limit) return partTooLate(held, comes);
  const isInTime = visit !== null && dateText(visit.visitDate) <= limit;
  return limit > addDays(today, NEAR_DAYS) || isInTime ? null : near(tx, held, visit, weeks);
}

const toldOf = ({ row, limit }: Held) => ({ machine: row.machine.code, what: row.description, limitDate: limit });
const named = ({ row }: Held) => `The stopgap on ${row.machine.code} (${row.description})`;

function past(held: Held): Said {
  return {
    kind: 'stopgap-limit-past',
    sentence: `${named(held)} was good until about ${held.limit}, and the lasting repair has not been recorded.`,
    choice: 'Have the machine stand until it is mended, or record the repair if it was done.',
    clauses: { sentence: clause('stopgap-past', toldOf(held)), choice: clause('stand-or-record') },
  };
}

function partTooLate(held: Held, comes: string): Said {
  const { row, limit, isToOrder } = held;
  const told = { ...toldOf(held), comesDate: comes };
  const part = row.part?.description ?? 'its part';
  const renew = renewOrStand(limit, comes);
  if (isToOrder) {
    return {
      kind: 'part-late-for-stopgap',
      sentence: `${named(held)} holds until about ${limit}, but ${part}, ordered today, comes on ${comes}.`,
      choice: `Order the part today. ${renew.choice}`,
      clauses: {
        sentence: clause('stopgap-before-order', { ...told, part }),
        choice: clause('order-and-renew', { limitDate: limit, comesDate: comes }),
      },
    };
  }
  return {
    kind: 'part-late-for-stopgap',
    sentence: `${named(held)} holds until about ${limit}, but ${part} comes on ${comes}.`,
    choice: renew.choice,
    clauses: {
      sentence: row.part ? clause('stopgap-before-part', { ...told, part }) : clause('stopgap-before-its-part', told),
      choice: renew.clause,
    },
  };
}

function renewOrStand(limit: string, until: string) {
  return {
    choice: `Renew the stopgap before ${limit}, or have the machine stand from ${limit} until ${until}.`,
    clause: clause('renew-or-stand', { limitDate: limit, comesDate: until }),
  };
}

/** Planning again is advised only where the week was planned without knowing of the repair, or before its part was. */
async function near(tx: Tx, held: Held, visit: VisitWithSite | null, weeks: PlannedWeeks): Promise<Said> {
  const { row, limit } = held;
  const head = {
    kind: 'stopgap-limit-near' as const,
    sentence: `${named(held)} holds until about ${limit}, and no visit is arranged before that.`,
  };
  const sentence = clause('stopgap-near', toldOf(held));
  const week = await weeks.around(limit);
  const planned = week && (await plannedSnapshot(tx, week.runId)).items.find(({ id }) => id === stopgapItemId(row.id));
  if (!planned || (planned.releaseDate !== null && planned.releaseDate > limit)) {
    return {
      ...head,
      choice: 'Plan the week again: the lasting repair must be done before the limit.',
      clauses: { sentence, choice: clause('plan-again') },
    };
  }
  if (visit === null) {
    return {
      ...head,
      choice: `The planned week has no room for the repair: see what would have to give way, or renew the stopgap before ${limit}.`,
      clauses: { sentence, choice: clause('no-room-for-repair', { limitDate: limit }) },
    };
  }
  const move = await otherPlace(weeks, visit, (date) => date <= limit, []);
  const renew = renewOrStand(limit, dateText(visit.visitDate));
  return {
    ...head,
    choice: move ? `Move the visit to ${move.date}, before the limit.` : renew.choice,
    clauses: { sentence, choice: move ? clause('move-before-limit', { toDate: move.date }) : renew.clause },
    move,
  };
}
