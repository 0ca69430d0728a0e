import { dateColumn, takeReadings, wallClockOf } from '@deckround/register-store';
import { emitEvent, Prisma, type Tx } from '@deckround/store';
import type { Actor } from '../access/actor.js';
import { settleStock } from '../charges/settle-stock.js';
import { takeFromStock } from '../charges/stock.js';
import { FOUND, oweWork } from '../field-work/owed-work.js';
import { recordCompletion } from '../field-work/record-completion.js';
import { requireItemCode } from '../field-work/require-machine.js';
import { closeVisit } from '../planning/close-visit.js';
import { columnOrNull } from '../register/values.js';
import type { Fact, Place } from './fact.js';
import { finishItem } from './finish-item.js';
import { takeBackRecorded } from './take-back-part.js';

/** Writes down what follows from a fact. */
export async function applyFact(tx: Tx, actor: Actor, place: Place, fact: Fact, now: Date): Promise<void> {
  const { shopId } = actor;
  const { visit, happenedAt } = place;
  const machineId = place.machineId!;
  const visitId = visit?.id ?? null;
  const on = dateColumn(wallClockOf(happenedAt, place.timeZone).slice(0, 10));
  const by = { shopId, recordedBy: actor.id };
  switch (fact.kind) {
    case 'cautions-seen':
      return; // the record itself is what is wanted
    case 'reading':
      await takeReadings(tx, shopId, [{ machineId, readAt: happenedAt, hours: fact.hours, source: actor.role! }], now);
      return;
    case 'item-done':
      return finishItem(tx, actor, place, fact, on, now);
    case 'finding': {
      await requireItemCode(tx, machineId, fact.itemCode);
      const { kind: _, followUp, ...found } = fact;
      const row = await tx.finding.create({ data: { ...by, ...found, machineId, visitId, foundOn: on } });
      if (followUp !== null)
        await tx.followUp.create({ data: { shopId, machineId, findingId: row.id, owed: followUp } });
      return;
    }
    case 'part-used':
      return usePart(tx, shopId, place, fact);
    case 'part-taken-back':
      return takeBackRecorded(tx, actor, fact, now);
    case 'work-time': {
      const technician = await tx.technician.findFirst({ where: { personId: actor.id } });
      await tx.workTime.create({
        data: {
          id: place.id,
          shopId,
          visitId,
          technicianId: technician?.id ?? visit?.technicianId ?? null,
          startedAt: place.believed(fact.startedAt),
          endedAt: place.believed(fact.endedAt),
        },
      });
      return;
    }
    case 'found-work':
      return foundWork(tx, actor, place, fact, on);
    case 'stopgap': {
      const { kind: _, limitOn, partExpectedOn, ...made } = fact;
      const row = await tx.stopgap.create({
        data: {
          ...by,
          ...made,
          machineId,
          visitId,
          code: 'make-good',
          madeOn: on,
          limitOn: columnOrNull(limitOn),
          partExpectedOn: columnOrNull(partExpectedOn),
          failureCents: FAILURE_CENTS,
        },
      });
      await tx.followUp.create({
        data: { shopId, machineId, stopgapId: row.id, owed: fact.description, dueOn: columnOrNull(limitOn) },
      });
      const told = { stopgapId: row.id, machineId, limitHours: fact.limitHours, limitOn };
      await emitEvent(tx, shopId, 'stopgap.recorded', told, now);
      return;
    }
    case 'visit-finish':
      if (visit?.state === 'proposed' || visit?.state === 'confirmed') await closeVisit(tx, visit, happenedAt, {}, now);
      return;
  }
}

/** What a stopgap that fails costs, until the shop says otherwise: as in StopgapCreate. */
const FAILURE_CENTS = 50_000;

/** What its visit used is settled with stock as a whole; beside any visit it comes from the shelf. */
async function usePart(
  tx: Tx,
  shopId: string,
  { id, visit, machineId, happenedAt: usedAt }: Place,
  { partId, name, quantity }: Extract<Fact, { kind: 'part-used' }>,
): Promise<void> {
  const visitId = visit?.id ?? null;
  const taken =
    visitId === null && partId !== null ? await takeFromStock(tx, partId, new Prisma.Decimal(quantity), null) : null;
  const use = { id, shopId, visitId, machineId: machineId!, partId, name, quantity, usedAt };
  await tx.partUse.create({ data: { ...use, fromShelf: taken?.shelf ?? null } });
  if (visitId !== null) await settleStock(tx, visitId);
}

async function foundWork(
  tx: Tx,
  actor: Actor,
  { visit, machineId: machine, happenedAt }: Place,
  fact: Extract<Fact, { kind: 'found-work' }>,
  on: Date,
): Promise<void> {
  const { shopId } = actor;
  const machineId = machine!;
  if (fact.itemCode !== null) await requireItemCode(tx, machineId, fact.itemCode);
  if (!fact.done) {
    const found = { shopId, machineId, visitId: visit?.id ?? null, foundOn: on, recordedBy: actor.id };
    await oweWork(tx, found, fact, happenedAt);
    return;
  }
  if (visit !== null)
    await tx.visitItem.create({
      data: {
        shopId,
        visitId: visit.id,
        machineId,
        code: fact.itemCode ?? FOUND,
        slot: fact.slot,
        title: fact.title,
        role: 'found',
        minutes: fact.minutes,
        reason: 'Found at the machine and done there.',
        state: 'done',
      },
    });
  if (fact.itemCode === null) return;
  const { itemCode: code, slot, title: note } = fact;
  await recordCompletion(tx, actor, visit?.id ?? null, { machineId, code, slot, doneOn: on, note });
}
