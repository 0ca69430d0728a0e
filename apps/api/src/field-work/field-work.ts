import { SYMPTOMS, symptomOf } from '@deckround/catalogue';
import {
  Completion,
  CompletionCreate,
  Finding,
  FindingCreate,
  FollowUp,
  MachineQuery,
  RoadCall,
  RoadCallChanges,
  RoadCallCreate,
  Stopgap,
  StopgapChanges,
  StopgapCreate,
} from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { WAITING_CENTS_PER_DAY } from '@deckround/register';
import { BEGUN, dateColumn, dateText, endDowntime, todayOf } from '@deckround/register-store';
import { emitEvent, type Prisma, type Tx } from '@deckround/store';
import type { z } from 'zod';
import { machineScope } from '../access/actor.js';
import { cancelVisit } from '../planning/cancel-visit.js';
import { type Resource, resourceController } from '../register/resource.js';
import { columnOrNull, dateOrNull, given, hoursText } from '../register/values.js';
import { meterChanges } from './meter-changes.js';
import { settleCall, settleFindings } from './owed-work.js';
import { refuseFutureDay } from './refuse-future.js';
import { requireItemCode, requireMachines, slotId } from './require-machine.js';
import { takeBack } from './take-back.js';

const ofMachine = ({ machineId }: Record<string, unknown>) => (machineId === undefined ? {} : { machineId });

const completions: Resource<Prisma.CompletionGetPayload<{ include: { slot: true } }>> = {
  path: 'completions',
  name: 'Completion',
  view: Completion,
  query: MachineQuery,
  create: CompletionCreate,
  readers: ['manager', 'technician', 'supervisor'],
  writers: ['manager', 'technician'],
  order: 'doneOn',
  orderValue: (key) => new Date(key),
  scope: machineScope,
  where: ofMachine,
  table: (tx) => tx.completion,
  include: { slot: true },
  toView: ({ slot, ...row }) => ({
    ...row,
    slot: slot?.name ?? null,
    doneOn: dateText(row.doneOn),
    meterHours: hoursText(row.meterHours),
  }),
  insert: async (tx, actor, body: z.infer<typeof CompletionCreate>, now) => {
    await requireMachines(tx, actor, [body.machineId]);
    await refuseFutureDay(tx, body.machineId, '/doneOn', body.doneOn, now);
    await requireItemCode(tx, body.machineId, body.itemCode);
    const { slot, doneOn, ...fields } = body;
    const row = await tx.completion.create({
      data: {
        shopId: actor.shopId,
        ...fields,
        slotId: await slotId(tx, actor.shopId, body.machineId, slot),
        doneOn: dateColumn(doneOn),
        recordedBy: actor.kind === 'person' ? actor.id : null,
      },
    });
    await settleFindings(tx, { machineId: body.machineId, code: body.itemCode, slot }, dateColumn(doneOn), null);
    return row.id;
  },
  remove: async (tx, actor, row, now) => {
    if (actor.role === 'technician' && row.recordedBy !== actor.id)
      throw new DomainError('not-allowed', 'Somebody else recorded this: the shop can take it back.');
    await takeBack(tx, actor, row, now);
  },
};

const findings: Resource<Prisma.FindingGetPayload<object>> = {
  path: 'findings',
  name: 'Finding',
  view: Finding,
  query: MachineQuery,
  create: FindingCreate,
  readers: ['manager', 'technician', 'supervisor'],
  writers: ['manager', 'technician'],
  order: 'foundOn',
  orderValue: (key) => new Date(key),
  scope: machineScope,
  where: ofMachine,
  table: (tx) => tx.finding,
  toView: (row) => ({ ...row, foundOn: dateText(row.foundOn), dueWithinHours: hoursText(row.dueWithinHours) }),
  insert: async (tx, actor, body: z.infer<typeof FindingCreate>, now) => {
    await requireMachines(tx, actor, [body.machineId]);
    await refuseFutureDay(tx, body.machineId, '/foundOn', body.foundOn, now);
    await requireItemCode(tx, body.machineId, body.itemCode);
    const { followUp, foundOn, ...fields } = body;
    const row = await tx.finding.create({
      data: {
        shopId: actor.shopId,
        ...fields,
        foundOn: dateColumn(foundOn),
        recordedBy: actor.kind === 'person' ? actor.id : null,
      },
    });
    if (followUp !== null) {
      await tx.followUp.create({
        data: { shopId: actor.shopId, machineId: body.machineId, findingId: row.id, owed: followUp },
      });
    }
    return row.id;
  },
};

