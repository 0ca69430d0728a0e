import { roadCallTitle, stopgapTitle } from '@deckround/register';
import type { Prisma, Tx } from '@deckround/store';
import type { Actor } from '../access/actor.js';
import { recordCompletion } from '../field-work/record-completion.js';
import { requireItemCode } from '../field-work/require-machine.js';
import { completeItem, settleOwed } from '../planning/complete-item.js';
import { leaveVisits } from '../planning/leave-visits.js';
import type { VisitRow } from '../planning/visit-view.js';
import type { Fact, Place } from './fact.js';

type ItemDone = Extract<Fact, { kind: 'item-done' }>;
type VisitItem = Prisma.VisitItemGetPayload<object>;
/** What a stopgap or a call owes: it names one of the two. */
type Owed = Pick<VisitItem, 'machineId' | 'code' | 'title' | 'minutes' | 'stopgapId' | 'roadCallId'> & {
  readonly isClosed: boolean;
};

/** A piece of work was done: of the visit as it stands by now, or as the technician had read it. */
export async function finishItem(
  tx: Tx,
  actor: Actor,
  { visit, machineId: machine }: Place,
  fact: ItemDone,
  doneOn: Date,
  now: Date,
): Promise<void> {
  const machineId = machine!;
  const { code, slot, meterHours, note } = fact;
  const item = visit && itemOf(visit, machineId, fact);
  if (visit && item) {
    if (item.state !== 'done') await completeItem(tx, actor, visit.id, item, { doneOn, meterHours, note });
    return;
  }
  const owed = await owedBy(tx, machineId, fact);
  if (owed !== null) return finishOwed(tx, actor, visit, owed, doneOn, now);
  await requireItemCode(tx, machineId, code);
  await recordCompletion(tx, actor, visit?.id ?? null, { machineId, code, slot, doneOn, meterHours, note });
}

/** Planning again gives the items of a visit new ids: the work is the same. */
function itemOf({ visitItems }: VisitRow, machineId: string, { itemId, code, slot, ...fact }: ItemDone) {
  const here = visitItems.filter((each) => each.machineId === machineId);
  const { stopgapId = null, roadCallId = null } = fact;
  const isSame = (each: (typeof here)[number]) =>
    stopgapId === null && roadCallId === null
      ? each.code === code && each.slot === slot
      : each.stopgapId === stopgapId && each.roadCallId === roadCallId;
  return here.find((each) => each.id === itemId) ?? here.find(isSame);
}

async function owedBy(tx: Tx, machineId: string, { stopgapId, roadCallId }: ItemDone): Promise<Owed | null> {
  const none = { machineId, stopgapId: null, roadCallId: null };
  if (stopgapId) {
    const stopgap = await tx.stopgap.findFirst({ where: { id: stopgapId, machineId } });
    if (stopgap === null) return null;
    const { code, description, minutes, closedOn } = stopgap;
    return { ...none, stopgapId, code, title: stopgapTitle(description), minutes, isClosed: closedOn !== null };
  }
  if (!roadCallId) return null;
  const call = await tx.roadCall.findFirst({ where: { id: roadCallId, machineId } });
  if (call === null) return null;
  const { symptom, minutes, closedOn } = call;
  return {
    ...none,
    roadCallId,
    code: 'road-call',
    title: roadCallTitle(symptom),
    minutes,
    isClosed: closedOn !== null,
  };
}

/**
 * Planning again gave the work to another visit, or the desk closed what it was for, before this arrived: it was done here
 * all the same, is charged with this visit, and nobody drives for it any more.
 */
async function finishOwed(
  tx: Tx,
  actor: Actor,
  visit: VisitRow | null,
  { isClosed, ...work }: Owed,
  doneOn: Date,
  now: Date,
): Promise<void> {
  const { stopgapId, roadCallId } = work;
  const owed = { stopgapId, roadCallId };
  await leaveVisits(tx, owed, 'Its work was done before, and it had no other.', now);
  await settleOwed(tx, work, doneOn, visit?.id ?? null);
  if (visit === null) return;
  const isDoneElsewhere = (await tx.visitItem.count({ where: { ...owed, state: 'done' } })) > 0;
  const reason =
    isClosed && !isDoneElsewhere
      ? 'Done here, though the desk had closed it meanwhile.'
      : 'Done here, though it no longer stood in this visit.';
  const done = { reason, role: 'found', state: 'done' };
  await tx.visitItem.create({ data: { shopId: actor.shopId, visitId: visit.id, ...work, ...done } });
}
