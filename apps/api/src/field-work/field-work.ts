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
} from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { WAITING_CENTS_PER_DAY } from '@deckround/register';
import { dateColumn, dateText, endDowntime, shopNow, todayOf } from '@deckround/register-store';
import type { Prisma } from '@deckround/store';
import type { z } from 'zod';
import { machineScope } from '../access/actor.js';
import { leaveVisits } from '../planning/leave-visits.js';
import { type Resource, resourceController } from '../register/resource.js';
import { dateOrNull, given, hoursText } from '../register/values.js';
import { meterChanges } from './meter-changes.js';
import { settleCall, settleFindings } from './owed-work.js';
import { refuseFutureDay, refuseFutureTime } from './refuse-future.js';
import { requireItemCode, requireMachines, slotId } from './require-machine.js';
import { stopgaps } from './stopgaps.js';
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
  insert: async (tx, actor, body: z.infer<typeof RoadCallCreate>, now) => {
    await requireMachines(tx, actor, [body.machineId]);
    const present = await shopNow(tx, now);
    if (body.calledAt !== undefined) refuseFutureTime('/calledAt', body.calledAt, present);
    const row = await tx.roadCall.create({ data: roadCallRow(actor.shopId, body, present) });
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
    await leaveVisits(tx, { roadCallId: row.id }, 'Its call was closed, and it had no other work.', now);
  },
};

function roadCallRow(shopId: string, body: z.infer<typeof RoadCallCreate>, present: Date) {
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
    calledAt: calledAt === undefined ? present : new Date(calledAt),
    symptomCode: symptom?.code ?? null,
    minutes: minutes ?? symptom?.minutes ?? 60,
    skill: skill === undefined ? (symptom?.skill ?? null) : skill,
    downCentsPerDay: downCentsPerDay ?? (body.usable ? WAITING_CENTS_PER_DAY.usable : WAITING_CENTS_PER_DAY.down),
  };
}

export const FIELD_WORK_CONTROLLERS = [meterChanges, completions, findings, stopgaps, followUps, roadCalls].map(
  (each) => resourceController(each as Resource<{ id: string }>),
);
