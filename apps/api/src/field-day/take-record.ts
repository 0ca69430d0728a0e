import { createHash } from 'node:crypto';
import type { FieldRecordCreate } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import type { Prisma, Tx } from '@deckround/store';
import type { z } from 'zod';
import type { Actor } from '../access/actor.js';
import { followLateFacts } from '../charges/draft-charges.js';
import { requireMachines } from '../field-work/require-machine.js';
import { closeVisit } from '../planning/close-visit.js';
import { lockVisit } from '../planning/lock-visit.js';
import { VISIT_INCLUDE, type VisitRow } from '../planning/visit-view.js';
import { applyFact } from './apply-fact.js';
import type { Fact } from './fact.js';
import { withdrawWaiting } from './take-back-part.js';

type Body = z.infer<typeof FieldRecordCreate>;
/** A clock that is off by more is not believed. */
const SKEW_SECONDS = 300;
/** What a closed visit does not keep from counting at once: meters run on, and who saw a caution saw it. */
const NEVER_LATE: ReadonlySet<Fact['kind']> = new Set(['reading', 'cautions-seen']);
/** A longer time at work comes from a clock that nobody stopped. */
const MOST_WORK_MS = 12 * 3_600_000;

export const RECORD_INCLUDE = { recordedByPerson: true } as const;
export type RecordRow = Prisma.FieldRecordGetPayload<{ include: typeof RECORD_INCLUDE }>;

/**
 * Takes a record of the field exactly once, by the id that the device made. What was seen and done is added and never
 * conflicts; what arrives for a visit that is closed by then waits for the shop to look at it.
 */
export async function takeRecord(tx: Tx, actor: Actor, body: Body, now: Date): Promise<RecordRow> {
  const { id, visitId, machineId, fact } = body;
  if (machineId !== null) await requireMachines(tx, actor, [machineId]);
  const requestHash = hashOf({ deviceAt: body.deviceAt, visitId, machineId, fact });
  const skewSeconds = Math.round((now.getTime() - Date.parse(body.sentAt)) / 1000);
  if (visitId !== null) await lockVisit(tx, visitId);
  const visit = visitId === null ? null : await tx.visit.findUnique({ where: { id: visitId }, include: VISIT_INCLUDE });
  const isWithdrawal = fact.kind === 'part-taken-back' && (await withdrawWaiting(tx, actor, fact.useId, now));
  const reviewReason = isWithdrawal ? null : (doubtOf(fact) ?? lateReason(visitId, visit, fact));
  const { count } = await tx.fieldRecord.createMany({
    skipDuplicates: true,
    data: [
      {
        id,
        shopId: actor.shopId,
        kind: fact.kind,
        visitId,
        machineId,
        recordedBy: actor.id,
        deviceAt: new Date(body.deviceAt),
        receivedAt: now,
        skewSeconds,
        requestHash,
        fact,
        state: reviewReason === null ? 'applied' : 'review',
        reviewReason,
      },
    ],
  });
  if (count === 0) return sameAsBefore(tx, id, requestHash);
  const row = await tx.fieldRecord.findUniqueOrThrow({ where: { id }, include: RECORD_INCLUDE });
  if (reviewReason === null) await applyRecord(tx, actor, row, visit, now);
  return row;
}

/** Why a record is not believed without a person; null = it is. */
function doubtOf(fact: Fact): string | null {
  if (fact.kind !== 'work-time' || Date.parse(fact.endedAt) - Date.parse(fact.startedAt) <= MOST_WORK_MS) return null;
  return 'More than twelve hours without a stop: a clock was left running, it seems. Ask who worked; if it is wrong, keep it without effect, and the work is charged without it.';
}

/** Why a record has to wait for a decision; null = it does not. */
function lateReason(visitId: string | null, visit: VisitRow | null, fact: Fact): string | null {
  if (visitId === null || NEVER_LATE.has(fact.kind)) return null;
  if (visit === null)
    return fact.kind === 'visit-finish' ? 'The visit is no longer planned: planning again has replaced it.' : null;
  // Whoever finishes second finishes nothing more.
  if (visit.state === 'done')
    return fact.kind === 'visit-finish' ? null : 'The visit was finished before this arrived.';
  return visit.state === 'cancelled' ? 'The visit was taken out of the plan before this arrived.' : null;
}

export async function applyRecord(
  tx: Tx,
  actor: Actor,
  row: RecordRow,
  visit: VisitRow | null,
  now: Date,
): Promise<void> {
  await applyFact(
    tx,
    actor,
    {
      id: row.id,
      happenedAt: believed(row.deviceAt, row, now),
      believed: (instant) => believed(new Date(instant), row, now),
      timeZone: await timeZoneOf(tx, row.machineId, visit),
      visit,
      machineId: row.machineId,
    },
    row.fact as Fact,
    now,
  );
  if (visit?.state === 'done') await followLateFacts(tx, visit.id);
  // It was made after all: what was done there is charged.
  const { kind } = row.fact as Fact;
  if (visit?.state === 'cancelled' && kind !== 'part-taken-back' && !NEVER_LATE.has(kind))
    await closeVisit(tx, visit, believed(row.deviceAt, row, now), {}, now);
}

/** A time of the device, put right by what its clock was off when it sent; never in the future. */
function believed(instant: Date, { skewSeconds }: RecordRow, now: Date): Date {
  const shift = Math.abs(skewSeconds) > SKEW_SECONDS ? skewSeconds * 1000 : 0;
  return new Date(Math.min(instant.getTime() + shift, now.getTime()));
}

async function timeZoneOf(tx: Tx, machineId: string | null, visit: VisitRow | null): Promise<string> {
  const where = machineId !== null ? { machines: { some: { id: machineId } } } : visit && { id: visit.siteId };
  const site = where && (await tx.site.findFirst({ where }));
  return site?.timeZone ?? (await tx.shop.findFirstOrThrow()).timeZone;
}

async function sameAsBefore(tx: Tx, id: string, requestHash: string): Promise<RecordRow> {
  const first = await tx.fieldRecord.findUnique({ where: { id }, include: RECORD_INCLUDE });
  if (first?.requestHash === requestHash) return first;
  throw new DomainError(
    'idempotency-key-reused',
    'A record with this id, but other content, is there already. Give a new record an id of its own.',
  );
}

function hashOf(value: object): string {
  return createHash('sha256').update(JSON.stringify(value)).digest('hex');
}