const stopgaps: Resource<Prisma.StopgapGetPayload<object>> = {
  path: 'stopgaps',
  name: 'Stopgap',
  view: Stopgap,
  query: MachineQuery,
  create: StopgapCreate,
  changes: StopgapChanges,
  readers: ['manager', 'technician', 'supervisor'],
  writers: ['manager', 'technician'],
  order: 'madeOn',
  orderValue: (key) => new Date(key),
  scope: machineScope,
  where: ofMachine,
  table: (tx) => tx.stopgap,
  toView: (row) => ({
    ...row,
    madeOn: dateText(row.madeOn),
    limitHours: hoursText(row.limitHours),
    limitOn: dateOrNull(row.limitOn),
    partQuantity: String(row.partQuantity),
    partExpectedOn: dateOrNull(row.partExpectedOn),
    closedOn: dateOrNull(row.closedOn),
  }),
  insert: async (tx, actor, body: z.infer<typeof StopgapCreate>, now) => {
    await requireMachines(tx, actor, [body.machineId]);
    await refuseFutureDay(tx, body.machineId, '/madeOn', body.madeOn, now);
    const { madeOn, limitOn, partExpectedOn, ...fields } = body;
    const row = await tx.stopgap.create({
      data: {
        shopId: actor.shopId,
        ...fields,
        madeOn: dateColumn(madeOn),
        limitOn: columnOrNull(limitOn),
        partExpectedOn: columnOrNull(partExpectedOn),
        recordedBy: actor.kind === 'person' ? actor.id : null,
      },
    });
    await tx.followUp.create({
      data: {
        shopId: actor.shopId,
        machineId: body.machineId,
        stopgapId: row.id,
        owed: body.description,
        dueOn: columnOrNull(limitOn),
      },
    });
    const told = { stopgapId: row.id, machineId: body.machineId, limitHours: body.limitHours, limitOn };
    await emitEvent(tx, actor.shopId, 'stopgap.recorded', told, row.recordedAt);
    return row.id;
  },
  update: async (tx, _actor, row, body: z.infer<typeof StopgapChanges>, now) => {
    await refuseFutureDay(tx, row.machineId, '/closedOn', body.closedOn, now);
    const dates = given({
      partExpectedOn: body.partExpectedOn === undefined ? undefined : columnOrNull(body.partExpectedOn),
      closedOn: body.closedOn === undefined ? undefined : columnOrNull(body.closedOn),
    });
    await tx.stopgap.update({ where: { id: row.id }, data: { ...dates, version: { increment: 1 } } });
    if (body.closedOn !== undefined) {
      await tx.followUp.updateMany({
        where: { stopgapId: row.id },
        data: { closedOn: columnOrNull(body.closedOn), version: { increment: 1 } },
      });
    }
  },
};

const followUps: Resource<Prisma.FollowUpGetPayload<object>> = {
  path: 'follow-ups',
  name: 'FollowUp',
  view: FollowUp,
  query: MachineQuery,
  readers: ['manager', 'technician', 'supervisor'],
  writers: [],
  order: 'id',
  scope: machineScope,
  where: ofMachine,
  table: (tx) => tx.followUp,
  toView: (row) => ({ ...row, dueOn: dateOrNull(row.dueOn), closedOn: dateOrNull(row.closedOn) }),
};

const roadCalls: Resource<Prisma.RoadCallGetPayload<object>> = {
  path: 'road-calls',
  name: 'RoadCall',
  view: RoadCall,
  query: MachineQuery,
  create: RoadCallCreate,
  changes: RoadCallChanges,
  readers: ['manager', 'technician', 'supervisor'],
  writers: ['manager', 'supervisor'],
  order: 'calledAt',
  orderValue: (key) => new Date(key),
  scope: machineScope,
  where: ofMachine,
  table: (tx) => tx.roadCall,
  toView: (row) => ({ ...row, calledAt: row.calledAt.toISOString(), answers: row.answers as object }),
  insert: async (tx, actor, body: z.infer<typeof RoadCallCreate>) => {
    await requireMachines(tx, actor, [body.machineId]);
    const row = await tx.roadCall.create({ data: roadCallRow(actor.shopId, body) });
    if (!body.usable)
      await tx.machine.update({
        where: { id: body.machineId },
        data: { condition: 'down', version: { increment: 1 } },
      });
    return row.id;
  },
  update: async (tx, _actor, row, body: z.infer<typeof RoadCallChanges>, now) => {
    const isClosed = body.state === 'closed' && row.state !== 'closed';
    const closedOn = isClosed
      ? dateColumn(await todayOf(tx, now))
      : (body.state ?? 'closed') === 'closed'
        ? row.closedOn
        : null;
    await tx.roadCall.update({ where: { id: row.id }, data: { ...given(body), closedOn, version: { increment: 1 } } });
    if (!isClosed) return;
    await endDowntime(tx, row.machineId);
    await settleCall(tx, row.id, closedOn!, null);
    await leaveVisit(tx, row, now);
  },
};

/** Nobody drives for a call that was closed. */
async function leaveVisit(tx: Tx, { id, visitId }: { id: string; visitId: string | null }, now: Date): Promise<void> {
  await tx.visitItem.deleteMany({ where: { roadCallId: id, state: 'planned' } });
  if (visitId === null) return;
  const needless = await tx.visit.findFirst({
    where: { id: visitId, state: { in: ['proposed', 'confirmed'] }, visitItems: { none: {} }, NOT: BEGUN },
  });
  if (needless !== null) await cancelVisit(tx, needless, now, 'Its call was closed, and it had no other work.');
}

function roadCallRow(shopId: string, body: z.infer<typeof RoadCallCreate>) {
  const { symptomCode, minutes, skill, downCentsPerDay, calledAt, ...told } = body;
  const symptom = symptomCode === undefined ? undefined : symptomOf(symptomCode);
  if (symptomCode !== undefined && !symptom) {
    throw new DomainError('invalid-input', 'The symptom is not known.', [
      { pointer: '/symptomCode', detail: `use one of ${SYMPTOMS.map((each) => each.code).join(', ')}` },
    ]);
  }
  return {
    shopId,
    ...told,
    calledAt: new Date(calledAt),
    symptomCode: symptom?.code ?? null,
    minutes: minutes ?? symptom?.minutes ?? 60,
    skill: skill === undefined ? (symptom?.skill ?? null) : skill,
    downCentsPerDay: downCentsPerDay ?? (body.usable ? WAITING_CENTS_PER_DAY.usable : WAITING_CENTS_PER_DAY.down),
  };
}

export const FIELD_WORK_CONTROLLERS = [meterChanges, completions, findings, stopgaps, followUps, roadCalls].map(
  (each) => resourceController(each as Resource<{ id: string }>),
);
